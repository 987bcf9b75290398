import { describe, expect, test } from 'vitest';
import { planWeek } from '../../../../src/plan.js';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import { weekPlanner } from '../../../../src/plan/record/planned-week.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { phaseSpans } from '../../../../src/words/handout/phase-spans.js';
import { loadWords } from '../../../../src/words/load-words.js';

const asked = (season: SeasonRequest) =>
  planWeek({ hours: 4, event: '10k', week: { days: [60, 60, 60, 60, 60, 60, 60] }, season });

// 31 December 2199 is a Tuesday: the last whole week ends on Sunday the 29th.
describe('a season at the end of the days that there are', () => {
  test.each([
    [0, '2199-12-29', '2199-12-30'],
    [2, '2199-12-15', '2199-12-16'],
  ])('with %i weeks of rest has its event on %s at the latest', async (recoveryWeeks, latest, tooLate) => {
    const fine = asked({ date: latest, weeks: 6, recoveryWeeks });
    if (!fine.ok || !fine.value.season) throw new Error('the season can be carried');
    const weeks = weekPlanner(builtInMethod, fine.value);
    for (const { start } of fine.value.season.weeks) expect(weeks(start).sessions.length).toBeGreaterThan(0);
    expect(phaseSpans(await loadWords('en'), fine.value.season).at(-1)?.span).toContain('Dec 29');
    expect(asked({ date: tooLate, weeks: 6, recoveryWeeks })).toEqual({
      ok: false,
      problems: [{ path: 'season.date', value: tooLate, code: 'out-of-range', allowed: { most: latest } }],
    });
  });

  test('has no further event beyond them', () => {
    const events = [{ date: '2199-12-31', event: '5k' as const }];
    expect(asked({ date: '2199-12-01', weeks: 6, recoveryWeeks: 0, events })).toMatchObject({
      ok: false,
      problems: [{ path: 'season.events[0].date', allowed: { most: '2199-12-29' } }],
    });
  });
});
