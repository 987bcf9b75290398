import type { Problem } from '../../problem.js';
import { quantityIds } from '../../sheet/sheet.js';
import type { Method } from '../../training/method/document.js';
import { duplicate, duplicates, repeated, takenIds } from '../../training/method/duplicates.js';
import { weekQuantities } from '../../training/method/week-names.js';
import { expandMethod } from '../../training/method/expand.js';
import { unusableKeys } from './document.js';
import type { ScenarioShape } from './scenario-schema.js';

/** A sheet of the right shape, in which every scenario has an id and one of them is the reference. */
export interface NamedShape extends ScenarioShape {
  readonly ids: readonly string[];
  readonly reference: string;
}

/** Faults of a sheet that no single field shows: doubles, and names of what neither sheet nor method has. */
export function checkScenarios(sheet: NamedShape, method: Method): Problem[] {
  const { formulas, rows, rulesOff, ids, reference } = sheet;
  const model = expandMethod(method);
  const quantities = [...quantityIds(model), ...weekQuantities];
  const own = rows.map(({ id }) => id);
  const byFormula = model.formulas.map(({ id }) => id); // an own row has its formula where the row is
  const rules = method.rules.map(({ id }) => id);
  return [
    ...unknownKeys(formulas, byFormula, 'formulas'),
    ...takenIds(rows, [...quantities, ...Object.keys(model.names), ...unusableKeys], 'rows'),
    ...faultyRules(rulesOff, rules, 'rulesOff'),
    ...duplicates(
      ids.map((id) => ({ id })),
      'scenarios',
    ),
    ...sheet.scenarios.flatMap((scenario, index) => [
      ...unknownKeys(scenario.overrides, [...quantities, ...own], `scenarios[${index}].overrides`),
      ...faultyRules(scenario.rulesOff, rules, `scenarios[${index}].rulesOff`),
    ]),
    ...unknown('reference', reference, ids),
  ];
}

function unknown(path: string, value: string, names: readonly string[]): Problem[] {
  return names.includes(value) ? [] : [{ path, value, code: 'unknown-name', allowed: { names } }];
}

function unknownKeys(record: Readonly<Record<string, string>>, names: readonly string[], path: string): Problem[] {
  return Object.keys(record).flatMap((key) => unknown(`${path}.${key}`, key, names));
}

function faultyRules(given: readonly string[], rules: readonly string[], path: string): Problem[] {
  return [
    ...given.flatMap((id, index) => unknown(`${path}[${index}]`, id, rules)),
    ...repeated(given).map((index) => duplicate(`${path}[${index}]`, given[index])),
  ];
}
