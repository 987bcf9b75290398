import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { remembering, solveWeek, solving, type Solution } from '../../../../src/plan/week/week-solver.js';
import type { WeekProblem } from '../../../../src/training/week/week-problem.js';
import { patience, runs } from '../../../reference/runs.js';
import { frozen } from '../scenarios/sheets.js';
import { anyWishes } from './random-wishes.js';
import { sevenDays, wishes } from './seven-days.js';
import { problemOf } from './weeks.js';

/** What comes of a week solved one step after the other, what was told on the way, and how many steps it took. */
function stepByStep(problem: WeekProblem) {
  const told: Solution[] = [];
  const steps = solving(problem, (solution) => told.push(solution));
  for (let count = 0; ; count += 1) {
    const { done, value } = steps.next();
    if (done === true) return { solution: value, told, count };
  }
}

describe('a week solved step by step', { timeout: patience }, () => {
  test('is the week solved at once', () => {
    fc.assert(
      fc.property(anyWishes, ({ runner, wishes: wanted }) => {
        const problem = frozen(problemOf(wanted, runner));
        const { solution, told, count } = stepByStep(problem);
        expect(solution).toEqual(solveWeek(problem));
        expect(told).toEqual(solution.state === 'laid' ? [] : [{ state: 'nothing-fits', conflict: null }]);
        if (solution.state !== 'laid') expect(count).toBeGreaterThan(0);
      }),
      runs(30, 1000),
    );
  });

  test('can be done with others in between', () => {
    const one = problemOf(wishes);
    const other = problemOf({ ...wishes, days: [60, 0, 45, 60, 0, 90, 120], longRun: 6 });
    const [first, second] = [solving(one), solving(other)];
    const results: [Solution | undefined, Solution | undefined] = [undefined, undefined];
    while (!results[0] || !results[1]) {
      [first, second].forEach((steps, index) => {
        const { done, value } = steps.next();
        if (done === true && !results[index]) results[index] = value;
      });
    }
    expect(results).toEqual([solveWeek(one), solveWeek(other)]);
  });
});

describe('remembering(solve, most)', () => {
  const calls: WeekProblem[] = [];
  const counting = (most: number) => {
    calls.length = 0;
    return remembering((problem) => {
      calls.push(problem);
      return { state: 'looking' } as const;
    }, most);
  };
  const problems = [0, 1, 2].map((restDays) => problemOf({ ...wishes, restDays }));
  const [first, second, third] = problems.map((problem) => () => structuredClone(problem));

  test('solves an equal problem once', () => {
    const solve = counting(10);
    for (const each of [first, second, first, second]) solve(each?.() ?? problemOf(wishes));
    expect(calls).toEqual(problems.slice(0, 2));
    expect(sevenDays.wishes).toEqual(wishes);
  });

  test('forgets the oldest where there are too many', () => {
    const solve = counting(2);
    for (const each of [first, second, third, second, first]) solve(each?.() ?? problemOf(wishes));
    expect(calls.map(({ restDays }) => restDays)).toEqual([0, 1, 2, 0]);
  });
});
