import { html, type TemplateResult } from 'lit';
import { setSeasonDate, setSeasonStart, setSeasonWeeks } from '../../plan/season/acts.js';
import { seasonLimits } from '../../training/method/season-rules.js';
import { weeksFrom } from '../../training/season/season-weeks.js';
import { dateField, numberField } from '../fields/fields.js';
import type { SeasonView } from './season-view.js';

/** A season of more weeks is typed, or set by its days. */
const weeksOnSlider = 52;

/** The event, the weeks up to it, and the hours from now to the most. */
export function seasonInputs(view: SeasonView): TemplateResult {
  const { words, method, season, request } = view;
  const { wishes } = season;
  const weeks = weeksFrom(wishes.start, wishes.date);
  const hours = method.inputs.weekly_hours;
  return html`<fieldset class="season-inputs">
    <legend class="visually-hidden">${words.say('season.inputs')}</legend>
    ${dateField(view, {
      id: 'season-date',
      label: words.say('season.input.date'),
      value: wishes.date,
      set: (date) => setSeasonDate(request, wishes, date),
    })}
    ${dateField(view, {
      id: 'season-start',
      label: words.say('season.input.start'),
      value: wishes.start,
      set: (start) => setSeasonStart(request, wishes, start),
    })}
    ${numberField(view, {
      id: 'season-weeks',
      label: words.say('season.input.weeks'),
      value: weeks,
      range: { least: 1, most: Math.min(seasonLimits.weeks, Math.max(weeksOnSlider, weeks)), step: 1 },
      unit: words.say('season.unit.weeks', { count: weeks }),
      spoken: words.say('season.weeks', { count: weeks }),
      set: (next) => setSeasonWeeks(request, wishes, next),
    })}
    ${numberField(view, {
      id: 'season-hours',
      label: words.say('season.input.hours'),
      value: wishes.hours,
      range: hours,
      unit: words.say('unit.hours'),
      spoken: words.hours(wishes.hours),
      set: (next) => ({ ...request, hours: next }),
    })}
    ${numberField(view, {
      id: 'season-most',
      label: words.say('season.input.most'),
      value: wishes.mostHours,
      range: hours,
      unit: words.say('unit.hours'),
      spoken: words.hours(wishes.mostHours),
      set: (mostHours) => ({ ...request, mostHours }),
    })}
  </fieldset>`;
}
