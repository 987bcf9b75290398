import type { Outcome, Problem } from '../../problem.js';
import { answerIds, type AnswerId } from '../../training/checks/screening.js';
import { categoryIds } from '../../training/method/ids.js';
import { between, list, object, oneOf, orNull, readAs, whole, type Reader } from '../fields.js';
import { checksLimits, type ChecksWishes } from './wishes.js';

const { age, hoursBefore, longestRun, load, effort, weeks } = checksLimits;

/** What was told, the answers apart: they are no part of any plan. */
export interface ReadChecks {
  readonly wishes: ChecksWishes;
  readonly answers: readonly AnswerId[];
}

/** The answers that can be read, whatever else is wrong: one that stops has to stop. */
export function answersIn(given: unknown): readonly AnswerId[] {
  if (typeof given !== 'object' || given === null || !('answers' in given) || !Array.isArray(given.answers)) return [];
  const { answers } = given;
  return answerIds.filter((id) => answers.includes(id));
}

/**
 * Reads what a request tells for checks.
 *
 * @returns what was told, or every problem with its path (`checks.weeks[0]`), the value given and what is allowed.
 */
export function readChecks(given: unknown): Outcome<ReadChecks> {
  const problems: Problem[] = [];
  const read = readAs(checks, given, problems);
  if (read && problems.length === 0) problems.push(...lengths(read.wishes));
  if (read && problems.length === 0) return { ok: true, value: read };
  return { ok: false, problems: problems.map(inChecks) };
}

const checks: Reader<ReadChecks> = object(({ take }) => ({
  wishes: {
    age: take('age', orNull(whole(age.least, age.most))) ?? null,
    hoursBefore: take('hoursBefore', orNull(between(hoursBefore.least, hoursBefore.most))) ?? null,
    longestRun: take('longestRun', orNull(between(longestRun.least, longestRun.most))) ?? null,
    weeks: take('weeks', list(list(between(load.least, load.most), 7), weeks)) ?? [],
    efforts: take('efforts', efforts) ?? {},
  },
  answers: take('answers', list(oneOf(answerIds), answerIds.length)) ?? [],
}));

const efforts: Reader<ChecksWishes['efforts']> = object(({ take }) =>
  Object.fromEntries(
    categoryIds.flatMap((id) => {
      const value = take(id, between(effort.least, effort.most));
      return value === undefined ? [] : [[id, value]];
    }),
  ),
);

/** A week is told as its seven days, or as a whole. */
const lengths = ({ weeks: told }: ChecksWishes): Problem[] =>
  told.flatMap((days, index) =>
    days.length === 7 || days.length === 1
      ? []
      : [
          {
            path: `weeks[${index}]`,
            value: days.length,
            code: 'wrong-count' as const,
            allowed: { expected: 'days-or-week', count: days.length },
          },
        ],
  );

const inChecks = (problem: Problem): Problem => ({
  ...problem,
  path: problem.path === '' ? 'checks' : `checks.${problem.path}`,
});
