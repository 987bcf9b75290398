import { describe, expect, test } from 'vitest';
import type { WeekRequest } from '../../../../src/plan/week/wishes.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { builtInWeek } from '../../../../src/training/method/built-in-week.js';
import { validator } from '../../schema/published.js';
import { planned, roomy, weekOf } from './weeks.js';

const isPlan = validator('plan');
const isMethod = validator('method');

const weeks: Readonly<Record<string, WeekRequest>> = {
  laid: { days: [60, 0, 45, 60, 0, 90, 120] },
  'laid at no cost': { ...roomy, restDays: 0 },
  'laid again, with every field filled in': {
    ...roomy,
    free: [4],
    longRun: 6,
    restDays: 1,
    sessionsADay: 3,
    pinned: [{ category: 'tempo', minutes: 35, day: 3 }],
    done: [{ category: 'strength', minutes: 35, day: 0 }],
    passed: 1,
    sessions: { strength: [35, 40], cross: [] },
    before: weekOf(roomy).days ?? null,
  },
  'nothing fits': { days: [0, 0, 0, 0, 0, 0, 60] },
  'nothing fits, with pins that collide': {
    ...roomy,
    pinned: [
      { category: 'tempo', minutes: 35, day: 3 },
      { category: 'intervals', minutes: 25, day: 3 },
    ],
  },
};

describe('plan.schema.json', () => {
  test.each(Object.entries(weeks))('describes a plan with a week: %s', (name, week) => {
    const plan = planned(week);
    expect(plan.week?.state).toBe(name.startsWith('laid') ? 'laid' : 'nothing-fits');
    isPlan(plan);
    expect(isPlan.errors).toBeNull();
    expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
  });

  test.each([
    ['six days', { days: [[], [], [], [], [], []] }],
    ['a state that is none', { state: 'fine' }],
    ['a kind that is none', { days: [[{ category: 'yoga', minutes: 30 }], [], [], [], [], [], []] }],
    ['no sessions', { sessions: undefined }],
    ['something more', { colour: 'red' }],
  ])('refuses a week with %s', (_, fields) => {
    const plan = planned(roomy);
    const changed: unknown = JSON.parse(JSON.stringify({ ...plan, week: { ...plan.week, ...fields } }));
    expect(isPlan(plan)).toBe(true);
    expect(isPlan(changed)).toBe(false);
  });
});

describe('method.schema.json', () => {
  test('accepts the built-in method with and without its week', () => {
    const { week: _, ...without } = builtInMethod;
    for (const method of [{ ...builtInMethod, week: builtInWeek }, without]) expect(isMethod(method)).toBe(true);
  });

  test('refuses a week with a cost below nothing', () => {
    const [first, ...others] = builtInWeek.clashes;
    const week = { ...builtInWeek, clashes: [{ ...first, cost: -1 }, ...others] };
    expect(isMethod({ ...builtInMethod, week })).toBe(false);
  });
});
