import type { ClashMember, ClashRule, PairClash } from '../../../src/training/method/document.js';
import { categoryIds } from '../../../src/training/method/ids.js';
import type { WeekProblem } from '../../../src/training/week/week-problem.js';
import type { LinearProgramme, Term } from './linear-programme.js';
import { days, hasSession, isLong, stepsOf } from './milp-rules.js';

/** What a layout costs: a sum over variables that are no smaller than what the layout implies. */
export function costTerms(programme: LinearProgramme, problem: WeekProblem): Term[] {
  return problem.rules.clashes
    .filter(({ cost }) => cost > 0)
    .flatMap((rule, index) => {
      const names = namesOf(rule, `clash_${index}`, { programme, problem });
      return names.map((name): Term => [rule.cost, name]);
    });
}

interface Pages {
  readonly programme: LinearProgramme;
  readonly problem: WeekProblem;
}

/** Variables that count a clash, named with a prefix. */
function namesOf(rule: ClashRule, prefix: string, { programme, problem }: Pages): string[] {
  switch (rule.kind) {
    case 'pair':
      return days.map((day) => pairOn(rule, day, programme.binary(`${prefix}_${day}`)));
    case 'crowded-day':
      return days.map((day) => crowdedOn(day, programme.binary(`${prefix}_${day}`)));
    case 'missed-minutes':
      return problem.kinds.map(({ category, rounded }) => {
        const sum = days.map((day): Term => [1, stepsOf(category, day)]);
        const missed = programme.whole(`${prefix}_${category}`, 10_000);
        programme.demand([[1, missed], ...sum], '>=', Math.floor(rounded));
        programme.demand([[-1, missed], ...sum], '<=', Math.ceil(rounded));
        return missed;
      });
    case 'session-count':
      return problem.kinds.map(({ category, wished }) => {
        const count = days.map((day): Term => [1, hasSession(category, day)]);
        const off = programme.whole(`${prefix}_${category}`, 100);
        programme.demand([[1, off], ...count], '>=', wished);
        programme.demand([[-1, off], ...count], '<=', wished);
        return off;
      });
  }

  function pairOn({ first, then, days_apart: apart }: PairClash, day: number, clash: string): string {
    for (const former of sumsOf(first, day))
      for (const latter of sumsOf(then, (day + apart) % days.length))
        programme.demand([...former, ...latter, [-1, clash]], '<=', 1);
    return clash;
  }

  function crowdedOn(day: number, clash: string): string {
    const sessions = categoryIds.map((category): Term => [1, hasSession(category, day)]);
    programme.demand([...sessions, [1 - categoryIds.length, clash]], '<=', 1);
    return clash;
  }

  /** Sums that are 1 at most, and 1 where a day has any of the members: those of which a day has one at most, and each other. */
  function sumsOf(members: readonly ClashMember[], day: number): Term[][] {
    // Where two of them are done on one day, a day can have several of them.
    const isApart =
      problem.fixed.filter((each) => each.isDone && problem.rules.one_a_day.includes(each.category)).length < 2;
    const grouped = members.filter(
      (member) => isApart && problem.rules.one_a_day.some((category) => category === member),
    );
    const others = members.filter((member) => !grouped.includes(member)).map((member) => [member]);
    return [grouped, ...others].map((group) => group.map((member): Term => [1, memberOn(member, day)]));
  }
}

const memberOn = (member: ClashMember, day: number): string =>
  member === 'long' ? isLong(day) : hasSession(member, day);
