import { html, nothing, type TemplateResult } from 'lit';
import { setSeasonWeek } from '../../plan/season/acts.js';
import { byHandReasons } from '../../plan/season/wishes.js';
import { choiceField } from '../fields/choice-fields.js';
import { readWeek } from './read-week.js';
import { numberField } from '../fields/fields.js';
import { weekHoursField, type SeasonView } from './season-view.js';

/** Hours of a holiday or an ill week; what follows is laid again. */
export function handBox(view: SeasonView): TemplateResult {
  const { words, method, season, request, desk } = view;
  const { start, hours } = readWeek(view);
  const set = season.wishes.byHand.find((week) => week.start === start);
  return html`<div class="season-fields">
    ${numberField(view, {
      id: weekHoursField,
      label: words.say('season.by-hand.hours'),
      value: hours,
      range: { ...method.inputs.weekly_hours, least: 0 },
      unit: words.say('unit.hours'),
      spoken: words.hours(hours),
      set: (next) => setSeasonWeek(request, start, { hours: next }),
    })}
    ${choiceField(view, {
      id: 'season-week-reason',
      label: words.say('season.by-hand.reason'),
      value: set?.reason ?? 'other',
      choices: byHandReasons.map((value) => ({ value, text: words.say(`season.by-hand.${value}`) })),
      set: (reason) => setSeasonWeek(request, start, { reason, hours }),
    })}
    ${
      set
        ? html`<button
            type="button"
            class="act"
            @click=${() => {
              desk.step(setSeasonWeek(request, start, null));
            }}
          >
            ${words.say('season.by-hand.lift')}
          </button>`
        : nothing
    }
  </div>`;
}
