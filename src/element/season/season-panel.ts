import { html, type TemplateResult } from 'lit';
import { seasonHeadline } from '../../words/season/season-headline.js';
import { box } from './box.js';
import { seasonChartBox } from './season-chart.js';
import { seasonInputs } from './season-inputs.js';
import { seasonNotes } from './season-notes.js';
import type { SeasonView } from './season-view.js';
import { weekBox } from './week-box.js';

const below = ['table', 'shape', 'reach', 'later', 'compare', 'basis'] as const;

/** The season: the answer in a sentence, its inputs, the picture, the week that is read, and everything else that can be asked. */
export function seasonPanel(view: SeasonView): TemplateResult {
  const { words, plan, season, desk } = view;
  return html`<header>
      <h3 class="panel-title" id="season-title" tabindex="-1">${words.say('season.title')}</h3>
      <p class="lead">${seasonHeadline(words, plan.inputs, season)}</p>
    </header>
    ${seasonInputs(view)} ${seasonNotes(view)} ${seasonChartBox(view)} ${weekBox(view)}
    <div class="season-boxes">${below.map((id) => box(view, id))}</div>
    <div class="visually-hidden" role="status">${desk.message}</div>`;
}
