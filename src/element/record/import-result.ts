import { html, nothing, type TemplateResult } from 'lit';
import { fieldIds } from '../../exchange/record/mapping.js';
import type { ReadSessions, UnreadLine } from '../../exchange/record/read-sessions.js';
import type { Problem } from '../../problem.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { datesOf } from '../../words/season/dates.js';
import type { RecordView } from './record-view.js';

/** The lines that are shown; all are counted. */
const mostShown = 100;

/** What the table says as it is read now, and which of its lines say nothing, with the reason. */
export function importResult(view: RecordView): TemplateResult {
  const { words, desk } = view;
  const { sessions } = desk.tables;
  if (!sessions) return html``;
  const { read, unread, unusedColumns } = sessions;
  return html`<p role="status">
      ${words.say('record.in.read', { count: read.length })} ${words.say('record.in.unread', { count: unread.length })}
      ${unusedColumns.length === 0 ? nothing : words.say('record.in.unused', { columns: words.list(unusedColumns) })}
    </p>
    ${unread.length === 0 ? nothing : unreadList(view, unread)} ${read.length === 0 ? nothing : readTable(view, read)}`;
}

function unreadList(view: RecordView, unread: readonly UnreadLine[]): TemplateResult {
  const { words, details } = view;
  return html`<ul
    class="import-unread"
    tabindex="0"
    aria-label=${words.say('record.in.unread', { count: unread.length })}
  >
    ${unread.slice(0, mostShown).map(
      ({ line, problems }) =>
        html`<li>
          <b>${words.say('record.in.line', { line })}</b>
          ${problems.map((problem) => details.sayProblem(words, inWords(view, problem))).join(' ')}
        </li>`,
    )}
    ${unread.length > mostShown ? html`<li>${words.say('problem.more', { count: unread.length - mostShown })}</li>` : nothing}
  </ul>`;
}

/** Kinds, and fields whose column has no title, by their names: what may be chosen above is called so. */
function inWords({ words, method, desk }: RecordView, problem: Problem): Problem {
  const { path, allowed } = problem;
  const isTitle = desk.tables.table?.head.includes(path) ?? false;
  const field = fieldIds.find((each) => each === path);
  const named = field && !isTitle ? { ...problem, path: words.say(`record.in.field.${field}`) } : problem;
  if (allowed['choices'] !== categoryIds) return named;
  return { ...named, allowed: { choices: categoryIds.map((id) => categoryTitle(words, method, id)) } };
}

function readTable({ words, method }: RecordView, read: ReadSessions['read']): TemplateResult {
  const dates = datesOf(words);
  return html`<div class="scroll import-read" tabindex="0" role="region" aria-label=${words.say('record.in.preview')}>
    <table>
      <caption>
        ${words.say('record.in.preview')}
      </caption>
      <thead>
        <tr>
          ${['line', 'date', 'category', 'minutes', 'effort'].map(
            (name) => html`<th scope="col">${words.say(`record.in.field.${name}`)}</th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${read.slice(0, mostShown).map(
          ({ line, session }) =>
            html`<tr>
              <th scope="row">${words.number(line)}</th>
              <td>${dates.full(session.date)}</td>
              <td>${categoryTitle(words, method, session.category)}</td>
              <td>${words.number(session.minutes)}</td>
              <td>${session.effort === null ? '' : words.number(session.effort, 2)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
