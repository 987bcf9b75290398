import { html, nothing, type TemplateResult } from 'lit';
import { canMove, moveCard } from '../../plan/week/acts.js';
import type { Card } from '../../plan/week/cards.js';
import type { PlanWeek } from '../../plan/week/document.js';
import type { BoardView } from './board-view.js';

/** What the week would be with a session on another day, where it stays. */
export function weekWith({ board, week }: BoardView, card: Card, day: number): PlanWeek | null {
  if (day === card.day) return week;
  return canMove(week, card, day) ? board.tryOut(moveCard(week, card, day)) : null;
}

/** What a week costs against the one on show: "5, 3 more". */
export function costAgainst({ words, week }: BoardView, other: PlanWeek | null): string {
  if (other?.state === 'looking') return words.say('board.cost.looking');
  if (!other || other.cost === null) return words.say('board.cost.nothing-fits');
  const cost = words.number(other.cost);
  const more = other.cost - (week.cost ?? 0);
  if (more === 0) return words.say('board.cost.same', { cost });
  return words.say(more > 0 ? 'board.cost.more' : 'board.cost.less', { cost, by: words.number(Math.abs(more)) });
}

/** Where a session would be put down, and what the week would cost then. */
export function carriedLine(view: BoardView, day: number): TemplateResult | typeof nothing {
  const { board } = view;
  if (board.carrying?.day !== day) return nothing;
  return html`<p class="carried">${costAgainst(view, weekWith(view, board.carrying.card, day))}</p>`;
}
