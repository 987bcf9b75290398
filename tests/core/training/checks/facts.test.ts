import { describe, expect, test } from 'vitest';
import { activityFacts } from '../../../../src/training/checks/activity-facts.js';
import { sessionFacts } from '../../../../src/training/checks/session-facts.js';
import { builtInChecks } from '../../../../src/training/method/built-in-checks.js';

const efforts = { slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 };
const noMinutes = { slow: 0, tempo: 0, intervals: 0, cross: 0, strength: 0 };

describe('activityFacts(minutes, activity)', () => {
  const { activity } = builtInChecks;

  test('counts runs as vigorous, cross-training as moderate, strength as neither', () => {
    const minutes = { slow: 72, tempo: 36, intervals: 24, cross: 36, strength: 72 };
    expect(activityFacts(minutes, activity)).toEqual({
      ...{ moderate_minutes: 36, vigorous_minutes: 132, activity_minutes: 36 + 2 * 132 },
    });
  });

  test('is 150 at 75 vigorous minutes, and at 150 moderate ones (WHO 2020, A04; one for two: A06)', () => {
    expect(activityFacts({ ...noMinutes, slow: 75 }, activity).activity_minutes).toBe(150);
    expect(activityFacts({ ...noMinutes, cross: 150 }, activity).activity_minutes).toBe(150);
    expect(activityFacts({ ...noMinutes, cross: 75, slow: 37.5 }, activity).activity_minutes).toBe(150);
    expect(activityFacts({ ...noMinutes, strength: 500 }, activity).activity_minutes).toBe(0);
  });

  test('leaves out a kind whose multiple is below moderate, and one that has none', () => {
    const own = { ...activity, kinds: [{ id: 'cross', multiple: 2.9 } as const] };
    expect(activityFacts({ ...noMinutes, cross: 60, slow: 60 }, own).activity_minutes).toBe(0);
  });
});

describe('sessionFacts(sessions, efforts)', () => {
  test('counts runs, hard ones and strength sessions, the longest run and the load', () => {
    const sessions = { slow: [45, 30], tempo: [35], intervals: [25], cross: [90], strength: [40, 35] };
    expect(sessionFacts(sessions, efforts)).toEqual({
      ...{ running_sessions: 4, hard_sessions: 2, strength_sessions: 2, longest_run: 45 },
      week_load: 75 * 3 + 35 * 6 + 25 * 8 + 90 * 3 + 75 * 5,
    });
  });

  test.each([
    ['slow', { slow: [80], tempo: [50], intervals: [60] }],
    ['tempo', { slow: [50], tempo: [80], intervals: [60] }],
    ['intervals', { slow: [50], tempo: [60], intervals: [80] }],
  ])('takes the longest run from %s too', (_, runs) => {
    expect(sessionFacts({ cross: [120], strength: [120], ...runs }, efforts).longest_run).toBe(80);
  });

  test('is nothing of a week without sessions', () => {
    const none = { slow: [], tempo: [], intervals: [], cross: [], strength: [] };
    expect(sessionFacts(none, efforts)).toEqual({
      ...{ running_sessions: 0, hard_sessions: 0, strength_sessions: 0, longest_run: 0, week_load: 0 },
    });
  });
});
