import type { Choice } from './choice.js';
import { openChoices } from './open-choices.js';
import { settledChoices } from './settled-choices.js';
import type { KindNeed, WeekProblem } from './week-problem.js';

/**
 * Every way to lay a kind's sessions on days that have room for them, the cheapest first.
 *
 * @param room steps that each day has beside what is fixed on it.
 */
export function choicesOf(problem: WeekProblem, need: KindNeed, room: readonly number[]): Choice[] {
  const { sessions } = need;
  const choices = sessions ? settledChoices(problem, { ...need, sessions }, room) : openChoices(problem, need, room);
  return choices.sort((one, other) => one.own - other.own || one.days - other.days);
}
