import { html, type TemplateResult } from 'lit';
import type { SweepChartOptions } from '../../chart/chart-options.js';
import type { QuestionView } from './question-view.js';
import type { Swept } from './questions.js';

/** What the chart draws, as a table; made only once it is opened. */
export function sweepTable(
  { words, questions }: QuestionView,
  { swept, chart }: { readonly swept: Swept; readonly chart: SweepChartOptions },
): TemplateResult {
  return html`<details
    class="sweep-table"
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) questions.ask({ isTableOpen: currentTarget.open });
    }}
  >
    <summary>${words.say('sheet.as-table')}</summary>
    ${questions.isTableOpen ? table(swept, chart) : ''}
  </details>`;
}

function table({ sweep }: Swept, { title, x, y, series }: SweepChartOptions): TemplateResult {
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${title}>
    <table class="values">
      <caption class="visually-hidden">
        ${title}
      </caption>
      <thead>
        <tr>
          <th scope="col">${x.label}</th>
          ${series.map(({ name }) => html`<th scope="col">${name}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${sweep.values.map(
          (value, index) =>
            html`<tr>
              <th scope="row">${x.format(value)}</th>
              ${series.map(({ values }) => html`<td>${y.format(values[index] ?? Number.NaN)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
