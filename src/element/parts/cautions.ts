import { html, type TemplateResult } from 'lit';
import type { View } from '../view.js';

const usual = ['pain', 'warning-signs', 'illness', 'pregnancy', 'under-18', 'new', 'local'] as const;

/** The usual cautions: one line always in sight, the rest one press away. */
export function cautions({ words }: View): TemplateResult {
  return html`<details class="cautions" part="cautions">
    <summary><span>${words.say('caution.aid')}</span> <span class="more">${words.say('caution.title')}</span></summary>
    <ul>
      ${usual.map((caution) => html`<li>${words.say(`caution.${caution}`)}</li>`)}
    </ul>
  </details>`;
}
