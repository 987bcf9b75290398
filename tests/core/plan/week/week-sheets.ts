import { newSheet, setOverride, setWeek } from '../../../../src/plan/scenarios/change.js';
import type { ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { ScenarioPlanner, type PlannedScenario } from '../../../../src/plan/scenarios/scenario-planner.js';
import { createWeekMaker } from '../../../../src/plan/week/create-week-maker.js';
import type { PlanInputs } from '../../../../src/plan/document.js';
import type { PlanWeek } from '../../../../src/plan/week/document.js';
import type { WeekRequest } from '../../../../src/plan/week/wishes.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { valueOf } from '../../training/method/documents.js';
import { fourHours, learned } from '../scenarios/sheets.js';

export const evenings: WeekRequest = { days: [60, 0, 45, 60, 0, 90, 120] };

/** A sheet with one scenario, `a`, which has days. */
export function sheetWith(
  overrides: Readonly<Record<string, string>> = {},
  { week = evenings, inputs = {} }: { readonly week?: WeekRequest; readonly inputs?: Partial<PlanInputs> } = {},
): ScenarioSheet {
  const sheet = setWeek(newSheet(builtInMethod, { ...fourHours, ...inputs }), 'a', week);
  return Object.entries(overrides).reduce(
    (so, [quantity, formula]) => setOverride(so, 'a', { quantity, formula }),
    sheet,
  );
}

/** A planner of scenarios that lays weeks and knows the formulas of a sheet. */
export async function weekPlanner(sheet: ScenarioSheet): Promise<ScenarioPlanner> {
  const planner = new ScenarioPlanner();
  planner.teach({ week: createWeekMaker() });
  return learned(sheet, planner);
}

/** The first scenario of a sheet, worked out. */
export async function firstOf(sheet: ScenarioSheet): Promise<PlannedScenario> {
  const [first] = (await weekPlanner(sheet)).plan(sheet);
  if (!first) throw new Error('a sheet has a scenario');
  return first;
}

/** The week of a scenario that has a plan. */
export function weekIn({ outcome }: PlannedScenario): PlanWeek {
  const { week } = valueOf(outcome);
  if (!week) throw new Error('the scenario has days');
  return week;
}

/** What the sheet says that the week costs; null where it has no number. */
export function costIn({ planner }: PlannedScenario): number | null {
  const value = planner.column.value('week_cost');
  return Number.isNaN(value) ? null : value;
}
