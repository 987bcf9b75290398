// Weeks that take much longer than a part of a frame: many hours, three sessions a day, no rest day.
import { builtInPlanner } from '../../../src/core.js';
import { sessionNeed } from '../../../src/plan/session-need.js';
import { weekProblemOf } from '../../../src/plan/week/week-problem-of.js';
import { byCategory } from '../../../src/training/method/ids.js';
import type { WeekProblem } from '../../../src/training/week/week-problem.js';

/** A week that is laid, but only after some hundred milliseconds; there are several of them, counted from 0. */
export function hardProblem(which: number): WeekProblem {
  const planner = builtInPlanner();
  const plan = planner.plan({ hours: 16, phase: 'build', level: 'elite' });
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const { derivations } = plan.value;
  const needs = byCategory((id) => sessionNeed(planner.method, derivations, id));
  return weekProblemOf(planner.method, {
    needs,
    picks: {},
    wishes: {
      days: [100, 110, 120, 130, 140, 150, 160 + 5 * which],
      free: [],
      longRun: null,
      restDays: 0,
      sessionsADay: 3,
      pinned: [],
      done: [],
      passed: 0,
      sessions: {},
      before: null,
    },
  });
}
