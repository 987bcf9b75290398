import type { Column } from '../../sheet/column.js';
import type { Derivation } from '../../sheet/derivation.js';
import { withoutNoise } from '../../sheet/numbers.js';
import type { Sheet } from '../../sheet/sheet.js';
import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { Notice, PlanInputs } from '../document.js';
import { inputNames, inputQuantities } from '../inputs.js';
import type { Hands } from '../planner.js';
import { readRequest } from '../read-request.js';
import { requestOf } from './input-request.js';
import { handProblems } from './hand-problems.js';

/** Minds what a person has put over the quantities of a scenario's sheet. */
export function handsOn(method: Method, sheet: Sheet): Hands {
  const overridden = sheet.model.overrides.map(({ on }) => on);
  const inputs = overridden.filter((id) => Object.values(inputQuantities).includes(id));
  const problemsIn = handProblems(method, sheet);
  return {
    inputs: (column) => {
      const problems = problemsIn(column);
      if (problems.length > 0) return { ok: false, problems };
      return inputs.length === 0 ? null : inputsUsed(method, sheet, { column, inputs });
    },
    notices: (derivations) => overridden.map((id) => byHandNotice(id, derivations)),
  };
}

/** What was put over an input is checked like the input itself. */
function inputsUsed(
  method: Method,
  sheet: Sheet,
  { column, inputs }: { readonly column: Column; readonly inputs: readonly string[] },
): Outcome<PlanInputs> {
  const problems = inputs.flatMap((path): Problem[] => {
    const cause = sheet.explain(column, path);
    return cause ? [{ path, value: null, code: 'no-value', allowed: { cause } }] : [];
  });
  if (problems.length > 0) return { ok: false, problems };
  const read = readRequest(inputsOf(column), method);
  return read.ok ? { ok: true, value: read.value.inputs } : read;
}

/** The inputs as a column has them, not yet checked: what was put over one can be out of its range, or no choice. */
function inputsOf(column: Column): Readonly<Record<string, unknown>> {
  const parts = inputNames.map((name) => {
    const value = withoutNoise(column.value(inputQuantities[name]));
    return requestOf(inputQuantities[name], value) ?? { [name]: value };
  });
  return Object.fromEntries(parts.flatMap((part) => Object.entries(part)));
}

/** Said of every override, so that nobody takes such a week for the method's. */
function byHandNotice(quantity: string, derivations: Readonly<Record<string, Derivation>>): Notice {
  const { value = null, byHand = null } = derivations[quantity] ?? {};
  const known = { before: byHand?.before ?? null, after: value };
  const numbers = Object.entries(known).filter((entry): entry is [string, number] => entry[1] !== null);
  const givers = Object.values(derivations).filter((each) => each.byHand?.to.includes(quantity) === true).length;
  return { code: 'by-hand', level: 'note', quantity, values: { ...Object.fromEntries(numbers), givers } };
}
