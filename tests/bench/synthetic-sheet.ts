import { compileFormula } from '../../src/sheet/formula/compile.js';
import type { CompiledFormula, FormulaBook } from '../../src/sheet/formula/compiled-formula.js';
import { isOperation } from '../../src/sheet/formula/operations.js';
import type { FormulaQuantity, SheetModel } from '../../src/sheet/model.js';
import { formulaTexts } from '../../src/sheet/sheet.js';
import type { Race, Runner } from './measure.js';
import { peersOf } from './peers.js';
import { syntheticModel } from './synthetic-model.js';

const model = syntheticModel();
const book: FormulaBook = Object.fromEntries(formulaTexts(model).map((text) => [text, compiled(text)]));
const watched = model.formulas.map(({ id }) => id).reverse();
const operations = Object.values(book).flatMap((code) =>
  code.filter((token) => typeof token === 'string' && isOperation(token)),
).length;

function compiled(text: string): CompiledFormula {
  const result = compileFormula(text);
  if (!result.ok) throw new Error(`${text}: ${result.error.code}`);
  return result.formula;
}

/** One input of a synthetic sheet changes, in one column or in six. */
export function syntheticRace(change: 'wide' | 'narrow', columns: number): Race {
  const input = change === 'wide' ? 'input_0' : 'input_5';
  const values = (event: number): number[] =>
    Array.from({ length: columns }, (_, column) => 20 + event / 2 + column * 3);
  const reach = change === 'wide' ? 'all of them change' : 'few of them change';
  return {
    title: `${model.formulas.length} quantities, ${operations} operations, ${columns === 1 ? 'one column' : `${columns} columns`}: ${reach}`,
    runners: [
      byHand('by hand, a function each', asFunctions, { model, input, values }),
      byHand('by hand, one list of assignments', asStatements, { model, input, values }),
      ...peersOf({ model, book, input, values, watched }),
    ],
    events: 100,
  };
}

interface HandWork {
  readonly model: SheetModel;
  readonly input: string;
  readonly values: (event: number) => readonly number[];
}

/** A way to write the formulas as JavaScript that computes all quantities of a record. */
type Style = (formulas: readonly FormulaQuantity[]) => string;

/** As people would write and keep it: a function for each quantity. */
const asFunctions: Style = (formulas) => {
  const functions = formulas.map((each) => `function ${each.id}(sheet) { return ${javascript(each)}; }`);
  const calls = formulas.map(({ id }) => `sheet.${id} = ${id}(sheet);`);
  return `${functions.join('\n')}\nreturn (sheet) => { ${calls.join('\n')} };`;
};

/** As a machine would write it: one long list of assignments. */
const asStatements: Style = (formulas) =>
  `return (sheet) => { ${formulas.map((each) => `sheet.${each.id} = ${javascript(each)};`).join('\n')} };`;

/** Every quantity is worked out at every event, however few of them change. */
function byHand(name: string, style: Style, { model, input, values }: HandWork): Runner {
  const { inputs, formulas } = model;
  const fields = [...inputs.map(({ id, start }) => `${id}: ${start}.5`), ...formulas.map(({ id }) => `${id}: 0.5`)];
  const newRecord = evaluate<() => Record<string, number>>(`return () => ({ ${fields.join(', ')} });`);
  const compute = evaluate<(sheet: Record<string, number>) => void>(style(formulas));
  const columns = values(0).map(() => {
    const record = newRecord();
    for (const { id, start } of inputs) record[id] = start;
    return record;
  });
  const [first = ''] = watched;
  const run = (event: number): number => {
    const wanted = values(event);
    columns.forEach((record, index) => {
      record[input] = wanted[index] ?? NaN;
      compute(record);
    });
    return columns[0]?.[first] ?? NaN;
  };
  const result = (event: number): number[] => {
    run(event);
    return columns.flatMap((record) => watched.map((id) => record[id] ?? NaN));
  };
  return { name, run, result };
}

function evaluate<T>(body: string): T {
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- our own text; nobody would write out 120 formulas
  const make = new Function(body) as () => T;
  return make();
}

function javascript({ formula }: FormulaQuantity): string {
  const fields = formula.replace(/\b(input|quantity)_\d+\b/g, 'sheet.$&');
  return fields.replace(/\b(min|max|abs)\(/g, 'Math.$1(').replaceAll(' and ', ' && ');
}
