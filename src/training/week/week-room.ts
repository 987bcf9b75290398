import { countDays, dayBit, dayCount, daySetOf, everyDay, has, type DaySet } from './day-sets.js';
import type { FixedSession, WeekProblem } from './week-problem.js';

/** Steps that days have beside what is fixed on them; days off and days that are over have none. */
export function roomLeft({ room, free, passed, fixed }: WeekProblem): number[] {
  return room.map((steps, day) => (has(free | passed, day) ? 0 : Math.max(0, steps - stepsOn(fixed, day))));
}

/** True where what is fixed has its room; what is done needs none. */
export function fixedHaveRoom({ room, free, passed, fixed }: WeekProblem): boolean {
  return room.every((steps, day) => {
    const due = fixed.filter(({ isDone }) => !isDone);
    return stepsOn(due, day) === 0 || (!has(free | passed, day) && stepsOn(fixed, day) <= steps);
  });
}

const stepsOn = (fixed: readonly FixedSession[], day: number): number =>
  fixed.reduce((sum, session) => sum + (session.day === day ? session.steps : 0), 0);

/** The days that can have a session. */
export function usableDays(problem: WeekProblem): DaySet {
  const room = roomLeft(problem);
  return (
    daySetOf(problem.fixed.map(({ day }) => day)) | daySetOf(room.flatMap((steps, day) => (steps > 0 ? [day] : [])))
  );
}

const doneDays = ({ fixed }: WeekProblem): DaySet =>
  daySetOf(fixed.filter(({ isDone }) => isDone).map(({ day }) => day));

/** The most sessions that each day may have: what is done may be more than what is allowed. */
export function sessionLimits({ fixed, sessionsADay }: WeekProblem): number[] {
  return Array.from({ length: dayCount }, (_, day) =>
    Math.max(sessionsADay, fixed.filter((each) => each.isDone && each.day === day).length),
  );
}

/** Every set of days that could be kept free so that there are just enough of them; none where that is impossible. */
export function restDaySets(problem: WeekProblem): DaySet[] {
  const usable = usableDays(problem);
  const taken = problem.fixed.reduce((days, { day }) => days | dayBit(day), 0);
  // Who has trained on every day has no rest day to be asked for.
  const most = dayCount - countDays(doneDays(problem));
  const missing = Math.max(0, Math.min(problem.restDays, most) - (dayCount - countDays(usable)));
  const sets: DaySet[] = [];
  for (let days = 0; days <= everyDay; days += 1)
    if (countDays(days) === missing && (days & ~(usable & ~taken)) === 0) sets.push(days);
  return sets;
}
