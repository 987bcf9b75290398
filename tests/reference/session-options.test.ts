import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import defaultMethod from '../../shared/methods/default.json' with { type: 'json' };
import { createPlanner } from '../../src/plan.js';
import type { Planner } from '../../src/plan.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { athletesOnSteps } from './athletes.js';
import { optionsByEvenLists } from './even-session-reference.js';
import { planOf } from './plan-door.js';
import { patience, runs } from './runs.js';
import { sessionLimits } from './session-limits.js';
import type { SessionLimits } from './session-limits.js';
import { everyMultiset, optionsByBruteForce } from './session-reference.js';
import type { CuttingQuestion } from './session-reference.js';

const fives = (least: number, most: number) => fc.integer({ min: least / 5, max: most / 5 }).map((units) => 5 * units);

/** Session limits as a coach might set them, small enough for brute force. */
const someLimits: fc.Arbitrary<SessionLimits> = fives(10, 30).chain((shortest) =>
  fives(shortest, 90).chain((typical) => fives(typical, 120).map((longest) => ({ shortest, typical, longest }))),
);

/** Weeks of at most four hours. */
const shortWeeks = athletesOnSteps.filter(({ hours }) => hours <= 4);

const fiveLimits = fc.tuple(someLimits, someLimits, someLimits, someLimits, someLimits);

async function plannerWith(limits: readonly SessionLimits[]): Promise<Planner> {
  const categories = defaultMethod.categories.map((category, index) => ({ ...category, session: limits[index] }));
  const outcome = await createPlanner({ ...defaultMethod, categories });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('session options', () => {
  it(
    'are those of brute force, whatever the limits of a session',
    async () => {
      let compared = 0;
      await fc.assert(
        fc.asyncProperty(fiveLimits, shortWeeks, async (limits, request) => {
          const planner = await plannerWith(limits);
          const outcome = planner.plan(request);
          if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
          const { minutes, rounded, options } = outcome.value;
          categoryIds.forEach((category, index) => {
            const { shortest, typical, longest } = limits[index] ?? sessionLimits[category];
            const question = { ...amountOf(minutes[category]), rounded: rounded[category], shortest, typical, longest };
            expect({ category, question, options: options[category] }).toEqual({
              category,
              question,
              options: optionsByBruteForce(question),
            });
            compared += 1;
          });
        }),
        runs(400, 4000),
      );
      expect(compared).toBeGreaterThanOrEqual(5 * runs(400, 4000).numRuns);
    },
    patience,
  );

  it.each([
    {
      rounded: 75,
      minutes: 72,
      first: [35, 40],
      others: [
        [30, 45],
        [25, 50],
        [25, 25, 25],
      ],
      category: 'strength',
    },
    { rounded: 35, minutes: 36, first: [35], others: [[30], [40], [20, 20]], category: 'cross' },
    { rounded: 70, minutes: 72, first: [35, 35], others: [[30, 40], [70], [20, 20, 30]], category: 'slow' },
    { rounded: 25, minutes: 24, first: [25], others: [[20], [30]], category: 'intervals' },
  ] as const)('of $minutes minutes of $category begin with $first', ({ category, first, others }) => {
    const { options } = planOf({ hours: 4, phase: 'build', level: 'trained', event: '10k', strengthCap: 120 });
    expect(options[category][0]).toEqual(first);
    for (const other of others) expect(options[category]).toContainEqual(other);
  });
});

describe('a picked session option', () => {
  const request = { hours: 4, phase: 'build', level: 'trained', event: '10k', strengthCap: 120 } as const;

  it('is kept, whichever of the options it is', () => {
    const { options } = planOf(request);
    for (const category of categoryIds) {
      for (const option of options[category]) {
        const plan = planOf({ ...request, sessions: { [category]: option } });
        expect(plan.sessions).toEqual({ ...planOf(request).sessions, [category]: option });
        expect(plan.notices).toEqual(planOf(request).notices);
      }
    }
  });

  it.each([
    { why: 'more than ten minutes off', picked: [30, 30] },
    { why: 'longer than a session', picked: [75] },
    { why: 'shorter than a session', picked: [10, 30, 30] },
  ])('gives way to the best, with a notice, where it is $why', ({ picked }) => {
    const plan = planOf({ ...request, sessions: { strength: picked } });
    expect(plan.sessions.strength).toEqual(plan.options.strength[0]);
    const dropped = plan.notices.filter(({ code }) => code === 'pick-dropped');
    expect(dropped.map(({ category }) => category)).toEqual(['strength']);
  });
});

/** Quarter hours and whole percentages make whole hundredths of a minute. */
function amountOf(minutes: number): Pick<CuttingQuestion, 'parts' | 'partsPerMinute'> {
  const parts = Math.round(minutes * 100);
  expect(parts / 100).toBeCloseTo(minutes, 9);
  return { parts, partsPerMinute: 100 };
}

describe('the two references for session options', () => {
  const questions: fc.Arbitrary<CuttingQuestion> = fc
    .record({ limits: someLimits, parts: fc.integer({ min: 1, max: 14_000 }), miss: fc.integer({ min: -1, max: 1 }) })
    .map(({ limits, parts, miss }) => {
      const rounded = Math.max(5, 5 * (Math.round(parts / 500) + miss));
      return { ...limits, parts, partsPerMinute: 100, rounded };
    });

  it(
    'agree',
    () => {
      fc.assert(
        fc.property(questions, (question) => {
          expect(optionsByEvenLists(question)).toEqual(optionsByBruteForce(question));
        }),
        runs(400, 4000),
      );
    },
    patience,
  );

  it('know, of 72 minutes, every pair of 15 to 60 minutes from 62 to 82', () => {
    const question = { parts: 72, partsPerMinute: 1, rounded: 75, ...sessionLimits.strength };
    const pairs = everyMultiset(question).filter((list) => list.length === 2);
    // 65: 15+50 to 30+35; 70: 15+55 to 35+35; 75: 15+60 to 35+40; 80: 20+60 to 40+40
    expect(pairs).toHaveLength(4 + 5 + 5 + 5);
  });
});
