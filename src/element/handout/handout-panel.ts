import { html, nothing, type TemplateResult } from 'lit';
import { categoryIds } from '../../training/method/ids.js';
import { datesOf } from '../../words/season/dates.js';
import { box } from '../concrete/box.js';
import { keepBox } from '../keep/keep-box.js';
import { copyLink, copyTable, print, saveCalendar, savePlan, saveTable } from './acts.js';
import { calendarBox, contentBox, openBox } from './boxes.js';
import { handoutFields, isWeek } from './handout-fields.js';
import type { HandoutView } from './handout-view.js';
import { messageLine } from './message-line.js';
import { paperSheet } from './sheets/paper-sheet.js';

/** What a runner takes home: on paper, in a calendar, as a table, a file or a link. */
export function handoutPanel(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  return html`<header>
      <h3 class="panel-title" id="handout-title" tabindex="-1">${words.say('handout.title')}</h3>
      <p class="lead">${lead(view)}</p>
    </header>
    ${handoutFields(view)} ${tools(view)} ${messageLine(view)}
    <div class="boxes">
      ${box(view, 'handout', 'look', () => html`<div class="desk-top">${paperSheet(view)}</div>`)}
      ${box(view, 'handout', 'calendar', () => calendarBox(view))} ${box(view, 'handout', 'open', () => openBox(view))}
      ${box(view, 'handout', 'content', () => contentBox(view))}
      ${desk.mayKeep ? box(view, 'handout', 'keep', () => keepBox(view)) : nothing}
    </div>`;
}

/** What there is to hand over, in a sentence. */
function lead(view: HandoutView): string {
  const { words, plan, weeks, desk } = view;
  if (!isWeek(view) && plan.season) return words.say('handout.lead.season', { count: plan.season.weeks.length });
  const week = weeks(desk.choices.start);
  const count = categoryIds.reduce((sum, id) => sum + week.plan.sessions[id].length, 0);
  return words.say('handout.lead', { when: datesOf(words).week(week.start), count });
}

/** Every way to hand it over. */
function tools(view: HandoutView): TemplateResult {
  const { words } = view;
  const button = (key: string, act: (place: HTMLElement) => void, className = 'act'): TemplateResult =>
    html`<button
      type="button"
      class=${className}
      @click=${({ currentTarget }: Event) => {
        const place = currentTarget instanceof HTMLElement ? currentTarget.closest<HTMLElement>('.handout') : null;
        if (place) act(place);
      }}
    >
      ${words.say(`handout.do.${key}`)}
    </button>`;
  return html`<div class="toolbar" role="group" aria-labelledby="handout-title">
    ${button('print', (place) => void print(view, place), 'act main')}
    ${button('calendar', () => {
      saveCalendar(view);
    })}
    ${button('copy-table', () => void copyTable(view))}
    ${button('table', () => {
      saveTable(view);
    })}
    ${button('file', () => {
      savePlan(view);
    })}
    ${button('link', () => void copyLink(view))}
  </div>`;
}
