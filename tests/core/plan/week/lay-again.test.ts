import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { patience, runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { frozen } from '../scenarios/sheets.js';
import { anyWishes } from './random-wishes.js';

/** Runners whose week can be laid, and another runner's whose can be too. */
const laidTwice = fc
  .record({ one: anyWishes, other: anyWishes })
  .map(({ one: { runner, wishes }, other }) => {
    const week = valueOf(builtInPlanner().plan({ ...runner, week: wishes })).week;
    const before = valueOf(builtInPlanner().plan({ ...other.runner, week: other.wishes })).week?.days ?? null;
    return { runner, wishes, week, before };
  })
  .filter(({ week, before }) => week?.state === 'laid' && before !== null);

describe('laying a week again', { timeout: patience }, () => {
  test('costs no more than laying it afresh, whatever was laid before', () => {
    fc.assert(
      fc.property(laidTwice, ({ runner, wishes, week, before }) => {
        const again = valueOf(builtInPlanner().plan({ ...runner, week: { ...wishes, before } })).week;
        expect([again?.state, again?.cost]).toEqual(['laid', week?.cost]);
      }),
      runs(60, 1000),
    );
  });

  test('from itself leaves every session on its day', () => {
    fc.assert(
      fc.property(laidTwice, ({ runner, wishes, week }) => {
        const again = valueOf(
          builtInPlanner().plan({ ...runner, week: { ...wishes, before: week?.days ?? null } }),
        ).week;
        const kinds = (days: typeof week) => days?.days?.map((sessions) => sessions.map(({ category }) => category));
        expect(kinds(again ?? null)).toEqual(kinds(week));
      }),
      runs(60, 1000),
    );
  });

  test('with the same wishes gives the same week, from another planner too, and changes nothing that it gets', () => {
    fc.assert(
      fc.property(anyWishes, ({ runner, wishes }) => {
        const request = frozen({ ...runner, week: wishes });
        const [first, second] = [builtInPlanner(), builtInPlanner()];
        const week = valueOf(first.plan(request)).week;
        valueOf(first.plan({ hours: 3, week: { days: [60, 60, 60, 60, 60, 60, 60] } }));
        expect(valueOf(first.plan(request)).week).toEqual(week);
        expect(valueOf(second.plan(structuredClone(request))).week).toEqual(week);
      }),
      runs(60, 1000),
    );
  });
});
