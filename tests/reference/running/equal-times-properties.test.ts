import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../src/training/method/built-in-running.js';
import { equalTimes, type EqualTime } from '../../../src/training/running/equal-times.js';
import type { RunTime } from '../../../src/training/running/riegel.js';
import { patience, runs } from '../runs.js';
import { secondsByTurns, uptakeByPrint } from './race-reference.js';
import { amount, races } from './random-runners.js';

const usual = runs(600, 60_000);
const rules = builtInRunning.equal_times;
const known = fc
  .constantFrom(...rules.distances)
  .chain((metres) => amount(85, 400).map((speed): RunTime => ({ metres, seconds: (metres / speed) * 60 })));
const anyRaces = fc.oneof(races, known);
const isWithin = (seconds: number): boolean => seconds >= 210 && seconds <= 13_800;

/** Every pair of two lists of the same distances. */
const pairs = (one: readonly EqualTime[], other: readonly EqualTime[]) =>
  one.map((each, index) => {
    const beside = other[index];
    if (beside?.metres !== each.metres) throw new Error('not the same distances');
    return [each, beside] as const;
  });

describe('times at other distances', { timeout: patience }, () => {
  test('are told for every distance of the method, shortest first', () => {
    fc.assert(
      fc.property(anyRaces, (race) => {
        expect(equalTimes(race, rules).map(({ metres }) => metres)).toEqual(rules.distances);
      }),
      usual,
    );
  });

  test('are those of both equations as they are printed', () => {
    fc.assert(
      fc.property(anyRaces, (race) => {
        const uptake = uptakeByPrint(race.metres, race.seconds);
        for (const { metres, riegel, uptake: seconds } of equalTimes(race, rules)) {
          expect(riegel / (race.seconds * Math.exp(1.06 * Math.log(metres / race.metres)))).toBeCloseTo(1, 9);
          expect(seconds / secondsByTurns(uptake, metres)).toBeCloseTo(1, 9);
        }
      }),
      usual,
    );
  });

  test('are a range with both equations in it, in whole steps of 5, 15, 30 or 60 seconds', () => {
    fc.assert(
      fc.property(races, (race) => {
        for (const { metres, riegel, uptake, from, to } of equalTimes(race, rules)) {
          expect(from).toBeLessThanOrEqual(Math.min(riegel, uptake));
          expect(to).toBeGreaterThanOrEqual(Math.max(riegel, uptake));
          if (metres === race.metres) continue;
          for (const end of [from, to]) expect(end % 5).toBe(0);
          expect(Math.min(riegel, uptake) - from).toBeLessThan(60);
        }
      }),
      usual,
    );
  });

  test('are no wider than the equations and a step where nothing is widened', () => {
    fc.assert(
      fc.property(anyRaces, (race) => {
        for (const { riegel, uptake, to, widened } of equalTimes(race, rules))
          if (widened === null) expect(to - Math.max(riegel, uptake)).toBeLessThan(60);
      }),
      usual,
    );
  });

  test('are 5 % wider at the slower end where a time is outside 3.5 to 230 minutes', () => {
    fc.assert(
      fc.property(anyRaces, (race) => {
        for (const { metres, riegel, uptake, to, widened } of equalTimes(race, rules)) {
          const isFine = [race.seconds, riegel, uptake].every(isWithin);
          if (metres === race.metres) continue;
          if (!isFine) expect(to).toBeGreaterThanOrEqual(Math.max(riegel, uptake) * 1.05 - 1e-6);
          const isMarathon = metres === 42_195 && race.metres <= 42_195 - 42.195;
          expect(widened).toBe(isMarathon ? 'marathon' : isFine ? null : 'outside');
        }
      }),
      usual,
    );
  });

  test('are the race itself over its own distance', () => {
    fc.assert(
      fc.property(known, ({ metres, seconds }) => {
        const own = equalTimes({ metres, seconds }, rules).filter((each) => each.metres === metres);
        expect(own).toEqual([
          { ...{ metres, riegel: seconds, uptake: seconds, from: seconds, to: seconds }, widened: null },
        ]);
      }),
      usual,
    );
  });

  // At the limits of the equations a faster race may leave them, and its slower end then is 5 % wider.
  test('are nowhere slower after a faster race', () => {
    fc.assert(
      fc.property(anyRaces, amount(0.5, 1), ({ metres, seconds }, part) => {
        const slow = equalTimes({ metres, seconds }, rules);
        const fast = equalTimes({ metres, seconds: seconds * part }, rules);
        for (const [after, before] of pairs(fast, slow)) {
          expect(after.riegel).toBeLessThanOrEqual(before.riegel);
          expect(after.uptake).toBeLessThanOrEqual(before.uptake * (1 + 1e-12));
          expect(after.from).toBeLessThanOrEqual(before.from);
          const all = [seconds, seconds * part, after.riegel, after.uptake, before.riegel, before.uptake];
          if (all.every(isWithin)) expect(after.to).toBeLessThanOrEqual(before.to);
        }
      }),
      usual,
    );
  });
});
