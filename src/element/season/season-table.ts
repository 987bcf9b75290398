import { html, nothing, type TemplateResult } from 'lit';
import type { SeasonWeek } from '../../plan/season/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { datesOf } from '../../words/season/dates.js';
import { phaseText } from '../../words/season/phase-text.js';
import { readWeek } from './read-week.js';
import type { SeasonView } from './season-view.js';

/** All weeks as a table. */
export function seasonTable(view: SeasonView): TemplateResult {
  const { words, method, season } = view;
  const column = (name: string): TemplateResult => html`<th scope="col">${words.say(`season.table.${name}`)}</th>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.say('season.box.table')}>
    <table>
      <caption class="visually-hidden">
        ${words.say('season.table.caption')}
      </caption>
      <thead>
        <tr>
          ${['week', 'from', 'phase', 'hours'].map(column)}
          ${categoryIds.map((id) => html`<th scope="col">${categoryTitle(words, method, id)}</th>`)}
          ${['load', 'longest-run', 'notes'].map(column)}
        </tr>
      </thead>
      <tbody>
        ${season.weeks.map((week) => row(view, week))}
      </tbody>
    </table>
  </div>`;
}

function row(view: SeasonView, week: SeasonWeek): TemplateResult {
  const { words, desk } = view;
  const { number, start, hours, rounded, load, longestRun, notices } = week;
  const isRead = week === readWeek(view);
  const cautions = notices.filter(({ level }) => level === 'caution').length;
  return html`<tr data-read=${isRead ? 'true' : nothing}>
    <th scope="row">
      <button
        type="button"
        aria-pressed=${isRead ? 'true' : 'false'}
        aria-label=${words.say('season.week-number', { number })}
        @click=${() => {
          desk.read(start);
        }}
      >
        ${words.number(number)}
      </button>
    </th>
    <td>${datesOf(words).short(start)}</td>
    <td>${phaseText(words, week)}</td>
    <td>${words.hoursShort(hours)}</td>
    ${categoryIds.map((id) => html`<td>${words.number(rounded[id])}</td>`)}
    <td>${words.number(load)}</td>
    <td>${words.minutesShort(longestRun)}</td>
    <td>${cautions === 0 ? nothing : words.say('season.cautions', { count: cautions })}</td>
  </tr>`;
}
