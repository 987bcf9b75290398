import { html, type TemplateResult } from 'lit';
import { headline, type HeadlinePart } from '../../words/headline.js';
import type { View } from '../view.js';

/** The answer first: one sentence, its numbers standing out. */
export function answer({ words, method, plan }: View): TemplateResult {
  const parts = joined(headline(words, method, plan));
  return html`<h2 class="answer" part="answer">
    ${parts.map(({ text, strong }) => (strong === true ? html`<strong>${text}</strong>` : text))}
  </h2>`;
}

/** Plain parts side by side become one text: a space in a text node of its own is lost to screen readers. */
function joined(parts: readonly HeadlinePart[]): readonly HeadlinePart[] {
  return parts.reduce<readonly HeadlinePart[]>((before, part) => {
    const last = before.at(-1);
    if (!last || last.strong || part.strong) return [...before, part];
    return [...before.slice(0, -1), { text: last.text + part.text }];
  }, []);
}
