import { html, nothing, svg, type TemplateResult } from 'lit';
import { cssVariables } from '../parts/css-variables.js';
import { nearestIndex, type Tick } from './chart-axes.js';
import { chartDrawing } from './chart-drawing.js';
import type { ChartBand, ChartFlag, SweepChartOptions } from './chart-options.js';
import { extent, units } from './chart-paths.js';
import { pictureOf, type ChartPicture, type DrawnSeries } from './chart-picture.js';

/**
 * Quantities over the whole range of an input; the ruler stands where somebody reads. Pointing at it moves the ruler; the
 * keyboard has `readingSlider` for that.
 */
export function sweepChart(options: SweepChartOptions): TemplateResult {
  const { x, y } = options;
  const picture = pictureOf(options);
  const point = pointing(options, picture);
  // Words are HTML over and beside the drawing: that one stretches, letters keep the page's size.
  return html`<div class="sweep">
    <div class="sweep-picture">
      <p class="sweep-y-label" aria-hidden="true">${y.label}</p>
      ${options.bands ? bandNames(options.bands) : markNumbers(picture)}
      <div class="sweep-y" aria-hidden="true">
        ${labels(picture.up.ticks, ({ at }) => ({ '--y': percent(1 - at) }), y.format)}
      </div>
      <div class="sweep-plot" @pointermove=${point} @pointerdown=${point}>
        ${chartDrawing(options, picture)}${picture.series.map(insideLabel)}${flagNames(options.flags ?? [])}
      </div>
      ${endLabels(picture.series)}
      <div class="sweep-x ${x.isChoice && !x.marked ? 'choices' : ''}" aria-hidden="true">
        ${labels(picture.across.ticks, ({ at }) => ({ '--x': percent(at) }), x.format)}
      </div>
      <p class="sweep-x-label" aria-hidden="true">${x.label}</p>
    </div>
  </div>`;
}

function pointing(
  { reading, onPoint, isPressed = false }: SweepChartOptions,
  { across }: ChartPicture,
): (event: PointerEvent) => void {
  return ({ currentTarget, clientX, buttons }) => {
    if (!(currentTarget instanceof Element) || (isPressed && buttons === 0)) return;
    const { left, width } = currentTarget.getBoundingClientRect();
    const index = nearestIndex(across.positions, (clientX - left) / width);
    if (index !== reading) onPoint(index);
  };
}

type Variables = Readonly<Record<`--${string}`, string>>;

function labels(
  ticks: readonly Tick[],
  place: (tick: Tick) => Variables,
  format: (value: number) => string,
): TemplateResult[] {
  return ticks.map((tick) => html`<span ${cssVariables(place(tick))}>${format(tick.value)}</span>`);
}

function markNumbers({ marks }: ChartPicture): TemplateResult {
  const rows = Math.max(0, ...marks.map(({ row }) => row)) + 1;
  return html`<div class="sweep-marks" aria-hidden="true" ${cssVariables({ '--rows': String(rows) })}>
    ${marks.map(
      ({ number, name, x, row }) =>
        html`<span title=${name} ${cssVariables({ '--x': percent(x), '--row': String(row) })}>${number}</span>`,
    )}
  </div>`;
}

function bandNames(bands: readonly ChartBand[]): TemplateResult {
  return html`<div class="sweep-bands" aria-hidden="true">
    ${bands.map(
      ({ from, to, name }) =>
        html`<span title=${name} ${cssVariables({ '--x': percent(from), '--size': percent(to - from) })}
          >${name}</span
        >`,
    )}
  </div>`;
}

/** In the right half a name stands before its line. Each is in a row of its own: on a phone two would cover each other. */
function flagNames(flags: readonly ChartFlag[]): TemplateResult[] {
  return flags.map(({ at, name }, index) => {
    const place = cssVariables({ '--x': percent(at), '--row': String(index % mostFlagRows) });
    return html`<span class="sweep-flag ${at > 0.5 ? 'before' : 'after'}" aria-hidden="true" ${place}>${name}</span>`;
  });
}

const mostFlagRows = 8;

function insideLabel({ of, inside }: DrawnSeries): TemplateResult | typeof nothing {
  if (!inside) return nothing;
  const place = cssVariables({ '--x': percent(inside.x), '--y': percent(1 - inside.y) });
  return html`<span class="sweep-inside" aria-hidden="true" ${place}>${of.name}</span>`;
}

function endLabels(series: readonly DrawnSeries[]): TemplateResult {
  const ending = series.flatMap(({ of, end }) => (end ? [{ of, end }] : []));
  return html`<div class="sweep-ends" aria-hidden="true">
    <svg viewBox="0 0 ${extent} ${extent}" preserveAspectRatio="none">
      ${ending.map(
        ({ of, end }) =>
          svg`<path class="sweep-tail" data-category=${of.category ?? nothing}
            d="M0 ${units(1 - end.y)}L${extent} ${units(1 - end.labelY)}"></path>`,
      )}
    </svg>
    ${ending.map(({ of, end }) => html`<span ${cssVariables({ '--y': percent(1 - end.labelY) })}>${of.name}</span>`)}
  </div>`;
}

const percent = (share: number): string => `${String(share * 100)}%`;
