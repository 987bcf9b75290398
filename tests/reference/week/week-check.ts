import type { ClashMember, ClashRule } from '../../../src/training/method/document.js';
import { categoryIds, type CategoryId } from '../../../src/training/method/ids.js';
import type { KindNeed, Laid, WeekProblem } from '../../../src/training/week/week-problem.js';

const days = [0, 1, 2, 3, 4, 5, 6] as const;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const contains = (set: number, day: number): boolean => Math.floor(set / 2 ** day) % 2 === 1;
const lengthsOf = (steps: readonly number[]): number[] => steps.filter((each) => each !== 0);

/** Every rule that a layout breaks, a line each; none where it is valid. */
export function faultsOf(problem: WeekProblem, laid: Laid): string[] {
  return [
    ...days.flatMap((day) => faultsOfDay(problem, laid, day)),
    ...problem.kinds.flatMap((need) => faultsOfKind(problem, laid, need)),
    ...problem.fixed
      .filter(({ category, day, steps }) => laid[category][day] !== steps)
      .map(({ category, day }) => `${category} does not stay on day ${day}`),
    ...faultsOfWeek(problem, laid),
  ];
}

/** Kinds with a session on a day. */
const kindsOn = (laid: Laid, day: number): CategoryId[] => categoryIds.filter((category) => laid[category][day] !== 0);

function faultsOfDay({ room, free, passed, fixed, ...problem }: WeekProblem, laid: Laid, day: number): string[] {
  const kinds = kindsOn(laid, day);
  const isDone = (category: CategoryId): boolean =>
    fixed.some((each) => each.isDone && each.day === day && each.category === category);
  const isOff = contains(free, day) || contains(passed, day);
  const steps = sum(categoryIds.map((category) => laid[category][day] ?? NaN));
  const grouped = kinds.filter((category) => problem.rules.one_a_day.includes(category));
  const done = kinds.filter(isDone);
  const says: readonly (readonly [boolean, string])[] = [
    // What is done has happened, whatever is allowed.
    [kinds.length > Math.max(problem.sessionsADay, done.length), `${kinds.length} sessions`],
    [grouped.length > 1 && !grouped.every(isDone), `${grouped.join(' and ')} together`],
    [!kinds.every(isDone) && isOff, 'something new on a day off'],
    [!kinds.every(isDone) && !(steps <= (room[day] ?? 0)), `${steps} steps in the room of ${room[day] ?? 0}`],
  ];
  return says.filter(([holds]) => holds).map(([, words]) => `day ${day}: ${words}`);
}

function faultsOfKind({ fixed }: WeekProblem, laid: Laid, need: KindNeed): string[] {
  const { category, shortest, longest, least, most, sessions } = need;
  const steps = laid[category];
  const total = sum(steps);
  if (sessions) {
    const isSettled = ascending(lengthsOf(steps)).join() === ascending(sessions).join();
    return isSettled ? [] : [`${category}: ${steps.join()} are not the settled sessions`];
  }
  const isFixed = (day: number): boolean => fixed.some((each) => each.category === category && each.day === day);
  const isAllowed = (each: number): boolean => Number.isInteger(each) && each >= shortest && each <= longest;
  const odd = days.filter((day) => steps[day] !== 0 && !isFixed(day) && !isAllowed(steps[day] ?? NaN));
  return [
    ...odd.map((day) => `${category}: a session of ${steps[day] ?? NaN} on day ${day}`),
    ...(total >= least && total <= most ? [] : [`${category}: ${total} in all`]),
  ];
}

const ascending = (numbers: readonly number[]): number[] => [...numbers].sort((one, other) => one - other);

function faultsOfWeek({ restDays, longRun, fixed }: WeekProblem, laid: Laid): string[] {
  const resting = days.filter((day) => kindsOn(laid, day).length === 0).length;
  const trained = new Set(fixed.filter(({ isDone }) => isDone).map(({ day }) => day)).size;
  const isLongRunAstray = longRun !== null && sum(laid.slow) > 0 && longRunDay(laid) !== longRun;
  return [
    ...(categoryIds.every((category) => laid[category].length === days.length) ? [] : ['not seven days']),
    ...(resting >= Math.min(restDays, days.length - trained) ? [] : [`${resting} rest days`]),
    ...(isLongRunAstray ? ['the long run is not on its day'] : []),
  ];
}

/** The day of the slow session that is longer than every other; null where there is none. */
function longRunDay({ slow }: Laid): number | null {
  const long = days.filter((day) => days.every((other) => other === day || (slow[day] ?? 0) > (slow[other] ?? 0)));
  return long[0] ?? null;
}

/** What a layout costs, counted from its sessions. */
export function costOf({ rules, kinds }: Pick<WeekProblem, 'rules' | 'kinds'>, laid: Laid): number {
  return sum(rules.clashes.map((rule) => rule.cost * timesOf(rule, kinds, laid)));
}

function timesOf(rule: ClashRule, kinds: readonly KindNeed[], laid: Laid): number {
  switch (rule.kind) {
    case 'pair': {
      const isFirst = (day: number): boolean => rule.first.some((member) => isOn(laid, member, day));
      const isThen = (day: number): boolean => rule.then.some((member) => isOn(laid, member, day));
      return days.filter((day) => isFirst(day) && isThen((day + rule.days_apart) % 7)).length;
    }
    case 'crowded-day':
      return days.filter((day) => kindsOn(laid, day).length >= 2).length;
    case 'missed-minutes':
      return sum(kinds.map(({ category, rounded }) => stepsBetween(sum(laid[category]), rounded)));
    case 'session-count':
      return sum(kinds.map(({ category, wished }) => Math.abs(lengthsOf(laid[category]).length - wished)));
  }
}

function isOn(laid: Laid, member: ClashMember, day: number): boolean {
  return member === 'long' ? longRunDay(laid) === day : (laid[member][day] ?? 0) > 0;
}

/** Whole steps from a sum to the nearest of the whole numbers beside `rounded`. */
function stepsBetween(steps: number, rounded: number): number {
  return Math.min(Math.abs(steps - Math.floor(rounded)), Math.abs(steps - Math.ceil(rounded)));
}

/** Sessions of the earlier layout whose kind no longer has their day. */
export function movesOf({ before }: WeekProblem, laid: Laid): number {
  return sum(
    categoryIds.map(
      (category) => days.filter((day) => contains(before?.[category] ?? 0, day) && laid[category][day] === 0).length,
    ),
  );
}

/** The sum of the squares of all lengths: the less, the more even the sessions are. */
export function squaresOf(laid: Laid): number {
  return sum(categoryIds.map((category) => sum(laid[category].map((steps) => steps ** 2))));
}
