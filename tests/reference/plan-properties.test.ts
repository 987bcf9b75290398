import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/plan/document.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { anyAthletes, athletesOnSteps } from './athletes.js';
import { invariants, violationsOf } from './invariants.js';
import { planOf } from './plan-door.js';
import { patience, runs } from './runs.js';

describe('any plan', { timeout: patience }, () => {
  it(`keeps ${String(invariants.length)} invariants`, () => {
    fc.assert(
      fc.property(anyAthletes, (athlete) => {
        expect(violationsOf(planOf(athlete))).toEqual([]);
      }),
      runs(1000, 1_000_000),
    );
  });

  it('survives a file unchanged', () => {
    fc.assert(
      fc.property(anyAthletes, (athlete) => {
        const plan = planOf(athlete);
        expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
      }),
      runs(200, 50_000),
    );
  });

  it('is the same when it is asked for again after another, and has the inputs of the request', () => {
    fc.assert(
      fc.property(anyAthletes, anyAthletes, (athlete, another) => {
        const first = JSON.stringify(planOf(athlete));
        planOf(another);
        const again = planOf(athlete);
        expect(JSON.stringify(again)).toBe(first);
        expect(again.inputs).toEqual(athlete);
      }),
      runs(200, 50_000),
    );
  });
});

describe('a plan on the steps of the slider', { timeout: patience }, () => {
  it('has rounded minutes less than one unit off the exact ones', () => {
    fc.assert(
      fc.property(athletesOnSteps, (athlete) => {
        const { minutes, rounded } = planOf(athlete);
        const misses = categoryIds.map((category) => Math.abs(rounded[category] - minutes[category]));
        expect(Math.max(...misses)).toBeLessThan(5);
      }),
      runs(500, 80_000),
    );
  });
});

describe('more hours', { timeout: patience }, () => {
  const pairs = fc.tuple(anyAthletes, fc.double({ min: 0, max: 1, noNaN: true })).map(([athlete, way]) => {
    const hours = Math.min(20, athlete.hours + way * (20 - athlete.hours));
    return { less: planOf(athlete), more: planOf({ ...athlete, hours }) };
  });
  const changesOf = ({ rules }: Plan): string =>
    rules.flatMap(({ kind, acted, id }) => (kind === 'change' && acted ? [id] : [])).join();

  it('never take exact minutes from a category while no rule switches', () => {
    fc.assert(
      fc.property(pairs, ({ less, more }) => {
        fc.pre(changesOf(less) === changesOf(more));
        const losers = categoryIds.filter((category) => more.minutes[category] < less.minutes[category] - 1e-9);
        expect(losers).toEqual([]);
      }),
      runs(300, 100_000),
    );
  });

  it('never take rounded minutes from a category while no rule acts', () => {
    fc.assert(
      fc.property(pairs, ({ less, more }) => {
        fc.pre(changesOf(less) === '' && changesOf(more) === '');
        const losers = categoryIds.filter((category) => more.rounded[category] < less.rounded[category]);
        expect(losers).toEqual([]);
      }),
      runs(300, 100_000),
    );
  });
});
