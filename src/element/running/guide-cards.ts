import { html, nothing, type TemplateResult } from 'lit';
import type { RunningGuide } from '../../plan/running/document.js';
import { categoryTitle } from '../../words/category-name.js';
import { distancesOf } from '../../words/running/distances.js';
import { effortSpan } from '../../words/running/effort-span.js';
import { guideHeart } from '../../words/running/heart-text.js';
import type { RunningView } from './running-view.js';

/** How each kind of run is run: pace, heart rate, and how hard it should feel. */
export function guideCards(view: RunningView): TemplateResult {
  const { words, running } = view;
  return html`<ul class="guides" aria-label=${words.say('running.guides')}>
    ${running.guides.map((guide) => guideCard(view, guide))}
  </ul>`;
}

function guideCard({ words, method, running }: RunningView, guide: RunningGuide): TemplateResult {
  const { category, pace, heart, bands, effort } = guide;
  const { per, paceAlone } = distancesOf(words, running.wishes.unit);
  return html`<li data-category=${category}>
    <b><span class="kind-mark" aria-hidden="true"></span>${categoryTitle(words, method, category)}</b>
    ${pace ? html`<p class="pace">${paceAlone(pace)} <small>${per}</small></p>` : nothing}
    ${
      heart && bands
        ? html`<p>
            <span class="quiet"
              >${words.say(running.highest?.from === 'age' ? 'running.guide.heart.estimated' : 'running.guide.heart')}</span
            >
            ${guideHeart(words, heart, bands)}
          </p>`
        : nothing
    }
    <p>
      <span class="quiet">${words.say('running.guide.effort', { effort: effortSpan(words, effort) })}</span>
      ${words.say(`running.feel.${category}`)}
    </p>
  </li>`;
}
