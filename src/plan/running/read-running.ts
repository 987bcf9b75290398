import type { Outcome, Problem } from '../../problem.js';
import { dayOf } from '../../training/season/iso-date.js';
import { faultyDate } from '../faulty-date.js';
import { between, number, object, oneOf, orNull, readAs, text, type Reader } from '../fields.js';
import { distanceUnits, runningLimits, type RaceResult, type RunningWishes } from './wishes.js';

type Limit = Exclude<keyof typeof runningLimits, 'metres' | 'speed'>;

const within = (limit: keyof typeof runningLimits): Reader<number> => {
  const { least, most } = runningLimits[limit];
  return between(least, most);
};

const race: Reader<RaceResult | undefined> = object(({ take, need }) => {
  const metres = need('metres', within('metres'));
  const seconds = need('seconds', number);
  const date = take('date', orNull(text)) ?? null;
  return metres === undefined || seconds === undefined ? undefined : { metres, seconds, date };
});

const running: Reader<RunningWishes> = object(({ take }) => {
  const told = (field: Limit): number | null => take(field, orNull(within(field))) ?? null;
  return {
    race: take('race', orNull(race)) ?? null,
    thresholdPace: told('thresholdPace'),
    unit: take('unit', oneOf(distanceUnits)) ?? 'km',
    age: told('age'),
    highestHeart: told('highestHeart'),
    restingHeart: told('restingHeart'),
    weight: told('weight'),
    today: take('today', orNull(text)) ?? null,
  };
});

/**
 * Reads what a request tells of a runner.
 *
 * @returns the wishes, or every problem with its path (`running.race.seconds`), the value given and what is allowed.
 */
export function readRunning(given: unknown): Outcome<RunningWishes> {
  const problems: Problem[] = [];
  const wishes = readAs(running, given, problems);
  if (wishes && problems.length === 0) problems.push(...acrossFields(wishes));
  if (wishes && problems.length === 0) return { ok: true, value: wishes };
  return {
    ok: false,
    problems: problems.map((problem) => ({
      ...problem,
      path: problem.path === '' ? 'running' : `running.${problem.path}`,
    })),
  };
}

function acrossFields({ race: result, today, highestHeart, restingHeart }: RunningWishes): Problem[] {
  return [
    ...faultyDate('today', today),
    ...(result ? [...faultyDate('race.date', result.date), ...unlikelySpeed(result)] : []),
    // A race cannot have been run tomorrow.
    ...(result?.date && today && isLater(result.date, today)
      ? [{ path: 'race.date', value: result.date, code: 'out-of-range' as const, allowed: { most: today } }]
      : []),
    ...(highestHeart !== null && restingHeart !== null && restingHeart >= highestHeart
      ? [
          {
            path: 'restingHeart',
            value: restingHeart,
            code: 'out-of-range' as const,
            allowed: { least: runningLimits.restingHeart.least, most: highestHeart - 1 },
          },
        ]
      : []),
  ];
}

/** A time that nobody takes for the distance is a slip: what is allowed is told as times for it. */
function unlikelySpeed({ metres, seconds }: RaceResult): Problem[] {
  const { speed } = runningLimits;
  const allowed = {
    least: Math.ceil((metres * 60) / speed.most - 1e-9),
    most: Math.floor((metres * 60) / speed.least + 1e-9),
  };
  const isFine = seconds >= allowed.least && seconds <= allowed.most;
  return isFine ? [] : [{ path: 'race.seconds', value: seconds, code: 'out-of-range', allowed }];
}

/** False where one of them is no date: that is told by itself. */
function isLater(one: string, other: string): boolean {
  const [first, second] = [dayOf(one), dayOf(other)];
  return first !== null && second !== null && first > second;
}
