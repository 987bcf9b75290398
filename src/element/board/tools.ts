import { html, nothing, type TemplateResult } from 'lit';
import { cardsOf } from '../../plan/week/cards.js';
import type { BoardView } from './board-view.js';
import { cardTools } from './card-tools.js';
import { dayTools } from './day-tools.js';

/** What can be done with the session or the day that is open. */
export function tools(view: BoardView): TemplateResult {
  const { words, board, week } = view;
  const { opened } = board;
  const card = cardsOf(week).find(({ category, day }) => category === opened?.category && day === opened.day);
  const isOpen = opened !== null && (opened.category === null || card !== undefined);
  const close = (): void => {
    board.focusOn(card ? `[data-key="${card.category} ${card.day}"]` : `#day-${opened?.day ?? 0}-name`);
    board.open(null);
  };
  return html`<section
    id="board-tools"
    class="tools"
    aria-labelledby="board-tools-title"
    ?hidden=${!isOpen}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      // The key has done its work: a dialog around the planner stays open.
      event.preventDefault();
      event.stopPropagation();
      close();
    }}
  >
    ${
      isOpen
        ? html`${card ? cardTools(view, card) : dayTools(view, opened.day)}
            <button type="button" class="plain close" @click=${close}>${words.say('derivation.close')}</button>`
        : nothing
    }
  </section>`;
}
