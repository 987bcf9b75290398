import { html, nothing, type TemplateResult } from 'lit';
import { categoryIds } from '../../training/method/ids.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { recordLimits } from '../../training/record/done-session.js';
import { tallyWeek } from '../../training/record/week-tally.js';
import { recordHeadline } from '../../words/record/record-headline.js';
import { box } from '../concrete/box.js';
import { addForm } from './add-form.js';
import { importBox } from './import-box.js';
import { kindsTable } from './kinds-table.js';
import { layRestPart } from './lay-rest-part.js';
import type { RecordView } from './record-view.js';
import { sessionList } from './session-list.js';
import { tableOut } from './table-out.js';
import { weeksTable } from './weeks-table.js';

/** What was done against what was planned: the answer in a sentence, the sessions of the week, and what is left of it. */
export function recordPanel(view: RecordView): TemplateResult {
  const { words, method, desk, matched } = view;
  const tally = tallyWeek(matched);
  const isEmpty = categoryIds.every((id) => tally[id].sessions.planned === 0 && tally[id].done === 0);
  return html`<header>
      <h3 class="panel-title" id="record-title" tabindex="-1">${words.say('record.title')}</h3>
      <p class="lead">${recordHeadline(words, method, { start: desk.start, tally })}</p>
    </header>
    ${weekSteps(view)} ${isEmpty ? html`<p class="quiet">${words.say('record.empty')}</p>` : sessionList(view)}
    ${addForm(view)}
    ${desk.isFull ? html`<p class="wrong">${words.say('record.full', { most: recordLimits.sessions })}</p>` : nothing}
    ${kindsTable(view, tally)} ${layRestPart(view)}
    <div class="visually-hidden" role="status">${desk.message}</div>
    <div class="boxes">
      ${box(view, 'record', 'weeks', () => weeksTable(view))} ${box(view, 'record', 'in', () => importBox(view))}
      ${box(view, 'record', 'out', () => tableOut(view))}
    </div>`;
}

/** From week to week. */
function weekSteps({ words, desk }: RecordView): TemplateResult {
  const step = (by: -7 | 7, key: string): TemplateResult =>
    html`<button
      type="button"
      class="act"
      @click=${() => {
        desk.show(isoDate(knownDay(desk.start) + by));
      }}
    >
      ${words.say(`record.${key}`)}
    </button>`;
  const isNow = desk.start <= desk.today && desk.today <= isoDate(knownDay(desk.start) + 6);
  return html`<div class="toolbar" role="group" aria-label=${words.say('record.steps')}>
    ${step(-7, 'before')} ${step(7, 'after')}
    ${
      isNow
        ? nothing
        : html`<button
            type="button"
            class="act"
            @click=${() => {
              desk.show(desk.today);
              desk.focusOn('#record-title');
            }}
          >
            ${words.say('record.now')}
          </button>`
    }
  </div>`;
}
