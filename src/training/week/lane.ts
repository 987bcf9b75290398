import { choicesOf } from './choices.js';
import { fixedSteps, type Choice } from './choice.js';
import { daySetOf, type DaySet } from './day-sets.js';
import type { KindNeed, WeekProblem } from './week-problem.js';
import { fixedHaveRoom, roomLeft } from './week-room.js';

/** A kind of training in a search: what it needs, and every way to lay it. */
export interface Lane {
  readonly need: KindNeed;
  readonly choices: readonly Choice[];
  /** Steps that are fixed by day, and in all. */
  readonly fixed: readonly number[];
  readonly fixedSum: number;
  readonly fixedCount: number;
  /** The steps that it must have, and those that it would like; settled sessions must be what they are. */
  readonly least: number;
  readonly target: number;
  /** Days on which it is done. */
  readonly done: DaySet;
  /** True where a day has one session at most of this kind and others. */
  readonly isGrouped: boolean;
  /** Kinds with a lower rank are laid first. */
  readonly rank: number;
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

/** The lanes of a week, in the order of its kinds; no lane has choices where what is fixed has no room. */
export function lanesOf(problem: WeekProblem): Lane[] {
  const room = roomLeft(problem);
  const isRoomy = fixedHaveRoom(problem);
  return problem.kinds.map((need) => {
    const fixed = fixedSteps(problem, need);
    const settled = need.sessions && sum(need.sessions);
    return {
      need,
      choices: isRoomy ? choicesOf(problem, need, room) : [],
      fixed,
      fixedSum: sum(fixed),
      fixedCount: fixed.filter((steps) => steps > 0).length,
      least: settled ?? need.least,
      target: settled ?? Math.floor(need.rounded),
      done: doneDays(problem, need),
      isGrouped: problem.rules.one_a_day.includes(need.category),
      rank: -weightOfPairs(problem, need),
    };
  });
}

function doneDays({ fixed }: WeekProblem, { category }: KindNeed): DaySet {
  return daySetOf(fixed.filter((each) => each.isDone && each.category === category).map(({ day }) => day));
}

/** Kinds that clash most decide most. */
function weightOfPairs({ rules }: WeekProblem, { category }: KindNeed): number {
  return rules.clashes.reduce((total, clash) => {
    if (clash.kind !== 'pair') return total;
    const sides = [clash.first, clash.then].filter((members) => members.includes(category));
    return total + clash.cost * sides.length;
  }, 0);
}
