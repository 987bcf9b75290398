import { html, nothing, type TemplateResult } from 'lit';
import type { SeasonWeek } from '../../plan/season/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { joined } from '../../words/joined.js';
import { datesOf } from '../../words/season/dates.js';
import { hoursReason } from '../../words/season/hours-reason.js';
import { box } from './box.js';
import { readWeek } from './read-week.js';
import { note } from './season-notes.js';
import type { SeasonView } from './season-view.js';

/** The week that is read: its hours and why, its sessions, what to mind; it can be put on the planner, or set by hand. */
export function weekBox(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const week = readWeek(view);
  return html`<section class="season-week" aria-labelledby="season-week-title">
    <h4 id="season-week-title">${weekTitle(view, week)}</h4>
    <p>${hoursAndPhase(view, week)}. ${hoursReason(words, season, week)}</p>
    ${sessionLines(view, week)}
    ${
      week.notices.length === 0
        ? nothing
        : html`<ul class="season-notes">
            ${week.notices.map((each) => note(view, each))}
          </ul>`
    }
    ${showButton(view, week)} ${box(view, 'hand')}
  </section>`;
}

/** "Week 7 of 16, Feb 1 – 7, 2027" */
function weekTitle({ words, season }: SeasonView, { number, weeksToGo, start }: SeasonWeek): string {
  const before = season.weeks.filter((week) => week.weeksToGo >= 0).length;
  const place =
    weeksToGo < 0
      ? words.say('season.week-after', { count: -weeksToGo })
      : words.say('season.week-of', { number, weeks: before });
  return joined(words, [place, datesOf(words).week(start)], 'comma');
}

/** "4 hours, build", the hours in bold. */
function hoursAndPhase({ words }: SeasonView, { hours, phase }: SeasonWeek): readonly (TemplateResult | string)[] {
  const pieces = words.pieces('mark.comma', { head: words.hours(hours), rest: words.say(`phase.${phase}`) });
  return pieces.map(({ text, name }) => (name === 'head' ? html`<b>${text}</b>` : text));
}

function sessionLines(
  { words, method }: SeasonView,
  { rounded, sessions, longestRun, load }: SeasonWeek,
): TemplateResult {
  const kinds = categoryIds.filter((id) => rounded[id] > 0);
  return html`<ul class="season-kinds">
      ${kinds.map(
        (id) =>
          html`<li data-category=${id}>
            <span class="kind-mark" aria-hidden="true"></span>${categoryTitle(words, method, id)}
            <b>${words.minutesShort(rounded[id])}</b>
            <span class="quiet">${words.sessions(sessions[id])}</span>
          </li>`,
      )}
    </ul>
    <p class="quiet">
      ${words.say('season.week-facts', { run: words.minutesShort(longestRun), load: words.number(load) })}
    </p>`;
}

function showButton({ words, method, desk, plan }: SeasonView, week: SeasonWeek): TemplateResult {
  const isPossible = week.hours >= method.inputs.weekly_hours.least;
  const isShown = Math.abs(plan.inputs.hours - week.hours) < 1e-9 && plan.inputs.phase === week.phase;
  return html`<button
    type="button"
    class="act"
    aria-disabled=${isPossible ? 'false' : 'true'}
    @click=${() => {
      if (isPossible) desk.show(week);
    }}
  >
    ${words.say(isShown ? 'season.show.again' : 'season.show')}
  </button>`;
}
