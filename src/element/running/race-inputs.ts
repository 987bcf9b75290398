import { html, nothing, type TemplateResult } from 'lit';
import { runningRules } from '../../plan/running/running-ground.js';
import { distanceUnits, runningLimits, type RunningRequest } from '../../plan/running/wishes.js';
import type { Problem } from '../../problem.js';
import { clockTime, readClock } from '../../words/running/clock-time.js';
import { distancesOf } from '../../words/running/distances.js';
import { raceName } from '../../words/running/race-name.js';
import { amountField } from '../fields/amount-field.js';
import { choiceField } from '../fields/choice-fields.js';
import { dateField } from '../fields/fields.js';
import { textField } from '../fields/text-field.js';
import type { RunningView } from './running-view.js';

/** The distance that is chosen while no time is known for it. */
const heldDistance = 'running-distance';
/** There while another distance than the usual ones is chosen. */
const heldOther = 'running-other';
const other = 'other';
const timeId = 'running-time';

/** A race with its time, or a threshold pace; and what people count distances in. */
export function raceInputs(view: RunningView): TemplateResult {
  const { words, running } = view;
  return html`<fieldset class="concrete-inputs">
    <legend class="visually-hidden">${words.say('running.inputs')}</legend>
    ${distanceField(view)} ${isOther(view) ? kilometresField(view) : nothing}
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
  const held = desk.held.get(heldDistance);
  return held === undefined ? (running.wishes.race?.metres ?? null) : Number(held);
}

const usualDistances = ({ method }: RunningView): readonly number[] => runningRules(method).equal_times.distances;

function isOther(view: RunningView): boolean {
  const metres = chosenMetres(view);
  return view.desk.held.has(heldOther) || (metres !== null && !usualDistances(view).includes(metres));
}

function distanceField(view: RunningView): TemplateResult {
  const { words, desk } = view;
  const metres = chosenMetres(view);
  return choiceField(view, {
    id: heldDistance,
    label: words.say('running.input.distance'),
    choices: [
      { value: '', text: words.say('running.input.distance.none') },
      ...usualDistances(view).map((each) => ({ value: String(each), text: raceName(words, each) })),
      { value: other, text: words.say('running.input.distance.other') },
    ],
    value: isOther(view) ? other : metres === null ? '' : String(metres),
    set: (chosen): RunningRequest => {
      desk.hold(heldOther, chosen === other ? other : null);
      return withDistance(view, chosen === '' || chosen === other ? null : chosen);
    },
  });
}

/** Another distance, in metres, waits for its time: the one that was typed is for another. */
function withDistance({ desk }: RunningView, metres: string | null): RunningRequest {
  desk.hold(heldDistance, metres);
  desk.forget(timeId);
  return { ...desk.request, race: null };
}

function kilometresField(view: RunningView): TemplateResult {
  const { words, desk } = view;
  const metres = chosenMetres(view);
  const { least, most } = runningLimits.metres;
  return amountField(view, {
    id: 'running-kilometres',
    label: words.say('running.input.kilometres'),
    value: metres === null ? null : metres / 1000,
    range: { least: least / 1000, most: most / 1000 },
    set: (kilometres): RunningRequest => {
      desk.hold(heldOther, other);
      return withDistance(view, kilometres === null ? null : String(kilometres * 1000));
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
    id: timeId,
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
