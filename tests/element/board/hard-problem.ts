// Weeks that take much longer than a part of a frame: many hours, three sessions a day, no rest day.
import { builtInPlanner } from '../../../src/core.js';
import { sessionNeed } from '../../../src/plan/session-need.js';
import { weekProblemOf } from '../../../src/plan/week/week-problem-of.js';
import { byCategory } from '../../../src/training/method/ids.js';
import type { WeekProblem } from '../../../src/training/week/week-problem.js';

export function hardProblem(hours: number): WeekProblem {
  const planner = builtInPlanner();
  const plan = planner.plan({ hours, phase: 'build', level: 'elite' });
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const { derivations } = plan.value;
  const needs = byCategory((id) => sessionNeed(planner.method, derivations, id));
  return weekProblemOf(planner.method, {
    needs,
    picks: {},
    wishes: {
      days: [180, 180, 180, 180, 180, 180, 180],
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
