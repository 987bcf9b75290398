import { categoryIds } from '../method/ids.js';
import { dayBit, daysOf, minutesInADay } from './day-sets.js';
import type { KindNeed, WeekProblem } from './week-problem.js';
import type { Wish } from './wish.js';

/** More steps than a day has. */
const wholeDay = minutesInADay;

/** Everything in a problem that a person could wish otherwise; what is done cannot be. */
export function wishesIn({ room, free, longRun, restDays, sessionsADay, fixed, kinds, step }: WeekProblem): Wish[] {
  const about = { day: null, category: null, amount: 0 };
  return [
    ...kinds.filter(isWanted).map((need): Wish => {
      const steps = need.sessions?.reduce((sum, each) => sum + each, 0) ?? need.rounded;
      return { ...about, kind: 'minutes', category: need.category, amount: steps * step };
    }),
    ...fixed
      .filter(({ isDone }) => !isDone)
      .map(({ category, day, steps }): Wish => ({ kind: 'pinned', day, category, amount: steps * step })),
    ...room.map((steps, day): Wish => ({ ...about, kind: 'day-minutes', day, amount: steps * step })),
    ...daysOf(free).map((day): Wish => ({ ...about, kind: 'free-day', day })),
    ...(longRun === null ? [] : [{ ...about, kind: 'long-run' as const, day: longRun }]),
    ...(restDays === 0 ? [] : [{ ...about, kind: 'rest-days' as const, amount: restDays }]),
    { ...about, kind: 'sessions-a-day', amount: sessionsADay },
  ];
}

/** A kind whose sessions must add up to something, or are limited in what they add up to. */
const isWanted = ({ least, most, sessions }: KindNeed): boolean =>
  least > 0 || Number.isFinite(most) || sessions !== null;

/** The problem without some of its wishes. */
export function withoutWishes(problem: WeekProblem, dropped: readonly Wish[]): WeekProblem {
  return dropped.reduce(withoutWish, problem);
}

function withoutWish(problem: WeekProblem, { kind, day, category }: Wish): WeekProblem {
  switch (kind) {
    case 'minutes':
      return { ...problem, kinds: problem.kinds.map((need) => (need.category === category ? unwanted(need) : need)) };
    case 'pinned':
      return {
        ...problem,
        fixed: problem.fixed.filter((each) => each.category !== category || each.day !== day || each.isDone),
      };
    case 'day-minutes':
      return { ...problem, room: problem.room.map((steps, each) => (each === day ? wholeDay : steps)) };
    case 'free-day':
      return { ...problem, free: problem.free & ~dayBit(day ?? 0) };
    case 'long-run':
      return { ...problem, longRun: null };
    case 'rest-days':
      return { ...problem, restDays: 0 };
    case 'sessions-a-day':
      return { ...problem, sessionsADay: categoryIds.length };
  }
}

/** A kind that may have any sessions or none. */
const unwanted = (need: KindNeed): KindNeed => ({ ...need, least: 0, most: Number.POSITIVE_INFINITY, sessions: null });
