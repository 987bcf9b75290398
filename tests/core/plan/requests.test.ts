import { describe, expect, test } from 'vitest';
import { builtInPlanner, planWeek, type PlanRequest } from '../../../src/plan.js';
import type { Problem } from '../../../src/problem.js';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { inShort } from '../in-short.js';

const planner = builtInPlanner();
const hours = { least: 0.5, most: 20 };
const cap = { least: 90, most: 120 };
const fields = [
  'hours',
  'phase',
  'level',
  'event',
  'strengthCap',
  'sessions',
  'week',
  'season',
  'running',
  'strength',
  'checks',
];
const number = { expected: 'number' };

/** Requests from outside, which no compiler has seen. */
const ask = (request: unknown) => planner.plan(request as PlanRequest);

type Row = readonly [
  request: unknown,
  path: string,
  value: unknown,
  code: Problem['code'],
  allowed: Problem['allowed'],
];

describe('a request with one fault has one problem:', () => {
  const rows: readonly Row[] = [
    [{ hours: 0.49 }, 'hours', 0.49, 'out-of-range', hours],
    [{ hours: 20.01 }, 'hours', 20.01, 'out-of-range', hours],
    [{ hours: -4 }, 'hours', -4, 'out-of-range', hours],
    [{ hours: Infinity }, 'hours', Infinity, 'out-of-range', hours],
    [{ hours: NaN }, 'hours', NaN, 'wrong-type', number],
    [{ hours: '4' }, 'hours', '4', 'wrong-type', number],
    [{ hours: null }, 'hours', null, 'wrong-type', number],
    [{ hours: [4] }, 'hours', [4], 'wrong-type', number],
    [{ strengthCap: 89 }, 'strengthCap', 89, 'out-of-range', cap],
    [{ strengthCap: 121 }, 'strengthCap', 121, 'out-of-range', cap],
    [{ strengthCap: true }, 'strengthCap', true, 'wrong-type', number],
    [{ phase: 'summer' }, 'phase', 'summer', 'not-one-of', { choices: phaseIds }],
    [{ phase: 'Build' }, 'phase', 'Build', 'not-one-of', { choices: phaseIds }],
    [{ phase: 2 }, 'phase', 2, 'not-one-of', { choices: phaseIds }],
    [{ phase: null }, 'phase', null, 'not-one-of', { choices: phaseIds }],
    [{ level: 'fast' }, 'level', 'fast', 'not-one-of', { choices: levelIds }],
    [{ level: null }, 'level', null, 'not-one-of', { choices: levelIds }],
    [{ event: 'mile' }, 'event', 'mile', 'not-one-of', { choices: eventIds }],
    [{ event: '' }, 'event', '', 'not-one-of', { choices: eventIds }],
    [{ weeks: 3 }, 'weeks', 3, 'unknown-field', { fields }],
    [JSON.parse('{"__proto__": {"hours": 5}}'), '__proto__', { hours: 5 }, 'unknown-field', { fields }],
    [{ constructor: 1 }, 'constructor', 1, 'unknown-field', { fields }],
    [{ sessions: null }, 'sessions', null, 'wrong-type', { expected: 'object' }],
    [{ sessions: [] }, 'sessions', [], 'wrong-type', { expected: 'object' }],
    [{ sessions: 'strength' }, 'sessions', 'strength', 'wrong-type', { expected: 'object' }],
    [{ sessions: { yoga: [30] } }, 'sessions.yoga', [30], 'unknown-field', { fields: categoryIds }],
    [{ sessions: { slow: 30 } }, 'sessions.slow', 30, 'wrong-type', { expected: 'list' }],
    [{ sessions: { slow: ['30'] } }, 'sessions.slow', ['30'], 'wrong-type', { expected: 'list' }],
    [{ sessions: { slow: null } }, 'sessions.slow', null, 'wrong-type', { expected: 'list' }],
    [null, '', null, 'wrong-type', { expected: 'object' }],
    [undefined, '', undefined, 'wrong-type', { expected: 'object' }],
    ['4 hours', '', '4 hours', 'wrong-type', { expected: 'object' }],
    [4, '', 4, 'wrong-type', { expected: 'object' }],
    [[4], '', [4], 'wrong-type', { expected: 'object' }],
  ];
  test.each(rows.map((row) => [inShort(row[0]), ...row] as const))('%s', (_, request, path, value, code, allowed) => {
    expect(ask(request)).toEqual({ ok: false, problems: [{ path, value, code, allowed }] });
  });

  test('several faults have a problem each', () => {
    const outcome = ask({ hours: 0, phase: 'x', level: 'y', event: 'z', strengthCap: 0, sessions: 1, more: 1 });
    const paths = outcome.ok ? [] : outcome.problems.map(({ path }) => path);
    expect([...paths].sort()).toEqual(['event', 'hours', 'level', 'more', 'phase', 'sessions', 'strengthCap']);
  });
});

describe('a request without fault', () => {
  test.each<[request: PlanRequest]>([
    [{ hours: 0.5 }],
    [{ hours: 20 }],
    [{ hours: 4.1 }],
    [{ strengthCap: 90 }],
    [{ strengthCap: 117.3 }],
    [{ sessions: {} }],
    [{ sessions: undefined }],
    [{ hours: 3, phase: 'taper', level: 'elite', event: 'none', strengthCap: 120, sessions: { strength: [27] } }],
  ])('%j has a plan', (request) => {
    expect(ask(request).ok).toBe(true);
  });

  test('takes from the method what it leaves out', () => {
    const outcome = planWeek({});
    expect(outcome.ok && outcome.value.inputs).toEqual({
      hours: 4,
      phase: 'build',
      level: 'developing',
      event: 'half-marathon',
      strengthCap: 120,
    });
    const same = planWeek({ hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 });
    expect(JSON.stringify(outcome)).toBe(JSON.stringify(same));
  });

  test('is not changed', () => {
    const request: PlanRequest = { hours: 4, sessions: { strength: [45, 30] } };
    const before = JSON.stringify(request);
    expect(planWeek(Object.freeze(request)).ok).toBe(true);
    expect(JSON.stringify(request)).toBe(before);
  });
});

describe('faults of one request', () => {
  test('leave the next one alone', () => {
    const first = JSON.stringify(ask({ hours: 5 }));
    for (const faulty of [{ hours: 99 }, { hours: 9, phase: 'x' }, null]) expect(ask(faulty).ok).toBe(false);
    expect(JSON.stringify(ask({ hours: 5 }))).toBe(first);
  });
});
