import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import published from '../../shared/checks/apportionment.json' with { type: 'json' };
import { apportion } from '../../src/training/sessions/apportion.js';
import { apportionByRemainders } from './apportionment-reference.js';
import { patience, runs } from './runs.js';

/*
 * Why minutes are rounded by Sainte-Laguë's method: with largest remainders a longer week can take minutes away.
 */
const { source, cases, populations } = published.alabama;
const states = Object.keys(populations.people);
const people = Object.values(populations.people);
const stateOrder = states.map((_, index) => index);
const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);

/** Places at which the second list has less than the first. */
const losers = (before: readonly number[], after: readonly number[]): readonly number[] =>
  before.flatMap((seats, index) => ((after[index] ?? NaN) >= seats ? [] : [index]));

describe(`the Alabama paradox: ${source.cite}`, () => {
  const [rounded299, rounded300, exact] = cases;

  it('the populations add up to the printed total and have the printed shares', () => {
    expect(total(people)).toBe(exact?.in.total);
    for (const state of ['AL', 'IL', 'TX'] as const) {
      const share = (populations.people[state] * 299) / total(people);
      expect(Math.abs(share - (exact?.out[state] ?? NaN))).toBeLessThanOrEqual(exact?.printedPrecision ?? NaN);
    }
  });

  it.each([
    { example: rounded299, divisor: 165_128 },
    { example: rounded300, divisor: 164_578 },
  ])('shares printed by the rounded divisor $divisor', ({ example, divisor }) => {
    const printed = { TX: cases[0]?.in.TX, AL: populations.people.AL, IL: populations.people.IL };
    expect(Math.round((example?.in.total ?? NaN) / (example?.in.seats ?? NaN))).toBe(divisor);
    for (const [state, share] of Object.entries(example?.out ?? {})) {
      const population = new Map(Object.entries(printed)).get(state) ?? NaN;
      expect(Math.abs(population / divisor - share)).toBeLessThanOrEqual(example?.printedPrecision ?? NaN);
    }
  });

  it('Alabama has 8 of 299 seats but 7 of 300 by largest remainders, one seat at least for every state', () => {
    const before = apportionByRemainders(people, 299, 1);
    const after = apportionByRemainders(people, 300, 1);
    expect(before[states.indexOf('AL')]).toBe(8);
    expect(after[states.indexOf('AL')]).toBe(7);
    expect(losers(before, after).map((index) => states[index])).toEqual(['AL']);
    expect(losers(after, before).map((index) => states[index])).toEqual(['IL', 'TX']);
  });

  it('no state ever loses a seat by our method', () => {
    for (let seats = 1; seats < 400; seats += 1) {
      const before = apportion(people, seats, stateOrder);
      expect(losers(before, apportion(people, seats + 1, stateOrder))).toEqual([]);
    }
  });
});

describe('the same on a slider', () => {
  /** Percentages that a coach might well choose (invented); 4 h are 48 units of 5 minutes, 4 h 15 are 51. */
  const shares = [40, 15, 5, 15, 25];
  const order = [4, 0, 1, 2, 3];
  const minutes = (units: readonly number[]) => units.map((count) => 5 * count);

  it('largest remainders take five minutes of intervals from a week that is a quarter of an hour longer', () => {
    expect(minutes(apportionByRemainders(shares, 48))).toEqual([95, 35, 15, 35, 60]);
    expect(minutes(apportionByRemainders(shares, 51))).toEqual([100, 40, 10, 40, 65]);
  });

  it('our method takes none', () => {
    expect(losers(apportion(shares, 48, order), apportion(shares, 51, order))).toEqual([]);
  });
});

/** Few seats, so that every possible apportionment can be tried. */
const smallProblems = fc.record({
  weights: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 2, maxLength: 4 }),
  seats: fc.integer({ min: 1, max: 12 }),
});

/** Every way to give `seats` to `holders`. */
function everyAward(holders: number, seats: number): readonly (readonly number[])[] {
  if (holders === 1) return [[seats]];
  return Array.from({ length: seats + 1 }, (_, first) => first).flatMap((first) =>
    everyAward(holders - 1, seats - first).map((rest) => [first, ...rest]),
  );
}

/** Sums over all holders of a measure of seats against quota (the exact share). */
function misfit(
  weights: readonly number[],
  award: readonly number[],
  measure: (miss: number, quota: number) => number,
) {
  const perWeight = total(award) / total(weights);
  return total(weights.map((weight, index) => measure((award[index] ?? NaN) - weight * perWeight, weight * perWeight)));
}

describe(`what each method makes least: ${published.optimality.source.cite} (${published.optimality.status})`, () => {
  const leastOf = (
    { weights, seats }: { weights: readonly number[]; seats: number },
    measure: (miss: number, quota: number) => number,
  ) => Math.min(...everyAward(weights.length, seats).map((award) => misfit(weights, award, measure)));

  it(
    'ours the squared misses over the quotas',
    () => {
      const measure = (miss: number, quota: number) => miss ** 2 / quota;
      fc.assert(
        fc.property(smallProblems, (problem) => {
          const award = apportion(problem.weights, problem.seats, [0, 1, 2, 3].slice(0, problem.weights.length));
          expect(misfit(problem.weights, award, measure)).toBeCloseTo(leastOf(problem, measure), 9);
        }),
        runs(200, 20_000),
      );
    },
    patience,
  );

  it(
    'largest remainders the misses, and the squared ones',
    () => {
      const measures = [(miss: number) => Math.abs(miss), (miss: number) => miss ** 2];
      fc.assert(
        fc.property(smallProblems, fc.constantFrom(...measures), (problem, measure) => {
          const award = apportionByRemainders(problem.weights, problem.seats);
          expect(misfit(problem.weights, award, measure)).toBeCloseTo(leastOf(problem, measure), 9);
        }),
        runs(200, 20_000),
      );
    },
    patience,
  );
});
