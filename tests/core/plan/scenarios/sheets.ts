import { newSheet, scenarioOf, setOverride } from '../../../../src/plan/scenarios/change.js';
import type { Plan, PlanInputs } from '../../../../src/plan/document.js';
import type { ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { ScenarioPlanner, type PlannedScenario } from '../../../../src/plan/scenarios/scenario-planner.js';
import type { Outcome } from '../../../../src/problem.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import type { Method } from '../../../../src/training/method/document.js';
import { valueOf } from '../../training/method/documents.js';

/** Four hours in build: 72, 36, 24, 36 and 72 minutes of slow running, tempo running, intervals, cross-training, strength. */
export const fourHours: PlanInputs = {
  hours: 4,
  phase: 'build',
  level: 'developing',
  event: 'half-marathon',
  strengthCap: 120,
};

/** A sheet with one scenario, `a`, and what is put over its quantities. */
export function sheetWith(
  overrides: Readonly<Record<string, string | number>> = {},
  { method = builtInMethod, inputs = {} }: { readonly method?: Method; readonly inputs?: Partial<PlanInputs> } = {},
): ScenarioSheet {
  return Object.entries(overrides).reduce(
    (sheet, [quantity, formula]) => setOverride(sheet, 'a', { quantity, formula: String(formula) }),
    newSheet(method, { ...fourHours, ...inputs }),
  );
}

/** A planner that has learned the formulas of a sheet; throws where one is refused. */
export async function learned(sheet: ScenarioSheet, planner = new ScenarioPlanner()): Promise<ScenarioPlanner> {
  const errors = await planner.learn(sheet);
  if (errors.size > 0) throw new Error(JSON.stringify([...errors]));
  return planner;
}

/** Every scenario of a sheet, worked out afresh. */
export async function plannedAfresh(sheet: ScenarioSheet): Promise<readonly PlannedScenario[]> {
  return (await learned(sheet)).plan(sheet);
}

/** What comes of one scenario of a sheet, worked out afresh. */
export async function outcomeOf(sheet: ScenarioSheet, id = 'a'): Promise<Outcome<Plan>> {
  const planned = await plannedAfresh(sheet);
  const found = planned.find(({ scenario }) => scenario === scenarioOf(sheet, id));
  if (!found) throw new Error(`no scenario ${id}`);
  return found.outcome;
}

/** The plan of one scenario, which must have one. */
export async function planOf(sheet: ScenarioSheet, id = 'a'): Promise<Plan> {
  return valueOf(await outcomeOf(sheet, id));
}

/** The same value, of which nothing can be changed. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
