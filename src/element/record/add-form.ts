import { html, type TemplateResult } from 'lit';
import { addDone } from '../../plan/record/acts.js';
import { recordLimits } from '../../training/record/done-session.js';
import { categoryIds } from '../../training/method/ids.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { categoryTitle } from '../../words/category-name.js';
import { dayName } from '../../words/week/day-name.js';
import { readNumber } from '../../words/read-number.js';
import { notANumber } from '../inputs/not-a-number.js';
import { fieldNote } from '../fields/fields.js';
import type { RecordView } from './record-view.js';

const id = 'record-new-minutes';

/** A session that was not planned, or done otherwise. */
export function addForm(view: RecordView): TemplateResult {
  const { words, method, desk } = view;
  const days = Array.from({ length: 7 }, (_, day) => isoDate(knownDay(desk.start) + day));
  return html`<form
    class="record-add"
    aria-label=${words.say('record.add')}
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      if (event.currentTarget instanceof HTMLFormElement) add(view, event.currentTarget, days);
    }}
  >
    <label
      >${words.say('record.input.day')}
      <select name="day">
        ${days.map((date, day) => html`<option value=${date} ?selected=${date === desk.today}>${dayName(words, day)}</option>`)}
      </select></label
    >
    <label
      >${words.say('record.input.kind')}
      <select name="kind">
        ${categoryIds.map((each) => html`<option value=${each}>${categoryTitle(words, method, each)}</option>`)}
      </select></label
    >
    <label
      >${words.say('record.input.minutes')}
      <input
        class="typed text"
        name="minutes"
        size="5"
        inputmode="numeric"
        autocomplete="off"
        aria-describedby="${id}-hint"
        aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
    /></label>
    <button class="act">${words.say('record.add')}</button>
    ${fieldNote(view, id)}
  </form>`;
}

function add({ words, desk }: RecordView, form: HTMLFormElement, days: readonly string[]): void {
  const data = new FormData(form);
  const typed = data.get('minutes');
  const text = typeof typed === 'string' ? typed.trim() : '';
  const label = words.say('record.input.minutes');
  const field = { id, label, text };
  const minutes = readNumber(text);
  const { least, most } = recordLimits.minutes;
  if (minutes === null || text.includes(':')) desk.refuse(notANumber(label, text), field);
  else if (minutes < least || minutes > most)
    desk.refuse({ path: label, value: minutes, code: 'out-of-range', allowed: { least, most } }, field);
  else if (!Number.isInteger(minutes))
    desk.refuse({ path: label, value: minutes, code: 'not-a-step', allowed: { step: 1 } }, field);
  else {
    const category = categoryIds.find((each) => each === data.get('kind'));
    const date = days.find((each) => each === data.get('day'));
    if (!category || !date) return;
    desk.act(addDone(desk.sessions, { date, category, minutes, effort: null }), field);
    // What could not be added stays as it was typed.
    if (!desk.isFull) form.reset();
  }
}
