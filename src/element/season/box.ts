import { html, nothing, type TemplateResult } from 'lit';
import type { BoxId, SeasonView } from './season-view.js';

/** A box is made only while it is open; seasons are compared only where there are several. */
export function box(view: SeasonView, id: BoxId): TemplateResult | typeof nothing {
  const { words, desk } = view;
  const { boxDesk } = desk;
  if (id === 'compare' && desk.scenarios.length < 2) return nothing;
  return html`<details
    class="season-box season-${id}"
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) boxDesk.toggle(id, currentTarget.open);
    }}
  >
    <summary>${words.say(`season.box.${id}`)}</summary>
    ${boxDesk.isOpen(id) ? boxDesk.boxes?.[id](view) : nothing}
  </details>`;
}
