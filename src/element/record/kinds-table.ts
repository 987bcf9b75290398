import { html, type TemplateResult } from 'lit';
import { categoryIds, type ByCategory } from '../../training/method/ids.js';
import type { KindTally } from '../../training/record/week-tally.js';
import { categoryTitle } from '../../words/category-name.js';
import type { RecordView } from './record-view.js';

/** Planned, done and left, by kind. */
export function kindsTable({ words, method }: RecordView, tally: ByCategory<KindTally>): TemplateResult {
  const kinds = categoryIds.filter((id) => tally[id].planned > 0 || tally[id].done > 0);
  const column = (name: string): TemplateResult => html`<th scope="col">${words.say(`record.table.${name}`)}</th>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.say('record.table')}>
    <table class="record-kinds">
      <caption class="visually-hidden">
        ${words.say('record.table')}
      </caption>
      <thead>
        <tr>
          ${['kind', 'planned', 'done', 'left'].map(column)}
        </tr>
      </thead>
      <tbody>
        ${kinds.map((id) => {
          const { planned, done, left } = tally[id];
          return html`<tr data-category=${id}>
            <th scope="row"><span class="kind-mark" aria-hidden="true"></span>${categoryTitle(words, method, id)}</th>
            <td>${words.minutesShort(planned)}</td>
            <td>${words.minutesShort(done)}</td>
            <td>${words.minutesShort(left)}</td>
          </tr>`;
        })}
      </tbody>
    </table>
  </div>`;
}
