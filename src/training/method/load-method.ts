import type { Outcome, Problem } from '../../problem.js';
import type { FormulaBook } from '../../sheet/formula/compiled-formula.js';
import { compileTexts } from '../../sheet/formula/compile-texts.js';
import { unknownNames } from '../../sheet/formula/unknown-names.js';
import type { SheetModel } from '../../sheet/model.js';
import { createSheet, formulaTexts, quantityIds, type Sheet } from '../../sheet/sheet.js';
import { builtInFormulas } from './built-in-formulas.js';
import type { Method } from './document.js';
import { expandMethod } from './expand.js';
import { categoryQuantity } from './names.js';
import { formulaPlaces, type FormulaPlace } from './formula-places.js';
import { readMethod } from './read-method.js';

/** A method and the sheet that computes it. */
export interface LoadedMethod {
  readonly method: Method;
  readonly sheet: Sheet;
}

/**
 * Reads a coach's method and makes its sheet.
 *
 * @param known formulas compiled already; the parser is fetched only where the method has others.
 * @returns the loaded method, or every problem of the first stage that has one: shape, formulas, names, circles.
 */
export async function loadMethod(document: unknown, known = builtInFormulas): Promise<Outcome<LoadedMethod>> {
  const read = readMethod(document);
  if (!read.ok) return read;
  const method = read.value;
  const model = expandMethod(method);
  const book = await completeBook(method, model, known);
  if (!book.ok) return book;
  const problems = [...nameProblems(method, model, book.value), ...ruleTargets(method, model)];
  if (problems.length > 0) return { ok: false, problems };
  const sheet = createSheet(model, book.value);
  const circles = circleProblems(sheet);
  return circles.length > 0 ? { ok: false, problems: circles } : { ok: true, value: { method, sheet } };
}

async function completeBook(method: Method, model: SheetModel, known: FormulaBook): Promise<Outcome<FormulaBook>> {
  const places = formulaPlaces(method);
  // Rules that are switched off are not all in the sheet, but may be switched on again.
  const texts = new Set([...formulaTexts(model), ...places.map(({ text }) => text)]);
  const { book, errors } = await compileTexts([...texts], known);
  const problems = [...places, ...choiceOfShare(model)].flatMap(({ path, text }): Problem[] => {
    const error = errors.get(text);
    return error ? [{ path, value: text, code: 'formula', allowed: { error } }] : [];
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: book };
}

/** A formula that the sheet makes by itself, of the names of all splits: with many long ones it is too long. */
function choiceOfShare({ formulas }: SheetModel): Pick<FormulaPlace, 'path' | 'text'>[] {
  const shares = formulas.filter(({ id }) => id === categoryQuantity('intervals', 'share'));
  return shares.map(({ formula }) => ({ path: 'splits', text: formula }));
}

function nameProblems(method: Method, model: SheetModel, book: FormulaBook): Problem[] {
  const known = new Set([...quantityIds(model), ...Object.keys(model.names)]);
  return formulaPlaces(method).flatMap(({ path, text, locals }) => {
    const isKnown = (name: string): boolean => known.has(name) || locals.includes(name);
    return unknownNames(text, book[text] ?? [], isKnown).map((error) => ({
      path,
      value: text,
      code: 'formula' as const,
      allowed: { error },
    }));
  });
}

/** A rule can act only on what a formula gives: inputs and constants are set by people, blocks are whole computations. */
function ruleTargets({ rules }: Method, model: SheetModel): Problem[] {
  const names = model.formulas.map(({ id }) => id);
  return rules.flatMap((rule, index) => {
    if (rule.kind === 'notice') return [];
    const targets = [['on', rule.on] as const, ...(rule.to === undefined ? [] : [['to', rule.to] as const])];
    return targets
      .filter(([, id]) => !names.includes(id))
      .map(([field, id]) => ({
        path: `rules[${index}].${field}`,
        value: id,
        code: 'unknown-name' as const,
        allowed: { names },
      }));
  });
}

function circleProblems({ program }: Sheet): Problem[] {
  const circles = [...program.errors.values()].flatMap((error) => (error.code === 'circle' ? [error.path] : []));
  const seen = new Set<string>();
  // One circle for each knot of quantities: who mends it sees the next.
  return circles.flatMap((path) => {
    const [id = ''] = path;
    const isKnown = path.some((each) => seen.has(each));
    for (const each of path) seen.add(each);
    return isKnown ? [] : [{ path: id, value: id, code: 'circle' as const, allowed: { path } }];
  });
}
