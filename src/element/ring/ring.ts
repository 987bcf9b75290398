import { html, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { weekSentence } from '../../words/week-sentence.js';
import { cssVariables } from '../parts/css-variables.js';
import type { View } from '../view.js';
import { ringParts, type RingPart, type RingSize } from './ring-geometry.js';

const size: RingSize = { radius: 70, labelRadius: 92, labelGap: 44, labelReach: 94 };
const half = { width: 170, height: 124 };
/** Share of the ring left free between two parts. */
const gap = 0.006;

/** The week as one picture: a part for each kind of training, labelled where it is, the hours in the middle. */
export function ring(view: View): TemplateResult {
  const { words, method, plan } = view;
  const parts = ringParts(
    categoryIds.map((id) => [id, plan.rounded[id]] as const),
    size,
  );
  const box = [-half.width, -half.height, 2 * half.width, 2 * half.height].join(' ');
  // The labels are HTML over the drawing: they wrap and keep the page's size of type however small the ring gets.
  return html`<figure
    class="ring"
    part="ring"
    role="img"
    aria-label=${words.say('ring.title', { week: weekSentence(words, method, plan) })}
  >
    <svg viewBox=${box} aria-hidden="true">${parts.map((part) => arc(part, parts.length))}</svg>
    <p class="ring-middle" aria-hidden="true">
      <strong>${words.hoursShort(plan.inputs.hours)}</strong><span>${words.say(`phase.${plan.inputs.phase}`)}</span>
    </p>
    ${parts.map((part) => label(view, part))}
  </figure>`;
}

/** A circle whose dash is the part: no path, no trigonometry, and it can be animated. */
function arc({ of, start, share, edge, label: { x, y } }: RingPart<CategoryId>, count: number): SVGTemplateResult {
  const alone = count === 1;
  const drawn = alone ? 1 : Math.max(share - gap, gap);
  return svg`<circle class="arc" data-category=${of} r=${size.radius} pathLength="1" transform="rotate(-90)"
      stroke-dasharray="${drawn} ${1 - drawn}" stroke-dashoffset=${-start - (alone ? 0 : gap / 2)}></circle>
    <path class="leader" data-category=${of} d="M${edge.x * 1.2} ${edge.y * 1.2}L${x} ${y}"></path>`;
}

function label({ words, method, plan }: View, { of, label: { x, y, side } }: RingPart<CategoryId>): TemplateResult {
  const percent = (value: number, extent: number): string => `${((value + extent) / (2 * extent)) * 100}%`;
  return html`<p
    class="ring-label to-${side}"
    aria-hidden="true"
    ${cssVariables({
      '--x': percent(x, half.width),
      '--y': percent(y, half.height),
      // Labels under the ring hang from their point, labels over it stand on it.
      '--rise': `${-50 + 50 * (y / size.labelReach)}%`,
    })}
  >
    <span>${categoryTitle(words, method, of)}</span> <strong>${words.minutesShort(plan.rounded[of])}</strong>
  </p>`;
}
