import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanInputs } from '../../../../src/plan/document.js';
import type { WeekWishes } from '../../../../src/plan/week/wishes.js';
import { canLay } from '../../../../src/training/week/lay.js';
import { builtInPlanner } from '../../../../src/plan.js';
import { patience, runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { frozen } from '../scenarios/sheets.js';
import { anyWishes } from './random-wishes.js';
import { problemOf } from './weeks.js';

/** Runners whose week can be laid. */
const layable = anyWishes.filter(({ runner, wishes }) => canLay(problemOf(wishes, runner)));
const planner = builtInPlanner();
const weekOf = (runner: PlanInputs, week: WeekWishes) => valueOf(planner.plan({ ...runner, week })).week;

/** Such runners, and what others had before. */
const laidTwice = fc.record({ one: layable, other: layable }).map(({ one: { runner, wishes }, other }) => ({
  runner,
  wishes,
  week: weekOf(runner, wishes),
  before: weekOf(other.runner, other.wishes)?.days ?? null,
}));

describe('laying a week again', { timeout: patience }, () => {
  test('costs no more than laying it afresh, whatever was laid before', () => {
    fc.assert(
      fc.property(laidTwice, ({ runner, wishes, week, before }) => {
        const again = weekOf(runner, { ...wishes, before });
        expect([again?.state, again?.cost]).toEqual(['laid', week?.cost]);
      }),
      runs(30, 1000),
    );
  });

  test('from itself leaves every session on its day', () => {
    fc.assert(
      fc.property(laidTwice, ({ runner, wishes, week }) => {
        const again = weekOf(runner, { ...wishes, before: week?.days ?? null });
        const kinds = (days: typeof week) => days?.days?.map((sessions) => sessions.map(({ category }) => category));
        expect(kinds(again ?? null)).toEqual(kinds(week));
      }),
      runs(30, 1000),
    );
  });

  test('with the same wishes gives the same week, from another planner too, and changes nothing that it gets', () => {
    fc.assert(
      fc.property(layable, ({ runner, wishes }) => {
        const request = frozen({ ...runner, week: wishes });
        const [first, second] = [builtInPlanner(), builtInPlanner()];
        const week = valueOf(first.plan(request)).week;
        valueOf(first.plan({ hours: 3, week: { days: [60, 60, 60, 60, 60, 60, 60] } }));
        expect(valueOf(first.plan(request)).week).toEqual(week);
        expect(valueOf(second.plan(structuredClone(request))).week).toEqual(week);
      }),
      runs(30, 1000),
    );
  });
});
