import {
  builtInPlanner,
  planWeek,
  type Plan,
  type PlanWeek,
  type WeekRequest,
  type WeekWishes,
} from '../../../../src/plan.js';
import type { PlanRequest } from '../../../../src/plan/document.js';
import { sessionNeed } from '../../../../src/plan/session-need.js';
import { weekProblemOf } from '../../../../src/plan/week/week-problem-of.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { byCategory, type CategoryId } from '../../../../src/training/method/ids.js';
import type { WeekProblem } from '../../../../src/training/week/week-problem.js';
import { valueOf } from '../../training/method/documents.js';

/**
 * Four hours in build, with minutes as the plan rounds them: slow running 70 in two sessions, tempo running 35 in one,
 * intervals 25 in one, cross-training 35 in one, strength 75 in two; each may be missed by ten minutes of its exact ones.
 */
export const planned = (week: WeekRequest, request: PlanRequest = {}): Plan => valueOf(planWeek({ ...request, week }));

/** The week of such a plan. */
export function weekOf(wishes: WeekRequest, request: PlanRequest = {}): PlanWeek {
  const { week } = planned(wishes, request);
  if (!week) throw new Error('a week was asked for');
  return week;
}

export type DayLists = NonNullable<PlanWeek['days']>;

/** The days of a week that must be laid. */
export function daysOf({ days }: PlanWeek): DayLists {
  if (!days) throw new Error('nothing fits');
  return days;
}

/** Where the sessions of a kind lie: day and minutes of each. */
export function placesOf(week: PlanWeek, category: CategoryId): [day: number, minutes: number][] {
  return daysOf(week).flatMap((sessions, day) =>
    sessions.flatMap((each): [number, number][] => (each.category === category ? [[day, each.minutes]] : [])),
  );
}

/** Minutes of all sessions of a day. */
export const minutesOn = (week: PlanWeek, day: number): number =>
  (daysOf(week)[day] ?? []).reduce((sum, { minutes }) => sum + minutes, 0);

/** Two hours on every day. */
export const roomy: WeekRequest = { days: [120, 120, 120, 120, 120, 120, 120] };

/** Clashes in short: kind, days and cost. */
export const clashesOf = ({ clashes }: PlanWeek): unknown[] =>
  clashes.map(({ kind, days, cost }) => [kind, days.join(), cost]);

/** Sessions in which the order of days and of sessions on them is not to be told apart. */
export const ascending = (numbers: readonly number[]): number[] => [...numbers].sort((one, other) => one - other);

const planner = builtInPlanner();

/** The problem that wishes pose for a runner by the built-in method. */
export function problemOf(wishes: WeekWishes, request: PlanRequest = {}): WeekProblem {
  const { derivations } = valueOf(planner.plan(request));
  const needs = byCategory((id) => sessionNeed(builtInMethod, derivations, id));
  return weekProblemOf(builtInMethod, { needs, picks: request.sessions ?? {}, wishes });
}
