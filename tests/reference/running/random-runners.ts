import fc from 'fast-check';
import type { RunningKind } from '../../../src/training/method/running-rules.js';
import type { RunTime } from '../../../src/training/running/riegel.js';
import type { RunningRequest } from '../../../src/plan/running/wishes.js';
import { runningLimits } from '../../../src/plan/running/wishes.js';

/** Any number of a range, the round ones often. */
export const amount = (least: number, most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.double({ min: least, max: most, noNaN: true }),
    fc.integer({ min: Math.ceil(least), max: Math.floor(most) }),
    fc.constantFrom(least, most),
  );

/** Races that people run: 800 m to 100 km, from a brisk walk to the fastest of all. */
export const races: fc.Arbitrary<RunTime> = fc
  .record({
    metres: fc.oneof(
      fc.constantFrom(800, 1500, 1609.344, 3000, 5000, 10_000, 15_000, 21_097.5, 42_195, 100_000),
      amount(800, 100_000),
    ),
    speed: amount(85, 400),
  })
  .map(({ metres, speed }) => ({ metres, seconds: (metres / speed) * 60 }));

/** Greatest oxygen uptakes, in millilitres a kilogram a minute, well beyond what people have on both sides. */
export const uptakes = amount(12, 100);

const easyPart = fc.option(fc.record({ minutes: fc.integer({ min: 0, max: 60 }), most_share: amount(0, 0.4) }), {
  nil: undefined,
});
const bouts = fc
  .tuple(amount(0.5, 60), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([work, part]) => ({ work, rest: part * Math.min(30, 2 * work) }));

/** Kinds of running as a coach's method may have them: every length that the schema allows. */
export const kinds: fc.Arbitrary<RunningKind> = fc.record({
  id: fc.constantFrom('slow', 'tempo', 'intervals'),
  uptake: fc.constant({ least: 0.6, most: 0.7 }),
  effort: fc.constant({ least: 2, most: 4 }),
  warm_up: easyPart,
  cool_down: easyPart,
  bouts: fc.option(bouts, { nil: undefined }),
  status: fc.constant('assumption'),
  reason: fc.constant('because'),
});

const inRange = (field: Exclude<keyof typeof runningLimits, 'speed' | 'metres' | 'seconds'>) =>
  fc.option(amount(runningLimits[field].least, runningLimits[field].most), { nil: undefined });

/** What people tell of themselves, all of it within the limits. */
export const runningRequests: fc.Arbitrary<RunningRequest> = fc
  .record({
    race: fc.option(
      races.map(({ metres, seconds }) => ({ metres, seconds: Math.round(seconds) })),
      { nil: null },
    ),
    thresholdPace: inRange('thresholdPace'),
    unit: fc.constantFrom('km', 'mile', undefined),
    age: inRange('age'),
    highestHeart: inRange('highestHeart'),
    restingHeart: inRange('restingHeart'),
    weight: inRange('weight'),
    today: fc.constantFrom('2027-04-11', null, undefined),
  })
  .filter(({ highestHeart, restingHeart }) => (restingHeart ?? 0) < (highestHeart ?? 241));
