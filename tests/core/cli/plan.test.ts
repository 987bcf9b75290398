import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { planWeek } from '../../../src/plan.js';
import { linesOf, ran } from './fake-io.js';

const fourHours = ['plan', '--hours', '4', '--phase', 'build', '--level', 'developing', '--event', 'half-marathon'];

describe('weekwright plan', () => {
  // Common practice, no source: 72 / 36 / 24 / 36 / 72 minutes.
  it('prints the answer, the inputs, the table of the week, and cautions', async () => {
    const { code, output, errors } = await ran(fourHours);
    expect(code).toBe(0);
    expect(errors).toBe('');
    const lines = linesOf(output);
    expect(lines[0]).toMatch(/^Four hours in build: 75 minutes of strength, as \d/);
    expect(output).toContain('Target event   half marathon');
    expect(output).toContain('Split: in season (common practice, no published source)');
    expect(lines).toContain('Kind            Split    Exact  Planned  Sessions');
    expect(output).toMatch(/^Slow running {6}30% {3}72 min {3}70 min {2}\d/m);
    expect(output).toMatch(/^Intervals {9}10% {3}24 min {3}25 min {2}25$/m);
    expect(output).toMatch(/^Total {12}100% {2}240 min {2}240 min$/m);
    expect(output).toContain('Nothing was corrected.');
    expect(lines.at(-1)).toMatch(/see a professional first/);
  });

  it('says which rules acted and what is worth knowing', async () => {
    const { output } = await ran(['plan', '--hours', '8', '--strength-cap', '100', '--phase', 'base']);
    expect(output).toContain(
      'Rules that acted\n- Strength is held at 100 minutes: 44 minutes moved to slow running. (common practice, no published source)\n',
    );
    expect(output).toMatch(/Worth knowing\n- The split is not made for more than six hours a week/);
  });

  it("starts from the method's values where nothing is said", async () => {
    const [bare, said] = [await ran(['plan']), await ran(fourHours)];
    expect(bare).toEqual(said);
  });

  it('speaks German', async () => {
    const { output } = await ran([...fourHours, '--lang', 'de']);
    expect(output).toMatch(/^Vier Stunden in der Aufbauphase: 75 Minuten Krafttraining, als /);
    expect(output).toContain('Nichts wurde korrigiert.');
  });

  it('prints the plan document with --json, indented by two', async () => {
    const { code, output } = await ran([...fourHours, '--json']);
    const plan = planWeek({ hours: 4, phase: 'build', level: 'developing', event: 'half-marathon' });
    expect(code).toBe(0);
    expect(output).toBe(`${JSON.stringify(plan.ok && plan.value, null, 2)}\n`);
  });
});

describe('weekwright plan --method FILE', () => {
  const inSeason = { slow: 0.5, tempo: 0.1, intervals: 0.1, cross: 0.1, strength: 0.2 };
  const own = {
    ...defaultMethod,
    categories: defaultMethod.categories.map((each) => (each.id === 'slow' ? { ...each, name: 'Easy miles' } : each)),
    splits: defaultMethod.splits.map((each) => (each.id === 'in_season' ? { ...each, shares: inSeason } : each)),
  };

  it("plans by the coach's method", async () => {
    const files = { 'own.json': `\uFEFF${JSON.stringify(own)}` };
    const { code, output } = await ran([...fourHours, '--method', 'own.json'], { files });
    expect(code).toBe(0);
    expect(output).toMatch(/^Easy miles {8}50% {2}120 min/m);
  });

  it.each([
    ['none.json', '--method could not be read from "none.json" (there is no such file).\n'],
    ['text.json', /^This method cannot be used yet:\n- The document is not valid JSON: .+\n$/],
    ['sum.json', 'This method cannot be used yet:\n- splits[3].shares comes to 1.2; it has to come to 1.\n'],
    ['empty.json', /^This method cannot be used yet:\n- .+ is missing\.\n/],
  ])('refuses %s and says why', async (file, expected) => {
    const splits = own.splits.map((each) =>
      each.id === 'in_season' ? { ...each, shares: { ...inSeason, slow: 0.7 } } : each,
    );
    const files = { 'text.json': 'slow: 30 %', 'sum.json': JSON.stringify({ ...own, splits }), 'empty.json': '{}' };
    const { code, output, errors } = await ran(['plan', '--method', file], { files });
    expect(code).toBe(2);
    expect(output).toBe('');
    if (typeof expected === 'string') expect(errors).toBe(expected);
    else expect(errors).toMatch(expected);
  });

  it('lets no text of a method steer the terminal', async () => {
    const name = 'Easy\u001B[31m miles\u202E';
    const categories = own.categories.map((each) => (each.id === 'slow' ? { ...each, name } : each));
    const files = { 'own.json': JSON.stringify({ ...own, categories }) };
    const { output } = await ran(['plan', '--method', 'own.json'], { files });
    expect(output).toContain('Easy\uFFFD[31m miles\uFFFD');
    expect(output).not.toMatch(/[\u001B\u202E]/);
  });
});
