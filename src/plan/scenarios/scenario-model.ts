import { quantityIds } from '../../sheet/sheet.js';
import type { SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import { sharingsOf } from '../../training/method/sharings.js';
import { weekQuantities } from '../../training/method/week-names.js';
import { expandMethod } from '../../training/method/expand.js';
import type { Scenario, ScenarioSheet } from './document.js';

/** The method as a sheet has changed it for one scenario: rules that are off, and rows of a person's own. */
export function methodOf({ method, rows, rulesOff }: ScenarioSheet, scenario: Pick<Scenario, 'rulesOff'>): Method {
  const off = new Set([...rulesOff, ...scenario.rulesOff]);
  if (rows.length === 0 && off.size === 0) return method;
  const { quantities = [], rules } = method;
  return {
    ...method,
    quantities: [...quantities, ...rows.map((row) => ({ ...row, status: 'assumption' as const }))],
    rules: rules.map((rule) => (off.has(rule.id) ? { ...rule, enabled: false } : rule)),
  };
}

/**
 * The model of a scenario's sheet: the method's, with formulas edited for all, and with what is put over it here. Where days are given their
 * quantities are to be added.
 */
export function modelOf(method: Method, { formulas }: ScenarioSheet, { overrides, week }: Scenario): SheetModel {
  const model = expandMethod(method);
  const known = new Set([...quantityIds(model), ...(week ? weekQuantities : [])]);
  return {
    ...model,
    formulas: model.formulas.map(({ id, formula }) => ({ id, formula: formulas[id] ?? formula })),
    sharings: sharingsOf(method),
    // What is put over a row that is no longer there waits for its return.
    overrides: Object.entries(overrides)
      .filter(([on]) => known.has(on))
      .map(([on, formula]) => ({ on, formula })),
  };
}
