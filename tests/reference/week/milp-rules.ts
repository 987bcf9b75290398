import { categoryIds, type CategoryId } from '../../../src/training/method/ids.js';
import type { FixedSession, KindNeed, WeekProblem } from '../../../src/training/week/week-problem.js';
import type { LinearProgramme, Term } from './linear-programme.js';

export const days = [0, 1, 2, 3, 4, 5, 6] as const;

/** Names of the variables: is there a session of a kind on a day, how many steps has it, is it the long run. */
export const hasSession = (category: CategoryId, day: number): string => `has_${category}_${day}`;
export const stepsOf = (category: CategoryId, day: number): string => `steps_${category}_${day}`;
export const isLong = (day: number): string => `long_${day}`;

const one = (variable: string): Term => [1, variable];
const sessionsOn = (day: number, kinds: readonly CategoryId[] = categoryIds): Term[] =>
  kinds.map((category) => one(hasSession(category, day)));

/** Writes down every rule that a layout must keep. */
export function demandRules(programme: LinearProgramme, problem: WeekProblem): void {
  for (const need of problem.kinds) {
    for (const day of days) demandSession(programme, problem, { need, day });
    demandKind(programme, need);
  }
  for (const day of days) demandDay(programme, problem, day);
  demandRest(programme, problem);
  demandLongRun(programme, problem);
}

interface Place {
  readonly need: KindNeed;
  readonly day: number;
}

/** The most steps that a session of a kind can have. */
function mostSteps({ category, longest, sessions }: KindNeed, fixed: readonly FixedSession[]): number {
  return Math.max(
    longest,
    ...(sessions ?? []),
    ...fixed.filter((each) => each.category === category).map((each) => each.steps),
  );
}

/** A session has a length within the limits, or one of the settled ones; a fixed one has its own. */
function demandSession(programme: LinearProgramme, { fixed }: WeekProblem, { need, day }: Place): void {
  const { category, shortest, longest, sessions } = need;
  const has = programme.binary(hasSession(category, day));
  const steps = programme.whole(stepsOf(category, day), mostSteps(need, fixed));
  const here = fixed.filter((each) => each.category === category && each.day === day);
  if (here.length > 1) programme.demand([], '>=', 1);
  for (const session of here) {
    programme.demand([one(has)], '=', 1);
    programme.demand([one(steps)], '=', session.steps);
  }
  if (sessions) {
    const lengths = Array.from(
      new Set(sessions),
      (length) => [length, programme.binary(settled(need, day, length))] as const,
    );
    programme.demand([...lengths.map(([, name]) => one(name)), [-1, has]], '=', 0);
    programme.demand([...lengths, [-1, steps]], '=', 0);
  } else if (here.length === 0) {
    programme.demand([one(steps), [-shortest, has]], '>=', 0);
    programme.demand([one(steps), [-longest, has]], '<=', 0);
  }
}

const settled = ({ category }: KindNeed, day: number, length: number): string => `settled_${category}_${day}_${length}`;

/** A kind has its settled sessions, or a sum within its limits. */
function demandKind(programme: LinearProgramme, need: KindNeed): void {
  const { category, sessions, least, most } = need;
  for (const length of new Set(sessions)) {
    const times = sessions?.filter((each) => each === length).length ?? 0;
    programme.demand(
      days.map((day) => one(settled(need, day, length))),
      '=',
      times,
    );
  }
  if (sessions) return;
  const sum = days.map((day) => one(stepsOf(category, day)));
  programme.demand(sum, '>=', least);
  programme.demand(sum, '<=', most);
}

/** A day has room for its sessions, and not too many of them; days off and days that are over get nothing new. */
function demandDay(programme: LinearProgramme, problem: WeekProblem, day: number): void {
  const { room, free, passed, fixed, rules, sessionsADay } = problem;
  const done = fixed.filter((each) => each.day === day && each.isDone);
  const doneInGroup = done.filter(({ category }) => rules.one_a_day.includes(category)).length;
  // What is done has happened, whatever is allowed; nothing comes to it that is not.
  programme.demand(sessionsOn(day), '<=', Math.max(sessionsADay, done.length));
  programme.demand(sessionsOn(day, rules.one_a_day), '<=', Math.max(1, doneInGroup));
  const doneSteps = done.reduce((sum, { steps }) => sum + steps, 0);
  const steps = room[day] ?? 0;
  if ((((free | passed) >> day) & 1) === 1 || doneSteps > steps) {
    const others = categoryIds.filter((category) => !done.some((each) => each.category === category));
    programme.demand(sessionsOn(day, others), '<=', 0);
  } else
    programme.demand(
      categoryIds.map((category) => one(stepsOf(category, day))),
      '<=',
      steps,
    );
}

/** Enough days have no session. */
function demandRest(programme: LinearProgramme, { restDays, fixed }: WeekProblem): void {
  const trained = new Set(fixed.filter(({ isDone }) => isDone).map(({ day }) => day)).size;
  const busy = days.map((day) => programme.binary(`busy_${day}`));
  for (const day of days)
    for (const session of sessionsOn(day)) programme.demand([one(`busy_${day}`), [-1, session[1]]], '>=', 0);
  programme.demand(busy.map(one), '<=', Math.max(trained, days.length - restDays));
}

/**
 * Exactly one of these holds: a day has the slow session that is longer than every other, or two slow sessions are
 * equally long and none is longer, or there is no slow running. Where the long run wants a day, it has that day or there
 * is no slow running.
 */
function demandLongRun(programme: LinearProgramme, { kinds, fixed, longRun }: WeekProblem): void {
  const slow = kinds.find(({ category }) => category === 'slow');
  if (!slow) throw new Error('a week has a need of slow running');
  const most = mostSteps(slow, fixed);
  const longest = programme.whole('longest', most);
  const lone = days.map((day) => programme.binary(isLong(day)));
  const equal = days.map((day) => programme.binary(`equal_${day}`));
  programme.demand([...lone.map(one), one(programme.binary('is_equal')), one(programme.binary('is_none'))], '=', 1);
  programme.demand([...equal.map(one), [-2, 'is_equal']], '=', 0);
  for (const day of days) {
    const [has, steps, isEqual] = [hasSession('slow', day), stepsOf('slow', day), `equal_${day}`];
    programme.demand([one(has), one('is_none')], '<=', 1);
    programme.demand([one(isLong(day)), one(isEqual), [-1, has]], '<=', 0);
    // A lone longest session is a step longer than every other; one of the longest has as many steps as the longest.
    const others = lone.filter((name) => name !== isLong(day));
    programme.demand([one(longest), [-1, steps], ...others.map((name): Term => [-1, name])], '>=', 0);
    programme.demand([one(longest), [-1, steps], [most, isLong(day)], [most, isEqual]], '<=', most);
  }
  if (longRun !== null) programme.demand([one(isLong(longRun)), one('is_none')], '=', 1);
}
