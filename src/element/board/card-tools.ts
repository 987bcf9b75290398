import { html, nothing, type TemplateResult } from 'lit';
import {
  canMove,
  mergeCards,
  missCard,
  moveCard,
  releaseCard,
  removeCard,
  resizeCard,
  splitCard,
  toggleDone,
} from '../../plan/week/acts.js';
import { cardsOf, type Card } from '../../plan/week/cards.js';
import type { PlanWeek } from '../../plan/week/document.js';
import type { WeekWishes } from '../../plan/week/wishes.js';
import { dayQuantities } from '../../training/method/week-names.js';
import { minutesInADay } from '../../training/week/day-sets.js';
import { categoryName } from '../../words/category-name.js';
import { clashLine } from '../../words/week/clash-line.js';
import { dayName, dayNames } from '../../words/week/day-name.js';
import { slider } from '../parts/slider.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';
import { cardKey } from './card.js';
import { costAgainst, weekWith } from './carried-line.js';

/** Everything that can be done with a session: where else it could be, how long, done or missed; and why it is there. */
export function cardTools(view: BoardView, card: Card): TemplateResult {
  const { words, method } = view;
  const { category, minutes, day } = card;
  const isDone = card.state === 'done';
  return html`<h4 id="board-tools-title" tabindex="-1">
      ${words.say('board.card.title', {
        kind: words.capital(categoryName(words, method, category)),
        minutes: words.minutes(minutes),
        day: dayName(words, day),
      })}
    </h4>
    ${isDone ? nothing : whyHere(view, card)} ${isDone ? nothing : lengthSlider(view, card)}
    <div class="acts">${isDone ? nothing : [stayButton(view, card), ...lengthButtons(view, card)]}</div>
    <div class="acts">${doneButtons(view, card)}</div>`;
}

/** Why the session is where it is: what clashes there, and what the week would cost on other days; the menu to move by. */
function whyHere(view: BoardView, card: Card): TemplateResult {
  const { words, method, week } = view;
  const weeks = dayQuantities.map((_, day) => weekWith(view, card, day));
  const clashes = week.clashes.filter(({ days, category }) => days.includes(card.day) || category === card.category);
  const lines = clashes.map((clash) => clashLine(words, method, clash).text);
  return html`<p>
      ${lines.length === 0 ? words.say('board.why.free') : lines.join(' ')} ${otherDays(view, card, weeks)}
    </p>
    <p class="quiet" id="board-move">${words.say('board.move')}</p>
    <div class="acts moves" role="group" aria-labelledby="board-move">
      ${weeks.map((other, day) => moveButton(view, card, { day, other }))}
    </div>`;
}

/** Whether other days would do better, or as well; nothing while that is not known. */
function otherDays({ words, week }: BoardView, card: Card, weeks: readonly (PlanWeek | null)[]): string {
  const daysWhere = (isSo: (cost: number, here: number) => boolean): number[] =>
    weeks.flatMap((other, day) => {
      const cost = other?.cost ?? null;
      return day !== card.day && cost !== null && week.cost !== null && isSo(cost, week.cost) ? [day] : [];
    });
  const cheaper = daysWhere((cost, here) => cost < here);
  const asGood = daysWhere((cost, here) => cost === here);
  if (cheaper.length > 0) return words.say('board.why.cheaper', { days: dayNames(words, cheaper) });
  if (asGood.length > 0) return words.say('board.why.as-well', { days: dayNames(words, asGood) });
  return weeks.some((other) => other?.state === 'looking') ? '' : words.say('board.why.best');
}

function moveButton(
  view: BoardView,
  card: Card,
  { day, other }: { readonly day: number; readonly other: PlanWeek | null },
): TemplateResult {
  const { words, board, week } = view;
  const isHere = day === card.day;
  const isOpen = canMove(week, card, day);
  return html`<button
    type="button"
    class="act"
    aria-pressed=${isHere ? 'true' : 'false'}
    aria-disabled=${isHere || isOpen ? 'false' : 'true'}
    @click=${() => {
      if (isHere || !isOpen) return;
      board.opened = { category: card.category, day };
      board.focusOn('#board-tools-title');
      board.act(moveCard(week, card, day));
    }}
  >
    ${words.capital(dayName(words, day))} <small>${isHere ? words.say('board.here') : costAgainst(view, other)}</small>
  </button>`;
}

/** How long the session is, by slider. */
function lengthSlider(view: BoardView, card: Card): TemplateResult {
  const { words, method, board, week } = view;
  const { step } = method.rounding;
  const { longest = card.minutes } = method.categories.find(({ id }) => id === card.category)?.session ?? {};
  return html`<div class="length">
    <span id="board-length">${words.say('board.length')}</span>
    ${slider({
      labelledBy: 'board-length',
      spoken: words.minutes(card.minutes),
      least: step,
      most: Math.max(longest, card.minutes),
      step,
      value: card.minutes,
      change: (minutes) => {
        board.act(resizeCard(week, card, minutes));
      },
    })}
  </div>`;
}

/** An act on the week, after which the focus goes to a card that is there. */
function doing({ board }: BoardView, wishes: () => WeekWishes, focus?: string): () => void {
  return () => {
    if (focus !== undefined) {
      board.opened = null;
      board.focusOn(focus);
    }
    board.act(wishes());
  };
}

function stayButton(view: BoardView, card: Card): TemplateResult {
  const { words, week } = view;
  return card.state === 'pinned'
    ? actButton(
        words.say('board.release'),
        doing(view, () => releaseCard(week, card)),
      )
    : actButton(
        words.say('board.stay'),
        doing(view, () => moveCard(week, card, card.day)),
      );
}

function lengthButtons(view: BoardView, card: Card): TemplateResult[] {
  const { words, method, week } = view;
  const { step } = method.rounding;
  const { minutes, category, day } = card;
  const shorter = minutes > step ? (): WeekWishes => resizeCard(week, card, minutes - step) : null;
  const others = cardsOf(week).filter(
    (each) => each.category === category && each.day !== day && each.state !== 'done',
  );
  const away = '#board-title';
  return [
    actButton(words.say('board.shorter', { step: words.minutes(step) }), shorter && doing(view, shorter)),
    actButton(
      words.say('board.longer', { step: words.minutes(step) }),
      minutes + step > minutesInADay ? null : doing(view, () => resizeCard(week, card, minutes + step)),
    ),
    actButton(
      words.say('board.split'),
      minutes >= 2 * step ? doing(view, () => splitCard(week, card, step), away) : null,
    ),
    ...others.map((other) =>
      actButton(
        words.say('board.merge', { day: dayName(words, other.day) }),
        minutes + other.minutes > minutesInADay
          ? null
          : doing(view, () => mergeCards(week, card, other), `[data-key="${cardKey(card)}"]`),
      ),
    ),
    actButton(
      words.say('board.remove'),
      doing(view, () => removeCard(week, card), away),
    ),
  ];
}

function doneButtons(view: BoardView, card: Card): TemplateResult[] {
  const { words, board, week } = view;
  const isDone = card.state === 'done';
  const done = actButton(
    words.say(isDone ? 'board.not-done' : 'board.done'),
    doing(view, () => toggleDone(week, card)),
  );
  const missed = actButton(words.say('board.missed'), () => {
    board.opened = null;
    board.focusOn('#proposal-title');
    board.propose({ wishes: missCard(week, card), about: { day: card.day, category: card.category } });
  });
  return isDone ? [done] : [done, missed];
}
