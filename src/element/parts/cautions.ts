import { html, nothing, type TemplateResult } from 'lit';
import type { View } from '../view.js';

/** The usual cautions: one line always in sight, the rest one press away. */
export function cautions({ words, method, details, act }: View): TemplateResult {
  return html`<details class="cautions" part="cautions" @toggle=${act.more}>
    <summary><span>${words.say('caution.aid')}</span> <span class="more">${words.say('caution.title')}</span></summary>
    ${details?.cautionLines(words, method) ?? nothing}
  </details>`;
}
