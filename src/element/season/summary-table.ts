import { html, type TemplateResult } from 'lit';
import type { PlanSeason } from '../../plan/season/document.js';
import { seasonSummary, type SeasonSummary } from '../../plan/season/season-questions.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import type { SeasonView } from './season-view.js';

interface Named {
  readonly name: string;
  readonly season: PlanSeason;
}

/** Seasons side by side in a few numbers. */
export function summaryTable({ words, method }: SeasonView, label: string, seasons: readonly Named[]): TemplateResult {
  const columns = seasons.map(({ name, season }) => ({ name, summary: seasonSummary(season) }));
  const row = (title: string, text: (summary: SeasonSummary) => string): TemplateResult =>
    html`<tr>
      <th scope="row">${title}</th>
      ${columns.map(({ summary }) => html`<td>${text(summary)}</td>`)}
    </tr>`;
  const named = (key: string, text: (summary: SeasonSummary) => string): TemplateResult =>
    row(words.say(`season.summary.${key}`), text);
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${label}>
    <table class="season-summary">
      <thead>
        <tr>
          <td></td>
          ${columns.map(({ name }) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${named('weeks', ({ weeks }) => words.number(weeks))}
        ${named('most', ({ mostHours }) => words.hoursShort(mostHours))}
        ${named('total', ({ totalHours }) => words.hoursShort(totalHours))}
        ${categoryIds.map((id) => row(categoryTitle(words, method, id), ({ minutes }) => words.hoursShort(minutes[id] / 60)))}
        ${named('longest-run', ({ longestRun }) => words.minutesShort(longestRun))}
        ${named('load', ({ mostLoad }) => words.number(mostLoad))}
        ${named('cautions', ({ cautions }) => words.number(cautions))}
      </tbody>
    </table>
  </div>`;
}
