import { html, nothing, type TemplateResult } from 'lit';
import type { ConcreteView } from './concrete-panel.js';

/** A box that is made only while it is open. */
export function box<R>(
  { words, desk }: ConcreteView<R>,
  ...[panel, id, content]: readonly [string, string, () => TemplateResult]
): TemplateResult {
  return html`<details
    class="box ${panel}-${id}"
    ?open=${desk.isOpen(id)}
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) desk.toggle(id, currentTarget.open);
    }}
  >
    <summary>${words.say(`${panel}.box.${id}`)}</summary>
    ${desk.isOpen(id) ? content() : nothing}
  </details>`;
}
