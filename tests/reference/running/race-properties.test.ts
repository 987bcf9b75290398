import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldShare, oxygenCost, secondsFor, speedAt, uptakeOf } from '../../../src/training/running/oxygen.js';
import { riegelSeconds } from '../../../src/training/running/riegel.js';
import { patience, runs } from '../runs.js';
import { secondsByTurns, speedByNewton, uptakeByPrint } from './race-reference.js';
import { amount, races, uptakes } from './random-runners.js';

const usual = runs(1000, 100_000);
const distances = amount(400, 500_000);
/** The same number but for rounding errors. */
const toBeNear = (found: number, wanted: number): void => expect(Math.abs(found / wanted - 1)).toBeLessThan(1e-9);

// The properties that shared/checks/running.json names beside the formulas, and two more solvers for their inverses.
describe('the law of endurance', { timeout: patience }, () => {
  test('gives a race its own time', () => {
    fc.assert(
      fc.property(races, (race) => {
        expect(riegelSeconds(race, race.metres)).toBe(race.seconds);
      }),
      usual,
    );
  });

  test('comes to the same by a distance between', () => {
    fc.assert(
      fc.property(races, distances, distances, (race, between, over) => {
        const halfway = { metres: between, seconds: riegelSeconds(race, between) };
        toBeNear(riegelSeconds(halfway, over), riegelSeconds(race, over));
      }),
      usual,
    );
  });

  test('takes longer over a longer distance, at a lower speed', () => {
    fc.assert(
      fc.property(races, distances, amount(1.000_001, 10), (race, short, times) => {
        const long = short * times;
        const [before, after] = [riegelSeconds(race, short), riegelSeconds(race, long)];
        expect(after).toBeGreaterThan(before);
        expect(long / after).toBeLessThan(short / before);
      }),
      usual,
    );
  });
});

describe('oxygen uptake', { timeout: patience }, () => {
  test('of the speed for an uptake is that uptake, and the speed is the one of Newton’s method', () => {
    fc.assert(
      fc.property(amount(0, 120), (oxygen) => {
        expect(Math.abs(oxygenCost(speedAt(oxygen)) - oxygen)).toBeLessThan(1e-11);
        toBeNear(speedAt(oxygen), speedByNewton(oxygen));
      }),
      usual,
    );
  });

  test('held is the less the longer, from 1.29 to 0.8 of the greatest', () => {
    fc.assert(
      fc.property(amount(0, 1440), amount(0.01, 600), (minutes, more) => {
        expect(heldShare(minutes + more)).toBeLessThan(heldShare(minutes));
        expect(heldShare(minutes)).toBeLessThan(1.2884);
        expect(heldShare(minutes)).toBeGreaterThan(0.8);
      }),
      usual,
    );
  });

  test('of a race is that of the print', () => {
    fc.assert(
      fc.property(races, (race) => {
        toBeNear(uptakeOf(race), uptakeByPrint(race.metres, race.seconds));
      }),
      usual,
    );
  });

  test('of the time for an uptake is that uptake', () => {
    fc.assert(
      fc.property(uptakes, distances, (uptake, metres) => {
        toBeNear(uptakeOf({ metres, seconds: secondsFor(uptake, metres) }), uptake);
      }),
      usual,
    );
  });

  test('gives the time that the authors’ own scheme of turns gives', () => {
    fc.assert(
      fc.property(uptakes, distances, (uptake, metres) => {
        toBeNear(secondsFor(uptake, metres), secondsByTurns(uptake, metres));
      }),
      usual,
    );
  });

  test('falls with the time of a race, so that there is but one time', () => {
    fc.assert(
      fc.property(races, amount(1.0001, 3), ({ metres, seconds }, times) => {
        expect(uptakeOf({ metres, seconds: seconds * times })).toBeLessThan(uptakeOf({ metres, seconds }));
      }),
      usual,
    );
  });
});
