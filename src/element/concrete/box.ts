import { html, nothing, type TemplateResult } from 'lit';
import type { Words } from '../../words/words.js';
import type { ConcreteDesk } from './concrete-panel.js';

interface BoxView {
  readonly words: Words;
  readonly desk: Pick<ConcreteDesk<never>, 'isOpen' | 'toggle'>;
}

/** A box that is made only while it is open. */
export function box(
  { words, desk }: BoxView,
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
