import { html, nothing, type TemplateResult } from 'lit';
import type { Card } from '../../plan/week/cards.js';
import { categoryName } from '../../words/category-name.js';
import type { BoardView } from './board-view.js';

/** What tells the element of a card from others. */
export const cardKey = ({ category, day }: Pick<Card, 'category' | 'day'>): string => `${category} ${day}`;

/** A session on its day: pressing it opens what can be done with it, dragging or keys move it. */
export function card(view: BoardView, each: Card): TemplateResult {
  const { words, method, board } = view;
  const { category, minutes, state } = each;
  const key = cardKey(each);
  const isCarried = board.carrying !== null && cardKey(board.carrying.card) === key;
  const isOpen = board.opened?.category === category && board.opened.day === each.day;
  return html`<li>
    <button
      type="button"
      class="card"
      data-category=${category}
      data-state=${state}
      data-key=${key}
      data-carried=${isCarried ? 'true' : 'false'}
      aria-describedby="board-keys"
      aria-expanded=${isOpen ? 'true' : 'false'}
      aria-controls="board-tools"
      @click=${() => {
        if (!board.carrying) board.open({ category, day: each.day });
      }}
    >
      <strong>${words.minutesShort(minutes)}</strong> <span class="kind">${categoryName(words, method, category)}</span>
      ${state === 'open' ? nothing : html`<span class="mark">${words.say(`board.card.${state}`)}</span>`}
      <span class="grip" aria-hidden="true"></span>
    </button>
  </li>`;
}
