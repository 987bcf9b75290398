import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { defaultDocument, objectOf, plannerOf } from '../../training/method/documents.js';

const planner = builtInPlanner();
const days = [60, 0, 45, 60, 0, 90, 120];
const ask = (week: unknown) => planner.plan({ week });

describe('a week without fault', () => {
  const filled = { days, free: [], longRun: null, pinned: [], done: [], passed: 0, sessions: {}, before: null };
  const wishesOf = (outcome: ReturnType<typeof ask>) => outcome.ok && outcome.value.week?.wishes;

  test('gets from the method what it leaves out: two sessions a day, one rest day', () => {
    expect(wishesOf(ask({ days }))).toEqual({ ...filled, restDays: 1, sessionsADay: 2 });
  });

  test('gets the same where a field is undefined', () => {
    const week = { days, free: undefined, longRun: undefined, restDays: undefined, sessions: undefined };
    expect(wishesOf(ask(week))).toEqual({ ...filled, restDays: 1, sessionsADay: 2 });
  });

  test("gets the numbers of a coach's method that has a week of its own", async () => {
    const document = defaultDocument();
    const week = { ...objectOf(document['week']), rest_days: 3, sessions_a_day: 4 };
    const own = await plannerOf({ ...document, week });
    expect(wishesOf(own.plan({ week: { days } }))).toEqual({ ...filled, restDays: 3, sessionsADay: 4 });
    expect(wishesOf(own.plan({ week: { days, restDays: 0, sessionsADay: 1 } }))).toMatchObject({
      restDays: 0,
      sessionsADay: 1,
    });
  });

  test('is held to whole steps of the method in use', async () => {
    const document = defaultDocument();
    const rounding = { ...objectOf(document['rounding']), step: 1 };
    const own = await plannerOf({ ...document, rounding });
    expect(own.plan({ week: { days, sessions: { slow: [32] } } }).ok).toBe(true);
  });

  test('is a null, for a plan without days', () => {
    const outcome = ask(null);
    expect(outcome.ok && outcome.value.week).toBeNull();
  });
});
