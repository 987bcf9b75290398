import { html, nothing, type TemplateResult } from 'lit';
import { cardsOf } from '../../plan/week/cards.js';
import { setDayMinutes } from '../../plan/week/acts.js';
import { dayQuantities } from '../../training/method/week-names.js';
import { minutesInADay } from '../../training/week/day-sets.js';
import { readNumber } from '../../words/read-number.js';
import { dayName, dayShort } from '../../words/week/day-name.js';
import { dayTotalLine } from '../../words/week/day-total-line.js';
import { notANumber } from '../inputs/not-a-number.js';
import { typedEntry } from '../inputs/typed-entry.js';
import { slider } from '../parts/slider.js';
import type { Problem } from '../../problem.js';
import type { BoardView } from './board-view.js';
import { card } from './card.js';
import { carriedLine } from './carried-line.js';
import { cardKeys, cardPointer } from './gestures.js';

/** What the slider of a day offers; more may be typed. */
const range = { least: 0, most: 180, step: 5, start: 60 } as const;

/** The seven days side by side, or one under the other where the planner is narrow. */
export function dayColumns(view: BoardView): TemplateResult {
  return html`<ol
    class="days"
    data-state=${view.week.state}
    @keydown=${cardKeys(view)}
    @pointerdown=${cardPointer(view)}
  >
    ${dayQuantities.map((_, day) => dayColumn(view, day))}
  </ol>`;
}

function dayColumn(view: BoardView, day: number): TemplateResult {
  const { words, board, week } = view;
  const isFree = week.wishes.free.includes(day);
  const isOpen = board.opened?.category === null && board.opened.day === day;
  const cards = cardsOf(week).filter((each) => each.day === day);
  const name = words.capital(dayName(words, day));
  return html`<li
    class="day"
    data-day=${day}
    data-free=${isFree || week.wishes.days[day] === 0 ? 'true' : 'false'}
    data-over=${board.carrying?.day === day ? 'true' : 'false'}
    data-passed=${day < week.wishes.passed ? 'true' : 'false'}
  >
    <h4>
      <button
        type="button"
        id="day-${day}-name"
        aria-expanded=${isOpen ? 'true' : 'false'}
        aria-controls="board-tools"
        @click=${() => {
          board.open({ category: null, day });
        }}
      >
        <span class="long">${name}</span
        ><span class="short" aria-hidden="true">${words.capital(dayShort(words, day))}</span>
      </button>
    </h4>
    ${dayMinutes(view, day)}
    <ul class="cards" aria-labelledby="day-${day}-name">
      ${cards.map((each) => card(view, each))}
    </ul>
    ${carriedLine(view, day)}
    <p class="total quiet">${isFree ? words.say('board.stays-free') : totalOf(view, day)} ${clashesOn(view, day)}</p>
  </li>`;
}

function totalOf({ words, week }: BoardView, day: number): string {
  const used = week.days?.[day]?.reduce((sum, { minutes }) => sum + minutes, 0) ?? 0;
  return dayTotalLine(words, used, week.wishes.days[day] ?? 0);
}

/** How many clashes a day is in. */
function clashesOn({ words, week }: BoardView, day: number): TemplateResult | typeof nothing {
  const count = week.clashes.filter(({ days }) => days.includes(day)).length;
  return count === 0 ? nothing : html`<b>${words.say('board.day.clashes', { count })}</b>`;
}

function dayMinutes(view: BoardView, day: number): TemplateResult {
  const { words, board, week, details } = view;
  const value = week.wishes.days[day] ?? 0;
  const draft = board.drafts.of(day);
  const labelledBy = `day-${day}-name day-${day}-unit`;
  const set = (minutes: number): void => {
    board.drafts.forget(day);
    board.act(setDayMinutes(week.wishes, day, minutes));
  };
  const type = (text: string): void => {
    const minutes = readNumber(text);
    const path = words.capital(words.say(`quantity.${dayQuantities[day] ?? ''}`));
    const problem = minutes === null ? notANumber(path, text) : minutesProblem(path, minutes);
    if (problem) board.drafts.keep(day, { text, problem });
    else if (minutes !== null) set(minutes);
    board.update();
  };
  const describedBy = `day-${day}-note`;
  return html`<div class="minutes">
    <div class="entry">
      ${typedEntry(words, { id: `day-${day}`, labelledBy, describedBy, range, value, draft, type })}<span
        class="unit"
        id="day-${day}-unit"
        >${words.say('unit.minutes')}</span
      >
    </div>
    ${slider({ labelledBy, describedBy, spoken: words.minutes(value), ...range, most: Math.max(range.most, value), value, change: set })}
    <p id=${describedBy} class="wrong">${draft ? details.sayProblem(words, draft.problem) : nothing}</p>
  </div>`;
}

function minutesProblem(path: string, value: number): Problem | null {
  if (!Number.isInteger(value)) return { path, value, code: 'not-a-step', allowed: { step: 1 } };
  if (value < 0 || value > minutesInADay)
    return { path, value, code: 'out-of-range', allowed: { least: 0, most: minutesInADay } };
  return null;
}
