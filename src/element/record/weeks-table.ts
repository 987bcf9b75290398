import { html, type TemplateResult } from 'lit';
import { doneInWeek } from '../../plan/record/acts.js';
import { categoryIds } from '../../training/method/ids.js';
import { matchSessions } from '../../training/record/match-sessions.js';
import { tallyWeek } from '../../training/record/week-tally.js';
import { isoDate, knownDay, mondayDate } from '../../training/season/iso-date.js';
import { categoryTitle } from '../../words/category-name.js';
import { datesOf } from '../../words/season/dates.js';
import type { RecordView } from './record-view.js';

/** Every week from the first that something was done in, to this one: minutes done of those planned, by kind. */
export function weeksTable(view: RecordView): TemplateResult {
  const { words, method, desk } = view;
  const mondays = mondaysOf(
    desk.sessions.map(({ date }) => date),
    desk.today,
  );
  if (mondays.length === 0) return html`<p class="quiet">${words.say('record.nothing-yet')}</p>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.say('record.weeks')}>
    <table>
      <caption>
        ${words.say('record.weeks')}
      </caption>
      <thead>
        <tr>
          <th scope="col">${words.say('record.table.week')}</th>
          ${categoryIds.map((id) => html`<th scope="col">${categoryTitle(words, method, id)}</th>`)}
          <th scope="col">${words.say('record.table.all')}</th>
        </tr>
      </thead>
      <tbody>
        ${mondays.map((start) => row(view, start))}
      </tbody>
    </table>
  </div>`;
}

/** The newest first. */
function mondaysOf(dates: readonly string[], today: string): readonly string[] {
  const [first] = [...dates].sort();
  if (first === undefined) return [];
  const last = [...dates, today].reduce((latest, date) => (date > latest ? date : latest));
  const from = knownDay(mondayDate(first));
  const count = (knownDay(mondayDate(last)) - from) / 7 + 1;
  return Array.from({ length: count }, (_, index) => isoDate(from + 7 * (count - 1 - index)));
}

function row({ words, weeks, desk }: RecordView, start: string): TemplateResult {
  const done = doneInWeek(desk.sessions, { start, end: isoDate(knownDay(start) + 6) });
  const tally = tallyWeek(matchSessions(weeks(start).sessions, done));
  const ofPlanned = (did: number, planned: number): string =>
    words.say('record.of', { done: words.number(did), planned: words.number(planned) });
  const sum = (of: 'done' | 'planned'): number => categoryIds.reduce((all, id) => all + tally[id][of], 0);
  return html`<tr>
    <th scope="row">${datesOf(words).short(start)}</th>
    ${categoryIds.map((id) => html`<td>${ofPlanned(tally[id].done, tally[id].planned)}</td>`)}
    <td>${ofPlanned(sum('done'), sum('planned'))}</td>
  </tr>`;
}
