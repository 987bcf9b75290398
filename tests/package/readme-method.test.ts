import { describe, expect, test } from 'vitest';
import { createPlanner } from '../../src/core.js';
import { formulaLimits, functionArity } from '../../src/sheet/formula/functions.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { readMethod } from '../../src/training/method/read-method.js';
import { codeIn, section, shownFiles } from './readme-text.js';

const document = JSON.parse(shownFiles['harbour.json'] ?? '') as { splits: object[]; rules: object[] };
const formulas = section('What formulas may say');

/** The value that each formula has in a week at the method's start, null where it has none. */
async function valuesOf(texts: readonly string[]): Promise<(number | null | undefined)[]> {
  const quantities = texts.map((formula, index) => ({
    id: `q_${index}`,
    name: formula,
    formula,
    status: 'assumption',
  }));
  const planner = await createPlanner({ ...document, quantities });
  const plan = planner.ok ? planner.value.plan({}) : planner;
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return quantities.map(({ id }) => plan.value.derivations[id]?.value);
}

describe('the method that README.md shows', () => {
  test('is one, and its rule acts', async () => {
    const planner = await createPlanner(document);
    const plan = planner.ok ? planner.value.plan({}) : planner;
    expect(plan).toMatchObject({ ok: true, value: { minutes: { slow: 130, intervals: 35 }, total: { exact: 300 } } });
  });

  test('has one rule, which another method does not inherit', async () => {
    const planner = await createPlanner({ ...document, rules: [] });
    const plan = planner.ok ? planner.value.plan({ hours: 10 }) : planner;
    expect(plan).toMatchObject({ ok: true, value: { minutes: { strength: 150 }, rules: [] } });
  });
});

describe('the names and signs that formulas may use', () => {
  const said = codeIn(formulas);

  test('are all there: every quantity of that method, with one kind of training and one split for all', () => {
    const read = readMethod(document);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { inputs, constants, formulas: rows, blocks, names } = expandMethod(read.value);
    const ids = [...constants, ...rows].map(({ id }) => id).concat(blocks.flatMap(({ writes }) => writes));
    const kinds = new RegExp(`(?<=^|_)(${categoryIds.join('|')})(?=_)`);
    const general = ids.map((id) => id.replace(kinds, 'slow').replace('rest_of_year', 'winter'));
    const all = new Set([...inputs.map(({ id }) => id), ...general, ...Object.keys(names)]);
    const missing = [...all].filter((name) => !said.includes(name));
    expect(missing).toEqual([]);
  });

  test('are all there: every function, and no other', () => {
    const row = /^\| functions +\|(.*)\|$/m.exec(formulas)?.[1] ?? '';
    expect(codeIn(row).map((call) => call.replace(/\(.*/, ''))).toEqual(Object.keys(functionArity));
  });

  test('can be used', async () => {
    const names = said.filter((piece) => /^[a-z]+(_[a-z0-9]+)+$/.test(piece) && piece !== 'notice_few_hours');
    expect(names.length).toBeGreaterThan(30);
    expect((await valuesOf(names)).filter((value) => typeof value !== 'number')).toEqual([]);
  });
});

describe('what README.md says of numbers', () => {
  test('holds', async () => {
    const claims = ['0.07 * 100 == 7', 'round(2.5)', 'round(-2.5)', 'target_event > event_marathon', '1 < a < 10'];
    expect(claims.filter((claim) => !codeIn(formulas).includes(claim))).toEqual([]);
    const texts = [...claims.slice(0, 4), '1 < weekly_hours < 10', '9 < weekly_hours < 10', '-7 % 5', '7 % -5'];
    expect(await valuesOf(texts)).toEqual([1, 3, -3, 0, 1, 0, 3, -3]);
    expect(await valuesOf(['floor(0.29 * 100)', 'ceil(0.07 * 100)'])).toEqual([29, 7]);
    expect(await valuesOf(['1 / 0', 'sqrt(-1)', '10 ^ 300 * 10 ^ 300'])).toEqual([null, null, null]);
  });

  test('the limits are those of the compiler', () => {
    const { length, brackets, depth } = formulaLimits;
    const said = `at most ${length.toLocaleString('en')} characters, brackets ${brackets} deep, and parts ${depth} deep`;
    expect(formulas).toContain(said);
  });

  const quantity = { id: 'own', name: 'own', formula: '1', status: 'assumption' };

  test.each([
    ['splits', 20, document.splits[0]],
    ['rules', 100, document.rules[0]],
    ['quantities', 100, quantity],
  ] as const)('a method has at most as many %s as it says', async (list, most, one) => {
    expect(section('A method of your own')).toMatch(new RegExp(`${most} (${list}|${list} of your own)`));
    const tooLong = async (count: number): Promise<boolean> => {
      const planner = await createPlanner({ ...document, [list]: Array.from({ length: count }, () => one) });
      return !planner.ok && planner.problems.some(({ path, code }) => path === list && code === 'too-long');
    };
    expect([await tooLong(most), await tooLong(most + 1)]).toEqual([false, true]);
  });
});
