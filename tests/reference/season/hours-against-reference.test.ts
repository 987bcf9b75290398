import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seasonHours, type HoursFrame, type Pace } from '../../../src/training/season/season-hours.js';
import { taperShares } from '../../../src/training/season/taper-shares.js';
import { patience, runs } from '../runs.js';
import { referenceHours, taperShare } from './hours-reference.js';

const part = fc.integer({ min: 0, max: 95 }).map((per) => per / 100);
const byHand = fc.oneof(
  { weight: 8, arbitrary: fc.constant(null) },
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.integer({ min: 0, max: 240 }).map((steps) => steps * 5) },
);
/** Weeks in any order whatever, and such as a season has: up, taper, rest, and on. */
const courses = fc.oneof(
  fc.array(fc.constantFrom<HoursFrame['course']>('holds', 'rises', 'taper', 'recovery'), {
    minLength: 1,
    maxLength: 30,
  }),
  fc
    .tuple(fc.nat(20), fc.nat(6), fc.nat(3), fc.nat(4), fc.nat(6))
    .map(([up, hold, taper, rest, after]) => [
      ...Array.from({ length: up + 1 }, () => 'rises' as const),
      ...Array.from({ length: hold }, () => 'holds' as const),
      ...Array.from({ length: taper }, () => 'taper' as const),
      ...Array.from({ length: rest }, () => 'recovery' as const),
      ...Array.from({ length: after }, () => 'holds' as const),
    ]),
);
const frameLists = courses.chain((list) =>
  fc.tuple(
    ...list.map((course): fc.Arbitrary<HoursFrame> =>
      fc.record({
        course: fc.constant(course),
        taperLeft: fc.nat(2),
        isEasier: fc.boolean(),
        hasOtherEvent: fc.oneof(
          { weight: 5, arbitrary: fc.constant(false) },
          { weight: 1, arbitrary: fc.constant(true) },
        ),
        byHand,
      }),
    ),
  ),
);
const steps = fc.uniqueArray(
  fc.record({ weeks: fc.integer({ min: 1, max: 6 }), shares: fc.array(part, { minLength: 1, maxLength: 4 }) }),
  { selector: ({ weeks }) => weeks, maxLength: 4 },
);
const paces: fc.Arbitrary<Pace> = fc.record({
  start: fc.oneof(
    fc.integer({ min: 6, max: 240 }).map((each) => each * 5),
    fc.integer({ min: 30, max: 1200 }),
  ),
  weeksOff: fc.oneof(fc.constant(0), fc.nat(10)),
  most: fc.integer({ min: 30, max: 1500 }),
  least: fc.constantFrom(0, 30),
  step: fc.constantFrom(1, 5, 10),
  rise: part,
  easierDrop: part,
  taper: fc.record({ weeks: fc.constant(3), drop: part }),
  recoveryShare: part,
  wayBack: fc.record({ offShare: fc.constantFrom(0, 0.25, 0.5), steps }),
});

describe('seasonHours(frames, pace)', { timeout: patience }, () => {
  test('gives what a second way to work it out gives', () => {
    fc.assert(
      fc.property(frameLists, paces, (frames, pace) => {
        const all = seasonHours(frames, pace);
        const expected = referenceHours(frames, pace);
        expect(all.map(({ minutes, reason }) => ({ minutes, reason }))).toEqual(
          expected.map(({ minutes, reason }) => ({ minutes, reason })),
        );
        all.forEach(({ base, share, ceiling }, week) => {
          expect(base).toBe(expected[week]?.base);
          expect(ceiling).toBeCloseTo(base * (1 + pace.rise), 9);
          if (share === null) expect(expected[week]?.share).toBeNull();
          else expect(share).toBeCloseTo(expected[week]?.share ?? NaN, 9);
        });
      }),
      runs(1500, 200_000),
    );
  });
});

describe('taperShares(weeks, drop)', () => {
  test('has the roots that can be written down', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3 }), part, (weeks, drop) => {
        const shares = taperShares(weeks, drop);
        const expected = shares.map((_, index) => taperShare({ weeks, drop }, weeks - 1 - index));
        expect(shares).toHaveLength(weeks);
        shares.forEach((share, index) => expect(share).toBeCloseTo(expected[index] ?? NaN, 9));
      }),
      runs(300, 20_000),
    );
  });
});
