import fc from 'fast-check';
import { lay } from '../../src/training/week/lay.js';
import type { WeekProblem } from '../../src/training/week/week-problem.js';
import { athletesOnSteps } from '../reference/athletes.js';
import { planOf } from '../reference/plan-door.js';
import { defaultRules } from '../reference/week/default-rules.js';
import { needsOf, plainWeeks, weekOf, weeksBy } from '../reference/week/random-weeks.js';

const fullSessions = 14;

/** Weeks without any wish, of athletes of the default method. */
export const plain = (count: number): WeekProblem[] => fc.sample(plainWeeks, { numRuns: count, seed: 2026 });

/** Weeks with anything that a person may want: settled sessions, pins, days off, a day for the long run. */
export const wished = (count: number): WeekProblem[] =>
  fc.sample(weeksBy(fc.constant(defaultRules)), { numRuns: count, seed: 2026 });

/** Weeks with two sessions on every day: hours and room are such that the layout has 14. */
export const full = (count: number): WeekProblem[] => fc.sample(fullWeeks, { numRuns: count, seed: 2026 });

const fullWeeks = fc
  .record({
    athlete: athletesOnSteps,
    hours: fc.integer({ min: 7 * 4, max: 13 * 4 }).map((quarters) => quarters / 4),
    room: fc.array(fc.integer({ min: 10, max: 40 }), { minLength: 7, maxLength: 7 }),
  })
  .map(({ athlete, hours, room }) => weekOf({ kinds: needsOf(planOf({ ...athlete, hours })), room, restDays: 0 }))
  .filter(({ kinds }) => Math.abs(kinds.reduce((sum, { wished }) => sum + wished, 0) - fullSessions) <= 2)
  .filter((problem) => sessionCount(problem) === fullSessions);

function sessionCount(problem: WeekProblem): number {
  const laid = lay(problem);
  return laid ? Object.values(laid).flatMap((steps) => steps.filter((each) => each > 0)).length : 0;
}

/** The week with its room cut evenly, a step a day at a time, until nothing fits any more. */
export function justTooTight(problem: WeekProblem): WeekProblem {
  if (lay(problem) === null) return problem;
  return justTooTight({ ...problem, room: problem.room.map((steps) => Math.max(0, steps - 1)) });
}
