import { html, type TemplateResult } from 'lit';
import { headline } from '../../words/headline.js';
import type { View } from '../view.js';

/** The answer first: one sentence, its numbers standing out. */
export function answer({ words, method, plan }: View): TemplateResult {
  const parts = headline(words, method, plan);
  return html`<h2 class="answer" part="answer">
    ${parts.map(({ text, strong }) => (strong === true ? html`<strong>${text}</strong>` : text))}
  </h2>`;
}
