import type { WeekRules, Method } from '../../training/method/document.js';
import { builtInWeek } from '../../training/method/built-in-week.js';
import { categoryIds, type ByCategory, type CategoryId } from '../../training/method/ids.js';
import { isSessionOption, optionSteps, wishedSessions, type SessionNeed } from '../../training/sessions/options.js';
import { daySetOf, type DaySet } from '../../training/week/day-sets.js';
import type { FixedSession, KindNeed, WeekProblem } from '../../training/week/week-problem.js';
import type { DaySession, PlacedSession, WeekWishes } from './wishes.js';

/** How a method lays sessions on days: by its own rules, or by those of the built-in method. */
export const weekRules = ({ week }: Pick<Method, 'week'>): WeekRules => week ?? builtInWeek;

/** What a week is made of. */
export interface WeekNeeds {
  readonly needs: ByCategory<SessionNeed>;
  /** Lengths picked for a kind, in minutes; those that are no option of it are not used. */
  readonly picks: Partial<ByCategory<readonly number[]>>;
  readonly wishes: WeekWishes;
}

/** The problem that a week poses, in steps of the method's rounding. */
export function weekProblemOf(method: Method, { needs, picks, wishes }: WeekNeeds): WeekProblem {
  const { step } = method.rounding;
  const fixed = (sessions: readonly PlacedSession[], isDone: boolean): FixedSession[] =>
    sessions.map(({ category, minutes, day }) => ({ category, steps: minutes / step, day, isDone }));
  return {
    rules: weekRules(method),
    step,
    kinds: categoryIds.map((id) => kindNeed(id, needs[id], wishes.sessions[id] ?? fitting(picks[id], needs[id]))),
    room: wishes.days.map((minutes) => Math.floor(minutes / step)),
    free: daySetOf(wishes.free),
    passed: daySetOf(wishes.days.flatMap((_, day) => (day < wishes.passed ? [day] : []))),
    sessionsADay: wishes.sessionsADay,
    restDays: wishes.restDays,
    longRun: wishes.longRun,
    fixed: [...fixed(wishes.pinned, false), ...fixed(wishes.done, true)],
    before: wishes.before && daysBefore(wishes.before),
  };
}

function fitting(picked: readonly number[] | undefined, need: SessionNeed): readonly number[] | null {
  return picked && isSessionOption(picked, need) ? picked : null;
}

/** A kind without minutes wants nothing; one whose minutes make no session gets none, and that costs. */
function kindNeed(category: CategoryId, need: SessionNeed, sessions: readonly number[] | null): KindNeed {
  const { exact, rounded, limits, rounding } = need;
  const isWanted = exact > 0 && rounded > 0;
  const steps = isWanted ? optionSteps(need) : { least: 0, most: 0 };
  const shortest = Math.ceil(limits.shortest / rounding.step);
  const longest = Math.floor(limits.longest / rounding.step);
  const canBeCut = steps.most > 0 && hasCut(steps, { shortest, longest });
  return {
    category,
    shortest,
    longest,
    least: canBeCut ? steps.least : 0,
    most: canBeCut ? steps.most : 0,
    rounded: rounded / rounding.step,
    wished: isWanted ? wishedSessions(exact, limits.typical) : 0,
    sessions: sessions && sessions.map((minutes) => minutes / rounding.step),
  };
}

/** True where some number of sessions within the limits adds up to what it may. */
function hasCut(
  { least, most }: { readonly least: number; readonly most: number },
  { shortest, longest }: { readonly shortest: number; readonly longest: number },
): boolean {
  for (let count = 1; count * shortest <= most; count += 1) if (count * longest >= least) return true;
  return false;
}

function daysBefore(days: readonly (readonly DaySession[])[]): Partial<Record<CategoryId, DaySet>> {
  const of = (category: CategoryId): DaySet =>
    daySetOf(days.flatMap((sessions, day) => (sessions.some((each) => each.category === category) ? [day] : [])));
  return Object.fromEntries(categoryIds.map((id) => [id, of(id)]));
}
