import { describe, expect, test } from 'vitest';
import { groupIds, rowGroups } from '../../../../src/plan/scenarios/rows.js';
import { quantityIds } from '../../../../src/sheet/sheet.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { expandMethod } from '../../../../src/training/method/expand.js';

const own = { id: 'own', name: 'Own', formula: '1', status: 'assumption' } as const;

describe('rowGroups(method)', () => {
  test('has every quantity of the sheet once, every rule and every kind of training', () => {
    const method = { ...builtInMethod, quantities: [own] };
    const rows = rowGroups(method).flatMap((group) => group.rows);
    const quantities = rows.flatMap((row) => (row.kind === 'quantity' ? [row.quantity] : []));
    expect([...quantities].sort()).toEqual([...quantityIds(expandMethod(method))].sort());
    expect(rows.flatMap((row) => (row.kind === 'rule' ? [row.rule] : []))).toEqual(method.rules.map(({ id }) => id));
    expect(rows.filter(({ kind }) => kind === 'sessions')).toHaveLength(5);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  test('has the groups in the order of the screen, and none that is empty', () => {
    const all = { hasDays: false, checks: ['check:activity'] };
    expect(rowGroups({ ...builtInMethod, quantities: [own] }, all).map(({ id }) => id)).toEqual([...groupIds]);
    expect(rowGroups(builtInMethod).map(({ id }) => id)).toEqual(
      groupIds.filter((id) => id !== 'own' && id !== 'checks'),
    );
    expect(rowGroups({ ...builtInMethod, rules: [] }).map(({ id }) => id)).not.toContain('rules');
  });

  test('has no quantity for a notice that is switched off', () => {
    const rules = builtInMethod.rules.map((rule) => (rule.id === 'few-hours' ? { ...rule, enabled: false } : rule));
    const method = { ...builtInMethod, rules };
    const quantities = rowGroups(method).flatMap(({ rows }) =>
      rows.flatMap((row) => (row.kind === 'quantity' ? [row.id] : [])),
    );
    expect([...quantities].sort()).toEqual([...quantityIds(expandMethod(method))].sort());
    expect(quantities).not.toContain('notice_few_hours');
  });
});
