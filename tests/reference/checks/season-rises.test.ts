import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanSeason, SeasonWeek } from '../../../src/plan/season/document.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { anySeasons } from '../season/random-seasons.js';
import { patience, runs } from '../runs.js';
import { checkedPlan, checkOf } from './checks-door.js';

/** How far a number is above another, as a share of it; nothing where it is not, or where there is none to compare with. */
const above = (value: number, before: number): number => (before > 0 ? Math.max(0, (value - before) / before) : 0);

/** The steepest week: its hours over those that it starts from. */
function steepest({ weeks }: PlanSeason): number {
  let most = 0;
  for (const { hours, why } of weeks) most = Math.max(most, above(hours, why.base));
  return most;
}

/** The largest step of the longest run over the four weeks before, and before the season over what was told. */
function largestStep({ weeks, wishes }: PlanSeason): number {
  let most = 0;
  for (let week = 0; week < weeks.length; week += 1) {
    let before = week < 4 ? (wishes.longestRun ?? 0) : 0;
    for (let back = 1; back <= 4; back += 1) before = Math.max(before, weeks[week - back]?.longestRun ?? 0);
    most = Math.max(most, above(weeks[week]?.longestRun ?? 0, before));
  }
  return most;
}

const longest = ({ sessions: { slow, tempo, intervals } }: SeasonWeek): number =>
  Math.max(0, ...slow, ...tempo, ...intervals);

describe('what checks say of a season', { timeout: patience }, () => {
  test('is what its weeks have', () => {
    fc.assert(
      fc.property(anySeasons(builtInMethod), (asked) => {
        const plan = checkedPlan({ season: asked });
        const { season } = plan;
        if (!season) throw new Error('there is no season');
        const [rise, run] = [checkOf(plan, 'season-rise'), checkOf(plan, 'season-longest-run')];
        expect(rise?.value).toBeCloseTo(steepest(season), 9);
        expect(run?.value).toBeCloseTo(largestStep(season), 9);
        for (const week of season.weeks) expect(week.longestRun).toBe(longest(week));
        // A share of one fifth (C04) and of one tenth (C05); a caution above twice as long.
        expect(rise?.level).toBe(steepest(season) > 0.2 + 1e-12 ? 'look' : 'in-line');
        const step = largestStep(season);
        expect(run?.level).toBe(step > 1 + 1e-12 ? 'caution' : step > 0.1 + 1e-12 ? 'look' : 'in-line');
      }),
      runs(60, 3_000),
    );
  });

  test('takes what was told of the longest run before it for four weeks', () => {
    const at = (longestRun: number | null) =>
      checkOf(
        checkedPlan({ season: { start: '2026-01-05', weeks: 8, hours: 4, mostHours: 4, longestRun } }),
        'season-longest-run',
      );
    expect(at(20)?.value ?? 0).toBeGreaterThan(at(60)?.value ?? NaN);
  });

  test('is not known without one', () => {
    for (const id of ['season-rise', 'season-longest-run'])
      expect(checkOf(checkedPlan({ hours: 4 }), id)).toMatchObject({ value: null, level: null });
  });
});
