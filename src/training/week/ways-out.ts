import { evenCuts } from '../sessions/even-cuts.js';
import { conflictIn } from './conflict.js';
import { clashesOf } from './clashes.js';
import { dayBit, minutesInADay } from './day-sets.js';
import { canLay, lay } from './lay.js';
import type { Steps } from './steps.js';
import type { KindNeed, WeekProblem } from './week-problem.js';
import type { Change, WayOut, Wish } from './wish.js';

/** Most minutes that a change adds to a day. */
const mostMoreMinutes = 240;
/** Most changes that are proposed together where each conflict is taken by itself. */
const mostTogether = 12;

/**
 * What would help where nothing fits, the cheapest first: by what the week then costs, and 1 for each step that a day
 * would have to give. Changes to one wish of the conflict where any of those helps, else to several.
 */
export function* waysOut(problem: WeekProblem, conflict: readonly Wish[]): Steps<WayOut[]> {
  const single: Change[] = [];
  for (const wish of conflict) {
    single.push(...helpful(problem, wish));
    yield;
  }
  const ways = single.map((change) => [change]);
  if (ways.length === 0)
    ways.push(...fewerSessions(problem), ...moreEverywhere(problem), ...(yield* oneByOne(problem)));
  const priced: ReturnType<typeof priceOf> = [];
  const different = new Map(
    ways.map((changes) => [
      changes
        .map((each) => JSON.stringify(each))
        .sort()
        .join(),
      changes,
    ]),
  );
  for (const changes of different.values()) {
    priced.push(...priceOf(problem, changes));
    yield;
  }
  return priced.sort((one, other) => one.price - other.price).map(({ changes, cost }) => ({ changes, cost }));
}

const nothing = { day: null, category: null, amount: 0, sessions: null };

/** The problem after a change. */
export function changed(problem: WeekProblem, { kind, day, category, amount, sessions }: Change): WeekProblem {
  switch (kind) {
    case 'more-minutes':
      return {
        ...problem,
        room: problem.room.map((steps, each) => (each === day ? steps + amount / problem.step : steps)),
      };
    case 'use-free-day':
      return { ...problem, free: problem.free & ~dayBit(day ?? 0) };
    case 'any-long-run':
      return { ...problem, longRun: null };
    case 'fewer-rest-days':
      return { ...problem, restDays: amount };
    case 'more-sessions-a-day':
      return { ...problem, sessionsADay: amount };
    case 'unpin':
      return {
        ...problem,
        fixed: problem.fixed.filter((each) => each.category !== category || each.day !== day || each.isDone),
      };
    case 'settle-sessions': {
      const steps = (sessions ?? []).map((minutes) => minutes / problem.step);
      return {
        ...problem,
        kinds: problem.kinds.map((need) => (need.category === category ? { ...need, sessions: steps } : need)),
      };
    }
  }
}

const helps = (problem: WeekProblem, changes: readonly Change[]): boolean => canLay(changes.reduce(changed, problem));

/** The smallest change to a wish that helps by itself; none where no change to it does. */
function helpful(problem: WeekProblem, wish: Wish): Change[] {
  const tries = changesTo(problem, wish);
  const first =
    wish.kind === 'day-minutes' ? leastThatHelps(problem, tries) : tries.find((change) => helps(problem, [change]));
  return first ? [first] : [];
}

/** More minutes help all the more: so the least that helps is found by halving. */
function leastThatHelps(problem: WeekProblem, tries: readonly Change[]): Change | undefined {
  const most = tries.at(-1);
  if (!most || !helps(problem, [most])) return undefined;
  let [helpless, helping] = [-1, tries.length - 1];
  while (helping - helpless > 1) {
    const middle = (helpless + helping) >> 1;
    const change = tries[middle];
    if (change && helps(problem, [change])) helping = middle;
    else helpless = middle;
  }
  return tries[helping];
}

/** What a person could change about a wish, the smallest change first. */
function changesTo(problem: WeekProblem, { kind, day, category, amount }: Wish): Change[] {
  switch (kind) {
    case 'day-minutes':
      return moreMinutes(problem, amount).map((minutes) => ({
        ...nothing,
        kind: 'more-minutes',
        day,
        amount: minutes,
      }));
    case 'free-day':
      return [{ ...nothing, kind: 'use-free-day', day }];
    case 'long-run':
      return [{ ...nothing, kind: 'any-long-run', day }];
    case 'rest-days':
      return countsTo(amount - 1, 0).map((count) => ({ ...nothing, kind: 'fewer-rest-days', amount: count }));
    case 'sessions-a-day':
      return countsTo(amount + 1, Math.max(amount + 1, problem.kinds.length)).map((count) => ({
        ...nothing,
        kind: 'more-sessions-a-day',
        amount: count,
      }));
    case 'pinned':
      return [{ ...nothing, kind: 'unpin', day, category, amount }];
    case 'minutes': {
      const need = problem.kinds.find((each) => each.category === category);
      return need
        ? fewerOf(problem, need).map((sessions) => ({ ...nothing, kind: 'settle-sessions', category, sessions }))
        : [];
    }
  }
}

