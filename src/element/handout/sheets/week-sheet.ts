import { html, nothing, type TemplateResult } from 'lit';
import type { DayText, SetsText, WeekText } from '../../../words/handout/week-text.js';
import type { BlockText } from '../../../words/handout/strength-blocks.js';
import type { SessionText } from '../../../words/handout/session-text.js';
import type { Words } from '../../../words/words.js';
import { aroundSheet, type SheetGround } from './around-sheet.js';

/** A week on one page: what, when, how long, how hard; strength by sets; cautions; whom to ask. */
export function weekSheet(ground: SheetGround, week: WeekText): TemplateResult {
  const { words } = ground;
  const head = { over: week.inSeason, title: words.say('handout.week-of', { when: week.when }), lead: week.lead };
  return aroundSheet(
    ground,
    head,
    html`<div class="p-days">${week.days ? dayTable(words, week.days) : anyDayTable(words, week.sessions)}</div>
      ${week.strength.length === 0 ? nothing : html`<div class="p-sets">${week.strength.map(setsCard)}</div>`}`,
  );
}

const heads = (words: Words, names: readonly string[]): TemplateResult =>
  html`<thead>
    <tr>
      ${names.map((name) => html`<th scope="col">${words.say(`handout.table.${name}`)}</th>`)}
    </tr>
  </thead>`;

function dayTable(words: Words, days: readonly DayText[]): TemplateResult {
  return html`<table role="table">
    ${heads(words, ['day', 'what', 'length', 'effort', 'how'])}
    <tbody>
      ${days.flatMap((day) => dayRows(words, day))}
    </tbody>
  </table>`;
}

function dayRows(words: Words, { name, date, sessions }: DayText): TemplateResult[] {
  const head = (rows: number): TemplateResult =>
    html`<th scope="row" rowspan=${rows}>${name} <small>${date}</small></th>`;
  if (sessions.length === 0)
    return [
      html`<tr>
        ${head(1)}
        <td class="p-rest" colspan="4">${words.say('handout.rest')}</td>
      </tr>`,
    ];
  return sessions.map(
    (session, index) =>
      html`<tr>
        ${index === 0 ? head(sessions.length) : nothing}${sessionCells(session)}
      </tr>`,
  );
}

function anyDayTable(words: Words, sessions: readonly SessionText[]): TemplateResult {
  return html`<table role="table">
    <caption>
      ${words.say('handout.any-day')}
    </caption>
    ${heads(words, ['what', 'length', 'effort', 'how'])}
    <tbody>
      ${sessions.map(
        (session) =>
          html`<tr>
            ${sessionCells(session)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** With a box to tick by pen. */
const sessionCells = ({ category, title, length, effort, how }: SessionText): TemplateResult =>
  html`<td class="p-what" data-category=${category}><span class="p-tick" aria-hidden="true"></span>${title}</td>
    <td class="p-length">${length}</td>
    <td class="p-effort">${effort}</td>
    <td>${how}</td>`;

const setsCard = ({ title, length, blocks }: SetsText): TemplateResult =>
  html`<section>
    <h4><span>${title}</span> <span>${length}</span></h4>
    <ul>
      ${blocks.map(blockItem)}
    </ul>
  </section>`;

const blockItem = ({ exercises, rest }: BlockText): TemplateResult =>
  html`<li>
    ${exercises.map(
      ({ name, sets, effort }) =>
        html`<p class="p-exercise">
          <span>${name}</span>
          <span><b>${sets}</b>${effort === '' ? nothing : html` <small>${effort}</small>`}</span>
        </p>`,
    )}
    ${rest === '' ? nothing : html`<p class="p-pause">${rest}</p>`}
  </li>`;
