import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../../shared/methods/default.json';
import { createPlanner } from '../../../../src/plan.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { daysWithBoth, orderAdvice } from '../../../../src/words/week/order-advice.js';
import { german, planner } from '../planned.js';

const words = await loadWords('en');

describe('orderAdvice(words, method)', () => {
  it('puts the run first, six hours apart, and names its sources', () => {
    const { text, sources } = orderAdvice(words, planner.method);
    expect(text).toMatch(
      /^Where a run and strength fall on one day: run first, and leave at least 6 hours between them/,
    );
    expect(sources).toEqual(['A19', 'A20', 'A23', 'A24']);
    expect(orderAdvice(german, planner.method).text).toMatch(/zuerst laufen und, .+, mindestens 6 Stunden dazwischen/);
  });

  it("uses a coach's own text and hours", async () => {
    const week = { ...defaultMethod.week, hours_between: 8, order_reason: 'Leave {hours}.', order_sources: undefined };
    const own = await createPlanner({ ...defaultMethod, week });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    expect(orderAdvice(words, own.value.method)).toEqual({ text: 'Leave 8 hours.', sources: [] });
  });
});

describe('daysWithBoth(week)', () => {
  it('gives the days on which a run and strength fall', () => {
    const strength = { category: 'strength', minutes: 30 } as const;
    const days = [
      [strength],
      [{ category: 'slow', minutes: 40 }, strength],
      [{ category: 'cross', minutes: 40 }, strength],
      [{ category: 'tempo', minutes: 30 }],
      [],
      [{ category: 'intervals', minutes: 30 }, { category: 'cross', minutes: 30 }, strength],
      [
        { category: 'intervals', minutes: 30 },
        { category: 'slow', minutes: 30 },
      ],
    ] as const;
    expect(daysWithBoth({ days })).toEqual([1, 5]);
  });

  it('gives none where there is no week', () => {
    expect(daysWithBoth({ days: null })).toEqual([]);
  });
});
