import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { addDone, removeDone, replaceDone } from '../../plan/record/acts.js';
import { recordLimits, type DoneSession } from '../../training/record/done-session.js';
import type { MatchedSession } from '../../training/record/match-sessions.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { categoryTitle } from '../../words/category-name.js';
import { joined } from '../../words/joined.js';
import { dayName } from '../../words/week/day-name.js';
import { amountField } from '../fields/amount-field.js';
import { choiceField } from '../fields/choice-fields.js';
import type { RecordView } from './record-view.js';

/** Every planned session to be ticked off, and what was done beyond the plan. */
export function sessionList(view: RecordView): TemplateResult {
  const { words, matched } = view;
  return html`<ul class="record-sessions" aria-labelledby="record-title">
    ${matched.planned.map((session, index) => plannedItem(view, session, index))}
    ${matched.extra.map((done, index) => {
      const id = `extra-${index}`;
      const [title, extra] = [categoryTitle(words, view.method, done.category), words.say('record.extra')];
      return html`<li data-category=${done.category} data-done>
        <p class="record-what">
          <b>${title}</b>
          <span class="quiet">${extra}</span>
        </p>
        ${doneFields(view, done, { id, name: joined(words, [title, extra], 'comma') })}
        ${outButton(view, done, () => {
          for (const place of matched.extra.keys()) if (place >= index) forget(view, `extra-${place}`);
        })}
      </li>`;
    })}
  </ul>`;
}

function plannedItem(view: RecordView, session: MatchedSession, index: number): TemplateResult {
  const { words, method, desk } = view;
  const { category, minutes, date, done } = session;
  const day = date === null ? words.say('record.any-day') : dayName(words, knownDay(date) - knownDay(desk.start));
  const title = categoryTitle(words, method, category);
  return html`<li data-category=${category} ?data-done=${done !== null}>
    <label class="record-what">
      <input
        type="checkbox"
        .checked=${live(done !== null)}
        @change=${() => {
          forget(view, `planned-${index}`);
          desk.act(done ? removeDone(desk.sessions, done) : addDone(desk.sessions, tickedOff(view, session)));
        }}
      />
      <span><b>${title}</b>${` ${joined(words, [day, words.minutesShort(minutes)], 'comma')}`}</span>
    </label>
    ${done ? doneFields(view, done, { id: `planned-${index}`, name: joined(words, [title, day], 'comma') }) : nothing}
  </li>`;
}

/** On its day; on today where that day is yet to come, or any day would do. */
function tickedOff({ desk }: RecordView, { category, minutes, date }: MatchedSession): DoneSession {
  const { today, start } = desk;
  const end = isoDate(knownDay(start) + 6);
  const isNow = start <= today && today <= end;
  const day = date !== null && (!isNow || date <= today) ? date : isNow ? today : start;
  return { date: day, category, minutes, effort: null };
}

const { minutes: minutesRange, effort: effortRange } = recordLimits;

interface FieldsOf {
  readonly id: string;
  /** What a listener is told that the fields are of. */
  readonly name: string;
}

function doneFields(view: RecordView, done: DoneSession, { id, name }: FieldsOf): TemplateResult {
  const { words, desk } = view;
  const put = (change: Partial<DoneSession>): readonly DoneSession[] =>
    replaceDone(desk.sessions, done, { ...done, ...change });
  const days = Array.from({ length: 7 }, (_, day) => ({
    value: isoDate(knownDay(desk.start) + day),
    text: dayName(words, day),
  }));
  return html`<div class="record-fields" role="group" aria-label=${name}>
    ${choiceField<string, readonly DoneSession[]>(view, {
      id: `record-${id}-day`,
      label: words.say('record.input.day'),
      choices: days,
      value: done.date,
      set: (date) => put({ date }),
    })}
    ${amountField<readonly DoneSession[]>(view, {
      id: `record-${id}-minutes`,
      label: words.say('record.input.minutes'),
      value: done.minutes,
      range: { ...minutesRange, isWhole: true },
      set: (minutes) => (minutes === null ? removeDone(desk.sessions, done) : put({ minutes })),
    })}
    ${amountField<readonly DoneSession[]>(view, {
      id: `record-${id}-effort`,
      label: words.say('record.input.effort'),
      value: done.effort,
      range: effortRange,
      set: (effort) => put({ effort }),
    })}
  </div>`;
}

/** What was typed at a place is of another session, or of none, where that of the place is gone. */
function forget({ desk }: RecordView, id: string): void {
  for (const name of ['minutes', 'effort']) desk.forget(`record-${id}-${name}`);
}

function outButton({ words, method, desk }: RecordView, done: DoneSession, clear: () => void): TemplateResult {
  return html`<button
    type="button"
    class="act"
    aria-label=${words.say('record.take-out.named', { what: categoryTitle(words, method, done.category) })}
    @click=${() => {
      clear();
      desk.act(removeDone(desk.sessions, done));
      desk.focusOn('#record-title');
    }}
  >
    ${words.say('record.take-out')}
  </button>`;
}
