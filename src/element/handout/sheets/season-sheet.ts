import { html, nothing, svg, type TemplateResult } from 'lit';
import type { ConcretePlan } from '../../../plan/handout/concrete-plan.js';
import type { PlanSeason, SeasonWeek } from '../../../plan/season/document.js';
import { categoryIds } from '../../../training/method/ids.js';
import { kindLines } from '../../../words/handout/kind-lines.js';
import { phaseSpans } from '../../../words/handout/phase-spans.js';
import { categoryTitle } from '../../../words/category-name.js';
import { datesOf } from '../../../words/season/dates.js';
import { phaseText } from '../../../words/season/phase-text.js';
import { seasonHeadline } from '../../../words/season/season-headline.js';
import { seasonNoticeLine } from '../../../words/season/season-notice-line.js';
import { aroundSheet, type SheetGround } from './around-sheet.js';

interface SeasonSheet {
  readonly season: PlanSeason;
  readonly plan: ConcretePlan;
}

/** A season on two pages: how it goes, and every week of it. */
export function seasonSheet(ground: SheetGround, { season, plan }: SeasonSheet): TemplateResult {
  const { words, method } = ground;
  const head = { over: '', title: words.say('season.title'), lead: seasonHeadline(words, plan.inputs, season) };
  const cautions = season.notices.filter(({ level }) => level === 'caution');
  return html`${aroundSheet(
      ground,
      head,
      html`${bars(ground, season)}
        <ul class="p-phases">
          ${phaseSpans(words, season).map(({ name, span }) => html`<li><b>${name}</b> ${span}</li>`)}
        </ul>
        <div>
          <h4>${words.say('handout.kinds')}</h4>
          <ul class="p-kinds">
            ${kindLines(words, method, plan).map(({ name, how }) => html`<li><b>${name}</b> ${how}</li>`)}
          </ul>
        </div>
        ${
          cautions.length === 0
            ? nothing
            : html`<ul class="p-notices">
                ${cautions.map((notice) => html`<li>${seasonNoticeLine(words, method, notice)}</li>`)}
              </ul>`
        }`,
    )}
    <section class="page">${weekTable(ground, season)}</section>`;
}

const barWidth = 10;
const barsHeight = 60;

/** Hours by week, as bars; easier weeks and the light phases are pale, events have a line. */
function bars({ words }: SheetGround, { weeks }: PlanSeason): TemplateResult {
  const most = Math.max(...weeks.map(({ hours }) => hours), 1);
  const heightOf = (hours: number): number => (hours / most) * barsHeight;
  const bar = (week: SeasonWeek, index: number): unknown => {
    const isLight = week.isEasier || week.phase === 'taper' || week.phase === 'recovery';
    const height = heightOf(week.hours);
    const x = index * barWidth;
    return svg`<rect x=${x + 1} y=${barsHeight - height} width=${barWidth - 2} height=${height} ?data-light=${isLight}></rect>
      ${week.events.length > 0 ? svg`<line x1=${x + barWidth / 2} x2=${x + barWidth / 2} y1="-6" y2=${barsHeight}></line>` : nothing}`;
  };
  return html`<div>
    <h4>${words.say('handout.hours-by-week', { most: words.hoursShort(most) })}</h4>
    <svg
      class="p-bars"
      role="img"
      aria-label=${words.say('handout.hours-by-week', { most: words.hoursShort(most) })}
      viewBox="0 -7 ${Math.max(weeks.length, 12) * barWidth} ${barsHeight + 8}"
    >
      ${weeks.map(bar)}
    </svg>
  </div>`;
}

function weekTable({ words, method }: SheetGround, { weeks }: PlanSeason): TemplateResult {
  const column = (name: string, isNumber = false): TemplateResult =>
    html`<th scope="col" class=${isNumber ? 'p-number' : ''}>${words.say(`season.table.${name}`)}</th>`;
  return html`<div class="p-scroll" tabindex="0" role="region" aria-label=${words.say('handout.weeks')}>
    <table class="p-weeks">
      <caption>
        ${words.say('handout.weeks')}
      </caption>
      <thead>
        <tr>
          ${column('week', true)} ${column('from')} ${column('phase')} ${column('hours', true)}
          ${categoryIds.map((id) => html`<th scope="col" class="p-number">${categoryTitle(words, method, id)}</th>`)}
          ${column('longest-run', true)}
        </tr>
      </thead>
      <tbody>
        ${weeks.map(
          (week) =>
            html`<tr ?data-event=${week.events.length > 0}>
              <th scope="row" class="p-number">${words.number(week.number)}</th>
              <td class="p-date">${datesOf(words).short(week.start)}</td>
              <td>${phaseText(words, week)}</td>
              <td class="p-number">${words.hoursShort(week.hours)}</td>
              ${categoryIds.map((id) => html`<td class="p-number">${words.sessions(week.sessions[id])}</td>`)}
              <td class="p-number">${words.minutesShort(week.longestRun)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
