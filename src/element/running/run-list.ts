import { html, nothing, type TemplateResult } from 'lit';
import type { ConcreteSession } from '../../plan/running/document.js';
import { categoryTitle } from '../../words/category-name.js';
import { headed } from '../../words/joined.js';
import { distancesOf } from '../../words/running/distances.js';
import { energyText } from '../../words/running/energy-text.js';
import { runLine } from '../../words/running/run-line.js';
import { dayName } from '../../words/week/day-name.js';
import type { RunningView } from './running-view.js';
import { runStrip } from './run-strip.js';

/** Every run of the week: what it is made of, how far it goes. */
export function runList(view: RunningView): TemplateResult {
  const { words, running } = view;
  const runs = running.sessions.filter(({ parts }) => parts.length > 0);
  return html`<section class="runs" aria-labelledby="runs-title">
    <h4 id="runs-title">${words.say('running.runs')}</h4>
    ${runs.length === 0 ? html`<p class="quiet">${words.say('running.no-runs')}</p>` : nothing}
    <ul>
      ${runs.map((run) => runItem(view, run))}
    </ul>
    ${
      running.energy
        ? html`<p class="quiet">${words.say('running.rest-of-week', { energy: energyText(words, running.energy) })}</p>`
        : nothing
    }
  </section>`;
}

function runItem({ words, method, running }: RunningView, run: ConcreteSession): TemplateResult {
  const { category, minutes, day, metres, energy } = run;
  const title = categoryTitle(words, method, category);
  const { span } = distancesOf(words, running.wishes.unit);
  const facts = [metres && span(metres), energy && energyText(words, energy)].filter((fact) => fact !== null);
  return html`<li data-category=${category}>
    <p class="run-head">
      <b>${day === null ? title : headed(words, dayName(words, day), title)}</b>
      <span>${words.minutesShort(minutes)}</span>
      ${facts.length > 0 ? html`<span class="quiet">${facts.join(' · ')}</span>` : nothing}
    </p>
    ${runStrip(run)}
    <p>${runLine(words, running, run)}</p>
  </li>`;
}
