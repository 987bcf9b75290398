import fc from 'fast-check';
import type { Block, SheetRule } from '../../../src/sheet/model.js';
import { anyNumber, formulaTexts } from './formula-texts.js';
import { mathjsValue } from './mathjs-value.js';
import { ruleOf, type SheetParts } from './sheet-of.js';

type Values = Readonly<Record<string, number>>;

/**
 * A sheet in levels: formulas of a level read inputs and the levels below, rules move amounts within a level, and a block
 * computes two more quantities of the level. So it has no circles, and an oracle can go up level by level.
 */
export interface RandomSheet {
  readonly inputs: Values;
  readonly constants: Values;
  readonly levels: readonly Level[];
}

interface Level {
  readonly formulas: Readonly<Record<string, string>>;
  readonly rules: readonly SheetRule[];
  readonly block: Block;
}

const start = { inputs: ['i0', 'i1', 'i2'], constants: ['k0', 'k1'] };
const quantities = 3;
const namesOf = (level: number): string[] =>
  Array.from({ length: level }, (_, each) => [
    ...formulaNames(each),
    `half${String(each)}`,
    `sign${String(each)}`,
  ]).flat();
const formulaNames = (level: number): string[] =>
  Array.from({ length: quantities }, (_, index) => `q${String(level)}_${String(index)}`);

export const randomSheets: fc.Arbitrary<RandomSheet> = fc.record({
  inputs: valuesOf(start.inputs),
  constants: valuesOf(start.constants),
  levels: fc.tuple(randomLevel(0), randomLevel(1), randomLevel(2)),
});

/** Some settings, of one input up to all of them. */
export const randomEdits: fc.Arbitrary<readonly Values[]> = fc.array(
  fc
    .array(fc.tuple(fc.constantFrom(...start.inputs, ...start.constants), anyNumber), { maxLength: 5 })
    .map(Object.fromEntries<number>),
  { minLength: 1, maxLength: 5 },
);

function valuesOf(names: readonly string[]): fc.Arbitrary<Values> {
  return fc.record(Object.fromEntries(names.map((name) => [name, anyNumber])));
}

function randomLevel(level: number): fc.Arbitrary<Level> {
  const below = [...start.inputs, ...start.constants, ...namesOf(level)];
  const names = formulaNames(level);
  const texts = formulaTexts(below, { depth: 2 });
  const block: Block = {
    id: `block${String(level)}`,
    reads: names.slice(0, 2),
    writes: [`half${String(level)}`, `sign${String(level)}`],
    // The sign changes seldom, and a negative number has no half.
    compute: ([amount = 0, other = 0]) => [amount < 0 ? NaN : amount / 2, Math.sign(other)],
  };
  return fc.record({
    formulas: fc.record(Object.fromEntries(names.map((name) => [name, texts]))),
    rules: fc
      .array(randomRule(level, below), { maxLength: 3 })
      .map((rules) => rules.map((rule, index) => ({ ...rule, id: `${rule.id}-${String(index)}` }))),
    block: fc.constant(block),
  });
}

function randomRule(level: number, below: readonly string[]): fc.Arbitrary<SheetRule> {
  const names = fc.shuffledSubarray(formulaNames(level), { minLength: 2, maxLength: 2 });
  const alone = formulaTexts([...below, 'value'], { depth: 1 });
  const together = formulaTexts([...below, 'value', 'other'], { depth: 1 });
  const rule = (texts: fc.Arbitrary<string>) =>
    fc
      .record({ when: texts, value: texts, enabled: fc.boolean(), names })
      .map(({ names: [on = '', to = ''], ...formulas }) => ({ ...formulas, on, to }));
  return fc.oneof(
    rule(alone).map(({ to: _, ...parts }) => ruleOf({ id: `alone${String(level)}`, ...parts })),
    rule(together).map((parts) => ruleOf({ id: `together${String(level)}`, ...parts })),
  );
}

export function partsOf({ inputs, constants, levels }: RandomSheet): SheetParts {
  return {
    inputs,
    constants,
    formulas: Object.fromEntries(levels.flatMap(({ formulas }) => Object.entries(formulas))),
    rules: levels.flatMap(({ rules }) => rules),
    blocks: levels.map(({ block }) => block),
  };
}

/** Every quantity by mathjs and plain arithmetic, NaN where it fails; nothing of the engine is used. */
export function oracleOf({ levels }: RandomSheet, settings: Values): Values {
  const values: Record<string, number> = { ...settings };
  for (const { formulas, rules, block } of levels) {
    const sofar: Record<string, number> = {};
    for (const [id, text] of Object.entries(formulas)) sofar[id] = mathjsValue(text, values);
    for (const rule of rules.filter(({ enabled }) => enabled)) applyRule(rule, sofar, values);
    Object.assign(values, sofar);
    const reads = block.reads.map((id) => values[id] ?? NaN);
    const results = reads.every(Number.isFinite) ? block.compute(reads) : [];
    block.writes.forEach((id, index) => (values[id] = results[index] ?? NaN));
  }
  return values;
}

function applyRule({ on, to, when, value: text }: SheetRule, sofar: Record<string, number>, below: Values): void {
  const value = sofar[on] ?? NaN;
  const other = to === undefined ? value : (sofar[to] ?? NaN);
  const scope = { ...below, value, other };
  const holds = mathjsValue(when, scope);
  if (holds === 0) return;
  const after = Number.isNaN(holds) ? NaN : mathjsValue(text, scope);
  sofar[on] = after;
  if (to !== undefined) sofar[to] = handedOn(other, value, after);
}

/** What hands on all that it has is left with exactly nothing, though sums of binary fractions would leave a trace. */
function handedOn(other: number, before: number, after: number): number {
  const left = other + (before - after);
  const largest = Math.max(...[other, before, after].map(Math.abs));
  return Math.abs(left) <= 1e-12 * largest ? 0 : finite(left);
}

const finite = (number: number): number => (Number.isFinite(number) ? number : NaN);
