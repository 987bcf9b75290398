import { html, nothing, type TemplateResult } from 'lit';
import { runningRules } from '../../plan/running/running-ground.js';
import { distanceUnits, type RunningRequest } from '../../plan/running/wishes.js';
import type { Problem } from '../../problem.js';
import { clockTime, readClock } from '../../words/running/clock-time.js';
import { distancesOf } from '../../words/running/distances.js';
import { raceName } from '../../words/running/race-name.js';
import { readNumber } from '../../words/read-number.js';
import { choiceField } from '../fields/choice-fields.js';
import { dateField } from '../fields/fields.js';
import { textField } from '../fields/text-field.js';
import { notANumber } from '../inputs/not-a-number.js';
import type { RunningView } from './running-view.js';

/** The distance that is chosen while no time is known for it. */
const heldDistance = 'running-distance';
const other = 'other';

/** A race with its time, or a threshold pace; and what people count distances in. */
export function raceInputs(view: RunningView): TemplateResult {
  const { words, running } = view;
  return html`<fieldset class="concrete-inputs">
    <legend class="visually-hidden">${words.say('running.inputs')}</legend>
    ${distanceField(view)} ${view.desk.held.get(heldDistance) === other ? kilometresField(view) : nothing}
    ${chosenMetres(view) === null ? nothing : timeField(view)} ${running.wishes.race ? raceDateField(view) : nothing}
    ${thresholdField(view)}
    ${choiceField(view, {
      id: 'running-unit',
      label: words.say('running.input.unit'),
      choices: distanceUnits.map((value) => ({ value, text: words.say(`running.input.unit.${value}`) })),
      value: running.wishes.unit,
      set: (unit): RunningRequest => ({ ...view.desk.request, unit }),
    })}
  </fieldset>`;
}

/** The distance of the race, or the one that waits for its time; null where none is chosen. */
function chosenMetres({ running, desk }: RunningView): number | null {
  const held = Number(desk.held.get(heldDistance));
  return Number.isFinite(held) && held > 0 ? held : (running.wishes.race?.metres ?? null);
}

function distanceField(view: RunningView): TemplateResult {
  const { words, method, desk } = view;
  const usual = runningRules(method).equal_times.distances;
  const metres = chosenMetres(view);
  const isOther = desk.held.get(heldDistance) === other || (metres !== null && !usual.includes(metres));
  const value = isOther ? other : metres === null ? '' : String(metres);
  const choices = [
    { value: '', text: words.say('running.input.distance.none') },
    ...usual.map((each) => ({ value: String(each), text: raceName(words, each) })),
    {
      value: other,
      text: isOther && metres !== null ? raceName(words, metres) : words.say('running.input.distance.other'),
    },
  ];
  const hold = (chosen: string): RunningRequest => {
    desk.hold(heldDistance, chosen === '' ? null : chosen);
    // The time was for another distance.
    return { ...desk.request, race: null };
  };
  return choiceField(view, {
    id: heldDistance,
    label: words.say('running.input.distance'),
    choices,
    value,
    set: hold,
  });
}

function kilometresField(view: RunningView): TemplateResult {
  const { words, desk } = view;
  const label = words.say('running.input.kilometres');
  return textField(view, {
    id: 'running-kilometres',
    label,
    value: '',
    set: (text): RunningRequest | Problem => {
      const kilometres = readNumber(text);
      if (kilometres === null || kilometres <= 0) return notANumber(label, text);
      desk.hold(heldDistance, String(kilometres * 1000));
      return desk.request;
    },
  });
}

const notATime = (path: string, value: string): Problem => ({
  path,
  value,
  code: 'wrong-type',
  allowed: { expected: 'time' },
});

function timeField(view: RunningView): TemplateResult {
  const { words, running, desk } = view;
  const { race } = running.wishes;
  return textField(view, {
    id: 'running-time',
    label: words.say('running.input.time'),
    hint: words.say('running.input.time.hint'),
    value: race ? clockTime(race.seconds) : '',
    set: (text): RunningRequest | Problem => {
      const seconds = readClock(text);
      const metres = chosenMetres(view);
      if (text.trim() === '') return { ...desk.request, race: null };
      if (seconds === null || metres === null) return notATime('running.race.seconds', text);
      return { ...desk.request, race: { metres, seconds, date: race?.date } };
    },
  });
}

function raceDateField(view: RunningView): TemplateResult {
  const { words, running, desk } = view;
  return dateField(view, {
    id: 'running-date',
    label: words.say('running.input.date'),
    value: running.wishes.race?.date ?? '',
    set: (date) => {
      const { race } = desk.request;
      return race ? { ...desk.request, race: { ...race, date: date === '' ? null : date } } : desk.request;
    },
  });
}

function thresholdField(view: RunningView): TemplateResult {
  const { words, running, desk } = view;
  const { toUnit, toKilometre, per } = distancesOf(words, running.wishes.unit);
  const { thresholdPace, race } = running.wishes;
  return textField(view, {
    id: 'running-threshold',
    label: words.say('running.input.threshold'),
    hint: words.say(race ? 'running.input.threshold.race' : 'running.input.threshold.hint', { per }),
    value: thresholdPace === null ? '' : clockTime(toUnit(thresholdPace)),
    set: (text): RunningRequest | Problem => {
      const seconds = readClock(text);
      if (text.trim() === '') return { ...desk.request, thresholdPace: null };
      if (seconds === null) return notATime('running.thresholdPace', text);
      return { ...desk.request, thresholdPace: toKilometre(seconds) };
    },
  });
}
