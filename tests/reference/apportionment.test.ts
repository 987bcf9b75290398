import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import published from '../../shared/checks/apportionment.json' with { type: 'json' };
import { apportion } from '../../src/training/sessions/apportion.js';
import { apportionByQuotients, apportionByRemainders, lowerQuotas } from './apportionment-reference.js';
import { patience, runs } from './runs.js';

const inOrder = (weights: readonly number[]): readonly number[] => weights.map((_, index) => index);
const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);
/** Printed weights have at most two decimals; the references want whole ones. */
const whole = (weights: readonly number[]): readonly number[] => weights.map((weight) => Math.round(weight * 100));

describe(`published examples: ${published.methods.source.cite}`, () => {
  const cases = published.methods.cases.map(({ in: { weights, seats }, out }) => ({ weights, seats, ...out }));

  it.each(cases.flatMap((example) => (example.webster ? [{ ...example, webster: example.webster }] : [])))(
    'apportion($weights, $seats) is $webster',
    ({ weights, seats, webster }) => {
      expect(apportion(weights, seats, inOrder(weights))).toEqual(webster);
      expect(apportionByQuotients(whole(weights), seats, inOrder(weights))).toEqual(webster);
    },
  );

  it.each(cases.flatMap((example) => (example.hamilton ? [{ ...example, hamilton: example.hamilton }] : [])))(
    'largest remainders for $weights, $seats are $hamilton',
    ({ weights, seats, hamilton }) => {
      expect(apportionByRemainders(whole(weights), seats)).toEqual(hamilton);
    },
  );

  it.each(cases.flatMap((example) => (example.lower ? [{ ...example, lower: example.lower }] : [])))(
    'lower quotas for $weights, $seats are $lower',
    ({ weights, seats, lower }) => {
      expect(lowerQuotas(whole(weights), seats)).toEqual(lower);
    },
  );

  it.each(cases.flatMap((example) => (example.quota1 ? [{ ...example, quota1: example.quota1 }] : [])))(
    'the first of $weights has a quota of $quota1, and may get more than it rounded up',
    ({ weights, seats, quota1 }) => {
      expect(((weights[0] ?? NaN) * seats) / total(weights)).toBeCloseTo(quota1, 8);
      expect(apportion(weights, seats, inOrder(weights))[0]).toBeGreaterThan(Math.ceil(quota1));
    },
  );
});

/** Small problems: up to five categories and enough units for a week. */
const weightLists = fc
  .array(fc.integer({ min: 0, max: 2000 }), { minLength: 1, maxLength: 6 })
  .filter((list) => total(list) > 0);
const problems = fc
  .record({ weights: weightLists, seats: fc.integer({ min: 0, max: 240 }) })
  .chain(({ weights, seats }) =>
    fc.record({
      weights: fc.constant(weights),
      seats: fc.constant(seats),
      tieOrder: fc.shuffledSubarray([...inOrder(weights)], { minLength: weights.length }),
    }),
  );

describe('apportion(weights, seats, tieOrder)', () => {
  it(
    'gives the table of quotients',
    () => {
      fc.assert(
        fc.property(problems, ({ weights, seats, tieOrder }) => {
          expect(apportion(weights, seats, tieOrder)).toEqual(apportionByQuotients(weights, seats, tieOrder));
        }),
        runs(2000, 200_000),
      );
    },
    patience,
  );

  it(
    'gives the table of quotients where many ties have to be broken',
    () => {
      const few = fc
        .array(fc.integer({ min: 0, max: 4 }), { minLength: 5, maxLength: 5 })
        .filter((list) => total(list) > 0);
      const orders = fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5 });
      fc.assert(
        fc.property(few, fc.integer({ min: 0, max: 60 }), orders, (weights, seats, tieOrder) => {
          expect(apportion(weights, seats, tieOrder)).toEqual(apportionByQuotients(weights, seats, tieOrder));
        }),
        runs(1000, 200_000),
      );
    },
    patience,
  );

  it(
    'gives out every seat, none to a weight of nothing, and never takes one back',
    () => {
      fc.assert(
        fc.property(problems, ({ weights, seats, tieOrder }) => {
          const award = apportion(weights, seats, tieOrder);
          const next = apportion(weights, seats + 1, tieOrder);
          expect(total(award)).toBe(seats);
          weights.forEach((weight, index) => {
            expect(award[index]).toBeGreaterThanOrEqual(0);
            if (weight === 0) expect(award[index]).toBe(0);
            expect(next[index]).toBeGreaterThanOrEqual(award[index] ?? NaN);
          });
        }),
        runs(1000, 200_000),
      );
    },
    patience,
  );

  it(
    'does not care for the scale of the weights',
    () => {
      fc.assert(
        fc.property(problems, fc.integer({ min: 2, max: 1000 }), ({ weights, seats, tieOrder }, factor) => {
          const award = apportion(weights, seats, tieOrder);
          expect(
            apportion(
              weights.map((weight) => weight * factor),
              seats,
              tieOrder,
            ),
          ).toEqual(award);
          expect(
            apportion(
              weights.map((weight) => weight / 1024),
              seats,
              tieOrder,
            ),
          ).toEqual(award);
        }),
        runs(1000, 200_000),
      );
    },
    patience,
  );

  it(
    'does not care for the order of the weights, only for that of ties',
    () => {
      const shuffled = problems.chain((problem) =>
        fc.record({
          problem: fc.constant(problem),
          places: fc.shuffledSubarray([...inOrder(problem.weights)], { minLength: problem.weights.length }),
        }),
      );
      fc.assert(
        fc.property(shuffled, ({ problem: { weights, seats, tieOrder }, places }) => {
          const award = apportion(weights, seats, tieOrder);
          const moved = apportion(
            places.map((place) => weights[place] ?? NaN),
            seats,
            tieOrder.map((index) => places.indexOf(index)),
          );
          expect(moved).toEqual(places.map((place) => award[place]));
        }),
        runs(1000, 200_000),
      );
    },
    patience,
  );
});
