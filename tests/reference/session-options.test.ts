import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { categoryIds } from '../../src/training/method/ids.js';
import { coachLimits } from './coach-method.js';
import { optionsByEvenLists } from './even-session-reference.js';
import { planOf } from './plan-door.js';
import { patience, runs } from './runs.js';
import { sessionLimits } from './session-limits.js';
import { everyMultiset, optionsByBruteForce } from './session-reference.js';
import type { CuttingQuestion } from './session-reference.js';

describe('session options', () => {
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

describe('the two references for session options', () => {
  const questions: fc.Arbitrary<CuttingQuestion> = fc
    .record({ limits: coachLimits, parts: fc.integer({ min: 1, max: 14_000 }), miss: fc.integer({ min: -1, max: 1 }) })
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
