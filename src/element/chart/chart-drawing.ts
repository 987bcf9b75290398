import { html, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { SweepChartOptions } from './chart-options.js';
import { extent, units } from './chart-paths.js';
import type { ChartPicture, DrawnSeries } from './chart-picture.js';

/** Lines are told apart by these as well as by colour; their ends are round, so that 1 is a dot. */
const dashes = ['', '9 6', '1 5', '10 5 1 5', '4 5', '10 5 1 5 1 5'] as const;

/** Lines or areas, the grid, turning points and the ruler. It stretches to its frame; strokes keep their width. */
export function chartDrawing(
  { id, kind, reading, title, summary, bands = [], flags = [] }: SweepChartOptions,
  { across, up, series, marks }: ChartPicture,
): TemplateResult {
  const ruler = reading === null ? undefined : across.positions[reading];
  const borders = bands.flatMap(({ from }) => (from > 0 ? [from] : []));
  const turns = [...marks.map(({ x }) => x), ...borders].map(upright).join('');
  const flagged = flags.map(({ at }) => upright(at)).join('');
  return html`<svg
    viewBox="0 0 ${extent} ${extent}"
    preserveAspectRatio="none"
    role="img"
    aria-labelledby="${id}-title"
    aria-describedby="${id}-summary"
  >
    <title id="${id}-title">${title}</title>
    <desc id="${id}-summary">${summary}</desc>
    <path class="sweep-grid" d=${up.ticks.map(({ at }) => `M0 ${units(1 - at)}H${extent}`).join('')}></path>
    ${series.map((drawn, index) => shape(drawn, kind, dashes[index % dashes.length] ?? ''))}
    ${kind === 'areas' ? svg`<path class="sweep-halo" d=${turns + (ruler === undefined ? '' : upright(ruler))}></path>` : nothing}
    <path class="sweep-turns" d=${turns}></path>
    ${flagged === '' ? nothing : svg`<path class="sweep-halo" d=${flagged}></path><path class="sweep-flagged" d=${flagged}></path>`}
    ${
      ruler === undefined
        ? nothing
        : svg`<path class="sweep-ruler" d=${upright(ruler)}></path>
          ${series.map((drawn) => dot(drawn, ruler, up.place(drawn.layer.upper[reading ?? 0] ?? NaN)))}`
    }
  </svg>`;
}

function shape({ of, path, end }: DrawnSeries, kind: SweepChartOptions['kind'], dash: string): SVGTemplateResult {
  const category = of.category ?? nothing;
  if (kind === 'areas') return svg`<path class="sweep-area" data-category=${category} d=${path}></path>`;
  // Where the values end before the picture does, a thin line leads on to the label.
  const tail = end?.isEarly ? `M${units(end.x)} ${units(1 - end.y)}H${extent}` : '';
  return svg`<path class="sweep-line" data-category=${category} stroke-dasharray=${dash || nothing} d=${path}></path>
    <path class="sweep-tail" data-category=${category} d=${tail}></path>`;
}

/** A line without length: its round ends keep their shape in a drawing that is stretched. */
function dot({ of, layer }: DrawnSeries, x: number, y: number): SVGTemplateResult | typeof nothing {
  if (layer.lower || !Number.isFinite(y)) return nothing;
  return svg`<path class="sweep-dot" data-category=${of.category ?? nothing} d="M${units(x)} ${units(1 - y)}h0"></path>`;
}

const upright = (x: number): string => `M${units(x)} 0V${extent}`;
