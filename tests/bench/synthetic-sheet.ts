import { compileFormula } from '../../src/sheet/formula/compile.js';
import type { CompiledFormula, FormulaBook } from '../../src/sheet/formula/compiled-formula.js';
import { isOperation } from '../../src/sheet/formula/operations.js';
import type { SheetModel } from '../../src/sheet/model.js';
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
    runners: [byHand({ model, input, values }), ...peersOf({ model, book, input, values, watched })],
    events: 100,
  };
}

interface HandWork {
  readonly model: SheetModel;
  readonly input: string;
  readonly values: (event: number) => readonly number[];
}

/** The formulas as the statements that one would write: every quantity is worked out at every event. */
function byHand({ model: { inputs, formulas }, input, values }: HandWork): Runner {
  const statements = formulas.map(
    ({ id, formula }, index) => `const ${id} = ${javascript(formula)}; out[${index}] = ${id};`,
  );
  const body = `const { ${inputs.map(({ id }) => id).join(', ')} } = given; ${statements.join('\n')}`;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the text is our own, and nobody would write out 120 lines
  const compute = new Function('given', 'out', body) as (given: Record<string, number>, out: Float64Array) => void;
  const columns = values(0).map(() => ({
    given: Object.fromEntries(inputs.map(({ id, start }) => [id, start])),
    out: new Float64Array(formulas.length),
  }));
  const run = (event: number): number => {
    values(event).forEach((value, index) => {
      const column = columns[index];
      if (!column) return;
      column.given[input] = value;
      compute(column.given, column.out);
    });
    return columns[0]?.out.at(-1) ?? NaN;
  };
  const result = (event: number): number[] => {
    run(event);
    return columns.flatMap(({ out }) => [...out].reverse());
  };
  return { name: 'written by hand', run, result };
}

function javascript(formula: string): string {
  return formula.replace(/\b(min|max|abs)\(/g, 'Math.$1(').replaceAll(' and ', ' && ');
}
