import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { moveSeasonStart } from '../../plan/season/acts.js';
import { summaryTable } from './summary-table.js';
import type { SeasonView } from './season-view.js';

const choices = [-4, -3, -2, -1, 1, 2, 3, 4, 6, 8];

/** What if I began some weeks later, or earlier, to the same event? */
export function laterBox(view: SeasonView): TemplateResult {
  const { words, season, request, desk } = view;
  const { later } = desk.question;
  const moved = moveSeasonStart(request, season.wishes, later);
  const other = desk.tryOut(moved);
  return html`<div class="season-fields">
      <span class="field">
        <label for="season-later">${words.say('season.later.by')}</label>
        <select
          id="season-later"
          @change=${({ currentTarget }: Event) => {
            const by = currentTarget instanceof HTMLSelectElement ? choices[currentTarget.selectedIndex] : undefined;
            if (by !== undefined) desk.ask({ later: by });
          }}
        >
          ${choices.map((by) => html`<option .selected=${live(by === later)}>${movedText(view, by)}</option>`)}
        </select>
      </span>
    </div>
    ${
      other
        ? html`${summaryTable(view, words.say('season.box.later'), [
              { name: words.say('season.later.now'), season },
              { name: movedText(view, later), season: other },
            ])}
            <button
              type="button"
              class="act"
              @click=${() => {
                desk.step(moved);
              }}
            >
              ${words.say('season.later.take')}
            </button>`
        : html`<p>${words.say('season.later.not')}</p>`
    }`;
}

function movedText({ words }: SeasonView, by: number): string {
  const weeks = words.say('season.weeks', { count: Math.abs(by) });
  return words.say(by < 0 ? 'season.later.earlier' : 'season.later.later', { weeks });
}
