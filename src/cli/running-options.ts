import { distanceUnits, type DistanceUnit } from '../plan/running/wishes.js';
import type { Problem } from '../problem.js';
import { asTimes } from '../words/running/as-times.js';
import { readClock } from '../words/running/clock-time.js';
import { metresIn } from '../words/running/distances.js';
import { readRace } from '../words/running/read-race.js';
import { numberOrText } from './number-or-text.js';
import { asOption, asText, fieldsOf, type OptionFields } from './option-fields.js';
import type { Asked } from './plan-answer.js';
import type { Session } from './session.js';

/** Options that stand for a field each; the race and the threshold pace are read by themselves. */
const runningFields: OptionFields = {
  unit: { field: 'unit', read: asText },
  age: { field: 'age', read: numberOrText },
  'highest-heart': { field: 'highestHeart', read: numberOrText },
  'resting-heart': { field: 'restingHeart', read: numberOrText },
  weight: { field: 'weight', read: numberOrText },
};

/** What the options of a command line tell of a runner. */
export function runningAsked(session: Session): Asked {
  const unit = distanceUnits.find((each) => each === session.options.unit) ?? 'km';
  const [race, pace] = [raceOf(session), thresholdOf(session, unit)];
  return {
    request: { running: { ...fieldsOf(session, runningFields), ...race.fields, ...pace.fields } },
    problems: [...race.problems, ...pace.problems],
    asOption: (problem) => named(session, asTimes(problem, unit)),
  };
}

interface ReadOption {
  readonly fields: Readonly<Record<string, unknown>>;
  readonly problems: readonly Problem[];
}

const nothing: ReadOption = { fields: {}, problems: [] };
const fault = (problem: Problem): ReadOption => ({ fields: {}, problems: [problem] });

/** Today matters only where a race was long ago. */
function raceOf({ options, io }: Session): ReadOption {
  const { race: text, 'race-date': date } = options;
  if (text === undefined && date === undefined) return nothing;
  if (text === undefined) return fault({ path: '--race', value: null, code: 'missing', allowed: {} });
  const race = readRace(text);
  const pattern = ['10k=45:00', 'half-marathon=1:39:17', '1500m=5:10'];
  if (!race) return fault({ path: '--race', value: text, code: 'wrong-pattern', allowed: { pattern } });
  const known = date === undefined ? { race } : { race: { ...race, date }, today: io.today() };
  return { fields: known, problems: [] };
}

function thresholdOf({ options }: Session, unit: DistanceUnit): ReadOption {
  const text = options['threshold-pace'];
  if (text === undefined) return nothing;
  const seconds = readClock(text);
  return seconds === null
    ? fault({ path: '--threshold-pace', value: text, code: 'wrong-pattern', allowed: { pattern: '4:40' } })
    : { fields: { thresholdPace: (seconds * 1000) / metresIn[unit] }, problems: [] };
}

/** Fields of which an option is only a part, or that it is not named after. */
const otherNames: Readonly<Record<string, string>> = {
  'running.race.date': '--race-date',
  'running.thresholdPace': '--threshold-pace',
};

function named({ speech }: Session, problem: Problem): Problem {
  const { path } = problem;
  const [, part] = /^running\.race\.(metres|seconds)$/.exec(path) ?? [];
  if (part !== undefined) return { ...problem, path: `--race (${speech.texts.say(`part.${part}`)})` };
  const other = otherNames[path];
  if (other !== undefined) return { ...problem, path: other };
  return asOption(problem, 'running', runningFields);
}
