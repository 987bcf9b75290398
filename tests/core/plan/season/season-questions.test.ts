import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import {
  seasonSeries,
  seasonSummary,
  whenReached,
  type SeasonOnShow,
} from '../../../../src/plan/season/season-questions.js';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { valueOf } from '../../training/method/documents.js';

/** Sixteen weeks to a half marathon from 4 hours, 6 at most: worked out by hand in tests/reference/season/worked-season. */
function onShow(changes: SeasonRequest = {}): SeasonOnShow {
  const planner = builtInPlanner();
  const request = { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 } as const;
  const plan = valueOf(planner.plan({ ...request, season: { date: '2027-04-11', weeks: 16, ...changes } }));
  if (!plan.season) throw new Error('there is no season');
  return { planner, inputs: plan.inputs, season: plan.season };
}

describe('a quantity in every week of a season', () => {
  test('is what the plan of the week has', () => {
    const on = onShow();
    const series = seasonSeries(on, 'slow_minutes');
    expect(Array.from(series)).toEqual(on.season.weeks.map(({ minutes }) => minutes.slow));
    expect(Array.from(seasonSeries(on, 'weekly_hours'))).toEqual(on.season.weeks.map(({ hours }) => hours));
  });

  test('knows the strength that is only kept up, and no week off', () => {
    const series = seasonSeries(onShow({ upkeepFrom: 'peak', upkeepSessions: 1 }), 'strength_minutes');
    // One typical session of 35 minutes in peak and taper, where 15 % of 220 and 140 minutes are less.
    expect(Array.from(series.slice(10, 16))).toEqual([108, 35, 35, 35, 33, 21]);
    const withHoliday = seasonSeries(onShow({ byHand: [{ start: '2027-01-18', hours: 0 }] }), 'strength_minutes');
    expect(Array.from(withHoliday, Number.isNaN).indexOf(true)).toBe(4);
  });

  test('does not disturb the planner', () => {
    const on = onShow();
    const before = on.planner.column.value('weekly_hours');
    seasonSeries(on, 'slow_minutes');
    expect(on.planner.column.value('weekly_hours')).toBe(before);
  });
});

describe('when a quantity reaches a value', () => {
  test.each([
    // 255 to 360 minutes are six hours in the weeks 11, 13 and 14.
    ['weekly_hours', 6, [11, 13, 14], 11, 6],
    ['weekly_hours', 6.01, [], 11, 6],
    // 10 % of 345 minutes; 36 of 360. In the taper 15 % of 220 are 33.
    ['intervals_minutes', 34.5, [10, 11, 13, 14], 11, 36],
    ['strength_minutes', 0, [...Array(18).keys()].map((index) => index + 1), 11, 108],
  ])('%s %d: in the weeks %j, the most in week %d', (quantity, value, weeks, largest, most) => {
    const found = whenReached(onShow(), quantity, value);
    expect(found.weeks.map(({ number }) => number)).toEqual(weeks);
    expect(found.largest?.week.number).toBe(largest);
    expect(found.largest?.value).toBeCloseTo(most, 9);
  });

  test('has no largest where it has no number', () => {
    const { weeks, largest } = whenReached(
      onShow({ weeks: 1, recoveryWeeks: 0, byHand: [{ start: '2027-04-11', hours: 0 }] }),
      'slow_minutes',
      0,
    );
    expect([weeks, largest]).toEqual([[], null]);
  });
});

describe('a season in a few numbers', () => {
  test('counts up to the event', () => {
    const { season } = onShow();
    const summary = seasonSummary(season);
    // 240 255 270 190 285 300 315 220 330 345 360 250 360 360 220 140 minutes.
    expect(summary.totalHours).toBeCloseTo(4440 / 60, 9);
    expect(summary).toMatchObject({ weeks: 16, mostHours: 6, cautions: 0 });
    expect(categoryIds.reduce((sum, id) => sum + summary.minutes[id], 0)).toBe(4440);
    // 3, 6, 8, 3 and 5 times 105, 55, 35, 55 and 110 minutes (effort times minutes: Foster 1998, from memory).
    expect(summary.mostLoad).toBe(315 + 330 + 280 + 165 + 550);
  });

  test('counts what is to be minded', () => {
    const { season } = onShow({ rise: 0.25, weeksOff: 1 });
    expect(seasonSummary(season).cautions).toBeGreaterThanOrEqual(2);
  });
});
