import { describe, expect, test, vi } from 'vitest';
import { builtInPlanner, createPlanner, planWeek } from '../../../../src/plan.js';
import { defaultDocument, documentWith, plannerOf, valueOf } from './documents.js';

// Whoever asks for the compiler, and with it for the parser, fails.
vi.mock('../../../../src/sheet/formula/compile.js', () => {
  throw new Error('the parser was asked for');
});

describe('the parser is not loaded', () => {
  test('for the built-in method', () => {
    expect(valueOf(planWeek({ hours: 4 })).minutes.strength).toBe(72);
    expect(builtInPlanner().plan({ hours: 8, phase: 'taper' }).ok).toBe(true);
  });

  test('for the default document', async () => {
    const planner = await plannerOf(defaultDocument());
    expect(JSON.stringify(planner.plan({ hours: 5 }))).toBe(JSON.stringify(planWeek({ hours: 5 })));
  });

  test.each<[what: string, path: string, value: unknown]>([
    ['other shares', 'splits[3].shares', { slow: 0.4, tempo: 0.1, intervals: 0.1, cross: 0.1, strength: 0.3 }],
    ['other limits', 'categories[4].session', { shortest: 20, typical: 40, longest: 90 }],
    ['other names', 'splits[3].name', 'Thursdays'],
    ['rules switched off', 'rules[0].enabled', false],
    ['a rule fewer', 'rules', []],
    ['another order of ties', 'tie_order', ['slow', 'strength', 'cross', 'tempo', 'intervals']],
    ['a formula known from elsewhere in it', 'rules[0].when', 'weekly_hours > 6'],
  ])('for a method with %s', async (_, path, value) => {
    expect((await plannerOf(documentWith(path, value))).plan({ hours: 8 }).ok).toBe(true);
  });

  test('for a document that is faulty in other ways', async () => {
    expect((await createPlanner(documentWith('splits[0].shares.slow', 2))).ok).toBe(false);
  });
});

describe('the parser is loaded', () => {
  test.each([
    ['splits[0].when', 'season_phase == phase_base'],
    ['rules[0].value', 'min(value, strength_cap)'],
    ['quantities', [{ id: 'load', name: 'Load', formula: 'weekly_minutes * 2', status: 'assumption' }]],
  ])('for a formula of one’s own: %s', async (path, value) => {
    await expect(createPlanner(documentWith(path, value))).rejects.toThrow('error when mocking a module');
  });
});
