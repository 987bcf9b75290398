import { html, nothing, type TemplateResult } from 'lit';
import { makeSeasonChange } from '../../plan/season/acts.js';
import type { SeasonNotice } from '../../plan/season/document.js';
import { seasonChangeLine } from '../../words/season/season-change-line.js';
import { seasonNoticeLine } from '../../words/season/season-notice-line.js';
import type { SeasonView } from './season-view.js';

/** What cannot be as it is wished, and what would help; what to mind. */
export function seasonNotes(view: SeasonView): TemplateResult | typeof nothing {
  const { notices } = view.season;
  return notices.length === 0
    ? nothing
    : html`<ul class="season-notes">
        ${notices.map((notice) => note(view, notice))}
      </ul>`;
}

/** A notice, with a button for each way out. */
export function note(view: SeasonView, notice: SeasonNotice): TemplateResult {
  const { words, method, season, request, desk } = view;
  const text = seasonNoticeLine(words, method, notice);
  return html`<li data-level=${notice.level}>
    <span>${notice.level === 'caution' ? words.say('planner.caution', { text }) : text}</span>
    ${notice.waysOut.map(
      (change) =>
        html`<button
          type="button"
          class="act"
          @click=${() => {
            desk.step(makeSeasonChange(request, season.wishes, change));
          }}
        >
          ${words.capital(seasonChangeLine(words, { method, season }, change))}
        </button>`,
    )}
  </li>`;
}
