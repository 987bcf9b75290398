import { html, nothing, type TemplateResult } from 'lit';
import type { RunningRequest } from '../../plan/running/wishes.js';
import { runningHeadline } from '../../words/running/running-headline.js';
import { runningNoticeLine } from '../../words/running/running-notice-line.js';
import { box } from '../concrete/box.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';
import { noteList } from '../concrete/note-list.js';
import { basisBox } from './basis-box.js';
import { equalTimesTable } from './equal-times-table.js';
import { guideCards } from './guide-cards.js';
import { heartBox } from './heart-box.js';
import { raceInputs } from './race-inputs.js';
import { runList } from './run-list.js';
import type { RunningView } from './running-view.js';

/** Running made concrete: the answer in a sentence, what it is worked out from, how each kind is run, and every run. */
export function runningPanel(view: ConcreteView<RunningRequest>): TemplateResult {
  const { words, plan, desk } = view;
  const { running } = plan;
  if (!running) return html``;
  const full: RunningView = { ...view, running };
  return html`<header>
      <h3 class="panel-title">${words.say('running.title')}</h3>
      <p class="lead">${runningHeadline(words, running)}</p>
    </header>
    ${raceInputs(full)}
    ${noteList(running.notices.map((notice) => ({ level: notice.level, text: runningNoticeLine(words, running, notice) })))}
    ${guideCards(full)} ${runList(full)}
    <div class="boxes">
      ${box(view, 'running', 'heart', () => heartBox(full))}
      ${running.equalTimes.length > 0 ? box(view, 'running', 'equal', () => equalTimesTable(full)) : nothing}
      ${box(view, 'running', 'basis', () => basisBox(full))}
    </div>
    <div class="visually-hidden" role="status">${desk.message}</div>`;
}