/** What could be added to a day that has so many minutes. */
function moreMinutes({ step }: WeekProblem, had: number): number[] {
  const most = Math.min(mostMoreMinutes, minutesInADay - had);
  return Array.from({ length: Math.max(0, Math.floor(most / step)) }, (_, index) => (index + 1) * step);
}

/** The whole numbers from one to another, both included, none where the first is beyond the last. */
function countsTo(first: number, last: number): number[] {
  const direction = last < first ? -1 : 1;
  return Array.from({ length: Math.abs(last - first) + 1 }, (_, index) => first + direction * index);
}

const ascending = (steps: readonly number[]): number[] => [...steps].sort((one, other) => one - other);

/** The sessions of a kind around those that are fixed, with one left out, then two, down to these alone. In minutes. */
function fewerOf({ fixed, step }: WeekProblem, need: KindNeed): number[][] {
  const stay = fixed.filter(({ category }) => category === need.category).map(({ steps }) => steps);
  const sessions = need.sessions ?? usualCut(need);
  const open = stay.reduce((left, steps) => withoutOne(left, steps), [...sessions]);
  const ways = Array.from({ length: open.length + 1 }, (_, left) => ascending([...stay, ...open.slice(left)]));
  return ways.filter((way) => way.join() !== ascending(sessions).join()).map((way) => way.map((steps) => steps * step));
}

function usualCut({ rounded, wished, shortest, longest }: KindNeed): number[] {
  return evenCuts({ total: Math.round(rounded), count: wished, least: shortest, most: longest }, 1)[0] ?? [];
}

/** Takes the length out that is nearest to one that stays. */
function withoutOne(lengths: readonly number[], steps: number): number[] {
  const gap = (index: number): number => Math.abs((lengths[index] ?? 0) - steps);
  const nearest = lengths.reduce((best, _, index) => (gap(index) < gap(best) ? index : best), 0);
  return lengths.filter((_, index) => index !== nearest);
}

/** Leaves out one session after the other, of the kind that has most of them, until something fits. */
function fewerSessions(problem: WeekProblem): Change[][] {
  const changes = new Map<string, Change>();
  for (let current = problem; !canLay(current);) {
    const next = [...current.kinds]
      .sort((one, other) => countOf(other) - countOf(one))
      .flatMap((need) =>
        changesTo(current, { kind: 'minutes', day: null, category: need.category, amount: 0 }).slice(0, 1),
      )[0];
    if (!next) return [];
    changes.set(next.category ?? '', next);
    current = changed(current, next);
  }
  return [[...changes.values()]];
}

const countOf = ({ sessions, wished }: KindNeed): number => sessions?.length ?? wished;

/** Which wish of a conflict gives way first where several have to. */
const givesWay = ['pinned', 'free-day', 'long-run', 'rest-days', 'sessions-a-day', 'minutes', 'day-minutes'] as const;

/** Takes one conflict after the other, and changes a wish of each as far as it goes. */
function* oneByOne(problem: WeekProblem): Steps<Change[][]> {
  const changes: Change[] = [];
  for (let current = problem; !canLay(current);) {
    const conflict = yield* conflictIn(current);
    const wishes = [...conflict].sort((one, other) => givesWay.indexOf(one.kind) - givesWay.indexOf(other.kind));
    const [change] = wishes.flatMap((wish) => changesTo(current, wish).slice(-1));
    if (!change || changes.length >= mostTogether) return [];
    changes.push(change);
    current = changed(current, change);
  }
  return [changes];
}

/** The same minutes more on every day that has any. */
function moreEverywhere(problem: WeekProblem): Change[][] {
  const days = problem.room.flatMap((steps, day) => (steps > 0 ? [day] : []));
  const longest = Math.max(...problem.room) * problem.step;
  const ways = moreMinutes(problem, longest).map((amount) =>
    days.map((day): Change => ({ ...nothing, kind: 'more-minutes', day, amount })),
  );
  return ways.filter((changes) => helps(problem, changes)).slice(0, 1);
}

function priceOf(problem: WeekProblem, changes: readonly Change[]): (WayOut & { readonly price: number })[] {
  const after = changes.reduce(changed, problem);
  const laid = lay(after);
  if (!laid) return [];
  const cost = clashesOf(after, laid).reduce((sum, clash) => sum + clash.cost, 0);
  const given = changes.reduce(
    (sum, { kind, amount }) => sum + (kind === 'more-minutes' ? amount / problem.step : 0),
    0,
  );
  return [{ changes, cost, price: cost + given }];
}
