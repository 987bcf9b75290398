import type { Scenario, ScenarioSheet } from './document.js';
import type { ScenarioDocument, WrittenScenario } from './scenario-document.js';

/**
 * A what-if sheet as plain data for a link or a file: its method by id, and without the parts that are empty.
 *
 * `readScenarios` makes the same sheet of it.
 */
export function writeScenarios(sheet: ScenarioSheet): ScenarioDocument {
  const { method, formulas, rows, rulesOff, scenarios, reference } = sheet;
  return {
    format: 'weekwright-sheet',
    version: 1,
    method: method.id,
    ...(isEmpty(formulas) ? {} : { formulas }),
    ...(isEmpty(rows) ? {} : { rows }),
    ...(isEmpty(rulesOff) ? {} : { rulesOff }),
    scenarios: scenarios.map(writeScenario),
    ...(reference === scenarios[0].id ? {} : { reference }),
  };
}

function writeScenario({ id, name, inputs, sessions, week, season, overrides, rulesOff }: Scenario): WrittenScenario {
  return {
    id,
    ...(name === '' ? {} : { name }),
    inputs,
    ...(isEmpty(sessions) ? {} : { sessions }),
    ...(week ? { week } : {}),
    ...(season ? { season } : {}),
    ...(isEmpty(overrides) ? {} : { overrides }),
    ...(isEmpty(rulesOff) ? {} : { rulesOff }),
  };
}

const isEmpty = (part: object): boolean => Object.keys(part).length === 0;
