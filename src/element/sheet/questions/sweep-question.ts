import { html, nothing, type TemplateResult } from 'lit';
import type { TurningPoint } from '../../../sheet/explore/turning-points.js';
import { categoryIds } from '../../../training/method/ids.js';
import { quantityName } from '../../../words/quantity-names.js';
import { formatByUnit, quantityValue } from '../../../words/quantity-value.js';
import { categoryTitle } from '../../../words/category-name.js';
import { cellText } from '../../../words/sheet/cell-text.js';
import { turningPointLine } from '../../../words/sheet/turning-point-line.js';
import type { ChartSeries, SweepChartOptions } from '../../chart/chart-options.js';
import { readingSlider } from '../../chart/reading-slider.js';
import { sweepChart } from '../../chart/sweep-chart.js';
import { requestOf } from '../../../plan/scenarios/input-request.js';
import type { QuestionView } from './question-view.js';
import { inputSelect, option, quantitySelect, select } from './question-selects.js';
import { drawings, type Drawing, type Swept } from './questions.js';
import { sweepTable } from './sweep-table.js';

/** One input moved over its range, and the quantities drawn against it. */
export function sweepQuestion(view: QuestionView): TemplateResult {
  const { words, questions } = view;
  const drawing = (value: string): value is Drawing => drawings.some((each) => each === value);
  const swept = questions.swept;
  return html`<div class="question-fields">
      ${inputSelect(view, { id: 'sweep-input', label: words.say('sheet.input') })}
      ${select(
        {
          id: 'sweep-drawing',
          label: words.say('sheet.draw'),
          value: questions.drawing,
          change: (value) => {
            if (drawing(value)) questions.ask({ drawing: value });
          },
        },
        drawings.map((each) => option(each, words.say(`sheet.draw.${each}`), questions.drawing)),
      )}
      ${questions.drawing === 'one' ? quantitySelect(view, { id: 'sweep-quantity', label: words.say('sheet.quantity') }) : nothing}
    </div>
    ${swept ? drawn(view, swept) : nothing}`;
}

function drawn(view: QuestionView, swept: Swept): TemplateResult {
  const { words, bench } = view;
  const chart = chartOf(view, swept);
  const value = swept.sweep.values[chart.reading ?? 0] ?? Number.NaN;
  const spoken = quantityValue(words, bench.method, { id: swept.input.id, value });
  const request = requestOf(swept.input.id, value);
  const unit = bench.unitOf([...swept.sweep.series.keys()][0] ?? '');
  const read = (values: ArrayLike<number>): string => formatShort(view, unit, values[chart.reading ?? 0] ?? Number.NaN);
  return html`${sweepChart(chart)}
    ${readingSlider({ ...chart, id: 'sweep-reading', label: words.say('sheet.read-at'), reading: chart.reading ?? 0, words })}
    <p class="reading-line">
      <strong>${words.capital(spoken)}</strong>
      ${chart.series.map(
        ({ name, category, values }) =>
          html`<span
            >${category === null ? nothing : html`<span class="swatch" data-category=${category}></span>`} ${name}
            <b>${read(values)}</b></span
          >`,
      )}
      ${
        request
          ? html`<button
              type="button"
              class="act"
              @click=${() => {
                bench.set(bench.store.onShow.id, request);
              }}
            >
              ${words.say('sheet.use-value', { value: spoken })}
            </button>`
          : nothing
      }
    </p>
    ${turningPoints(view, swept)} ${sweepTable(view, { swept, chart })}`;
}

function turningPoints({ words, bench }: QuestionView, { input, points }: Swept): TemplateResult {
  if (points.length === 0) return html`<p class="quiet">${words.say('sheet.no-turning-points')}</p>`;
  const line = (point: TurningPoint): string => turningPointLine(words, bench.method, { input: input.id, point });
  return html`<h4>${words.say('sheet.turning-points')}</h4>
    <ol class="turning-points">
      ${points.map((point) => html`<li>${line(point)}</li>`)}
    </ol>`;
}

/** The scenario's own value of the input, as a place among the values of the sweep. */
function ownReading({ bench }: QuestionView, { input, sweep }: Swept): number {
  const value = bench.store.shown?.planner.column.setting(input.id) ?? 0;
  const place = sweep.values.findIndex((each) => each >= value - 1e-9);
  return place === -1 ? sweep.values.length - 1 : place;
}

function chartOf(view: QuestionView, swept: Swept): SweepChartOptions {
  const { words, bench, questions } = view;
  const { method } = bench;
  const { input, sweep, points } = swept;
  const { drawing, quantity } = questions;
  const unit = bench.unitOf([...sweep.series.keys()][0] ?? quantity);
  const inputText = (value: number): string => quantityValue(words, method, { id: input.id, value });
  const drawnName =
    drawing === 'one' ? words.capital(quantityName(words, method, quantity)) : words.say(`sheet.draw.${drawing}`);
  const inputName = quantityName(words, method, input.id);
  const first = sweep.values[0] ?? Number.NaN;
  return {
    id: 'sweep',
    kind: drawing === 'minutes' || drawing === 'share' ? 'areas' : 'lines',
    x: {
      values: sweep.values,
      label: words.capital(inputName),
      format: (value) => cellText(words, bench.unitOf(input.id), value),
      isChoice: input.isChoice,
    },
    y: { label: drawnName, format: (value) => cellText(words, unit, value) },
    series: seriesOf(view, swept),
    marks: points.map((point, index) => ({
      at: point.at,
      number: index + 1,
      name: turningPointLine(words, method, { input: input.id, point }),
    })),
    reading: Math.min(questions.reading ?? ownReading(view, swept), sweep.values.length - 1),
    title: words.say('sheet.chart.title', { drawn: drawnName, input: inputName }),
    summary: words.say('sheet.chart.summary', {
      from: inputText(first),
      to: inputText(sweep.values.at(-1) ?? first),
    }),
    onPoint: (reading) => {
      questions.ask({ reading });
    },
  };
}

function formatShort({ words }: QuestionView, unit: Parameters<typeof formatByUnit>[1], value: number): string {
  return unit === 'minutes' && Number.isFinite(value) ? words.minutesShort(value) : cellText(words, unit, value);
}

function seriesOf({ words, bench, questions }: QuestionView, { sweep }: Swept): readonly ChartSeries[] {
  const { method } = bench;
  const steps = questions.drawing === 'rounded';
  return [...sweep.series].map(([id, values], index) => {
    const category = questions.drawing === 'one' ? undefined : categoryIds[index];
    const name = category ? categoryTitle(words, method, category) : words.capital(quantityName(words, method, id));
    return { id, name, category: category ?? null, values, steps };
  });
}
