import type { ByCategory, CategoryId } from '../../training/method/ids.js';
import type { Method } from '../../training/method/document.js';
import type { PlanInputs } from '../document.js';
import { isSameWishes } from '../same-wishes.js';
import { inputNames, inputQuantities } from '../inputs.js';
import type { SeasonRequest } from '../season/wishes.js';
import type { WeekRequest } from '../week/wishes.js';
import { mostScenarios, type OwnRow, type Scenario, type ScenarioSheet } from './document.js';

/*
 * Everything that can be done to a sheet: each function gives another sheet and leaves the one it got. What cannot be
 * done (a seventh scenario, the last one removed, an id that is not there) gives the same sheet back.
 */

/** A sheet with one scenario. */
export function newSheet(method: Method, inputs: PlanInputs): ScenarioSheet {
  const first: Scenario = {
    id: 'a',
    name: '',
    inputs,
    sessions: {},
    week: null,
    season: null,
    overrides: {},
    rulesOff: [],
  };
  return { method, formulas: {}, rows: [], rulesOff: [], scenarios: [first], reference: first.id };
}

/** The scenario with an id; the reference where there is none of that id. */
export function scenarioOf(sheet: ScenarioSheet, id: string): Scenario {
  const find = (wanted: string): Scenario | undefined => sheet.scenarios.find((each) => each.id === wanted);
  return find(id) ?? find(sheet.reference) ?? sheet.scenarios[0];
}

/** Puts a copy of a scenario behind it; `newScenarioId` says what the copy will be called. */
export function copyScenario(sheet: ScenarioSheet, id: string): ScenarioSheet {
  const { scenarios } = sheet;
  const index = scenarios.findIndex((each) => each.id === id);
  const original = scenarios[index];
  if (!original || scenarios.length >= mostScenarios) return sheet;
  const copy: Scenario = { ...original, id: newScenarioId(sheet), name: '' };
  return withScenarios(sheet, [...scenarios.slice(0, index + 1), copy, ...scenarios.slice(index + 1)]);
}

/** The id that the next scenario gets: the first letter not in use. */
export function newScenarioId({ scenarios }: ScenarioSheet): string {
  const letters = Array.from('abcdefghijklmnopqrstuvwxyz');
  return letters.find((letter) => scenarios.every(({ id }) => id !== letter)) ?? `n${String(scenarios.length)}`;
}

/** Takes a scenario away; where it was the reference, the first one left becomes it. */
export function removeScenario(sheet: ScenarioSheet, id: string): ScenarioSheet {
  const left = sheet.scenarios.filter((each) => each.id !== id);
  const [first] = left;
  if (!first || left.length === sheet.scenarios.length) return sheet;
  const next = withScenarios(sheet, left);
  return sheet.reference === id ? { ...next, reference: first.id } : next;
}

/** Moves a scenario by one place to the front (-1) or to the back (1). */
export function moveScenario(sheet: ScenarioSheet, id: string, by: -1 | 1): ScenarioSheet {
  const from = sheet.scenarios.findIndex((each) => each.id === id);
  const moved = sheet.scenarios[from];
  const to = from + by;
  if (!moved || to < 0 || to >= sheet.scenarios.length) return sheet;
  const others = sheet.scenarios.filter((each) => each !== moved);
  return withScenarios(sheet, [...others.slice(0, to), moved, ...others.slice(to)]);
}

/** Makes a scenario the one that the others are compared with. */
export function makeReference(sheet: ScenarioSheet, id: string): ScenarioSheet {
  return sheet.reference === id || sheet.scenarios.every((each) => each.id !== id)
    ? sheet
    : { ...sheet, reference: id };
}

/** Names a scenario. */
export function renameScenario(sheet: ScenarioSheet, id: string, name: string): ScenarioSheet {
  return changeScenario(sheet, id, (scenario) => (scenario.name === name ? scenario : { ...scenario, name }));
}

/** Sets inputs of a scenario; what was put over one of them is lifted, or its slider would not move anything. */
export function setInputs(sheet: ScenarioSheet, id: string, inputs: Partial<PlanInputs>): ScenarioSheet {
  const set = new Set(inputNames.filter((name) => inputs[name] !== undefined).map((name) => inputQuantities[name]));
  return changeScenario(sheet, id, (scenario) => {
    const kept = Object.entries(scenario.overrides).filter(([quantity]) => !set.has(quantity));
    const isLifted = kept.length < Object.keys(scenario.overrides).length;
    const overrides = isLifted ? Object.fromEntries(kept) : scenario.overrides;
    return { ...scenario, overrides, inputs: { ...scenario.inputs, ...inputs } };
  });
}

/** Sets the sessions picked in a scenario. */
export function setSessions(
  sheet: ScenarioSheet,
  id: string,
  sessions: Partial<ByCategory<readonly number[]>>,
): ScenarioSheet {
  return changeScenario(sheet, id, (scenario) => ({ ...scenario, sessions }));
}

/** Sets what is wanted of the days in a scenario, and in those that have no days yet. */
export function setWeek(sheet: ScenarioSheet, id: string, week: WeekRequest): ScenarioSheet {
  return withScenarios(
    sheet,
    sheet.scenarios.map((scenario) =>
      scenario.week === null || (scenario.id === id && !isSameWishes(scenario.week, week))
        ? { ...scenario, week }
        : scenario,
    ),
  );
}

/** Sets what is wanted of the season in a scenario, and in those that have none yet. */
export function setSeason(sheet: ScenarioSheet, id: string, season: SeasonRequest): ScenarioSheet {
  return withScenarios(
    sheet,
    sheet.scenarios.map((scenario) =>
      scenario.season === null || (scenario.id === id && !isSameWishes(scenario.season, season))
        ? { ...scenario, season }
        : scenario,
    ),
  );
}

/** Picks a way to cut a category's minutes in a scenario; null leaves it to the planner. */
export function pickSessions(
  sessions: Scenario['sessions'],
  category: CategoryId,
  picked: readonly number[] | null,
): Scenario['sessions'] {
  const { [category]: _, ...others } = sessions;
  return picked === null ? others : { ...others, [category]: picked };
}

/** Puts a formula (a number is one) over a quantity of a scenario; null lifts it. */
export function setOverride(
  sheet: ScenarioSheet,
  id: string,
  { quantity, formula }: { readonly quantity: string; readonly formula: string | null },
): ScenarioSheet {
  return changeScenario(sheet, id, (scenario) => {
    const overrides = withEntry(scenario.overrides, quantity, formula);
    return overrides === scenario.overrides ? scenario : { ...scenario, overrides };
  });
}

/** Switches a rule off, or on again, in a scenario; null as `id` does it in all. */
export function switchRule(sheet: ScenarioSheet, id: string | null, rule: string): ScenarioSheet {
  const switched = (rules: readonly string[]): readonly string[] =>
    rules.includes(rule) ? rules.filter((each) => each !== rule) : [...rules, rule];
  if (id === null) return { ...sheet, rulesOff: switched(sheet.rulesOff) };
  return changeScenario(sheet, id, (scenario) => ({ ...scenario, rulesOff: switched(scenario.rulesOff) }));
}

/** Edits the formula of a quantity for all scenarios; null goes back to the method's. */
export function setFormula(sheet: ScenarioSheet, quantity: string, formula: string | null): ScenarioSheet {
  const own = sheet.rows.find(({ id }) => id === quantity);
  if (own && formula !== null) return setRow(sheet, { ...own, formula });
  const formulas = withEntry(sheet.formulas, quantity, formula);
  return formulas === sheet.formulas ? sheet : { ...sheet, formulas };
}

/** Adds a row of a person's own, or replaces the one with the same id. */
export function setRow(sheet: ScenarioSheet, row: OwnRow): ScenarioSheet {
  const isNew = sheet.rows.every(({ id }) => id !== row.id);
  return { ...sheet, rows: isNew ? [...sheet.rows, row] : sheet.rows.map((each) => (each.id === row.id ? row : each)) };
}

/** Takes an own row away, and what was put over it. */
export function removeRow(sheet: ScenarioSheet, quantity: string): ScenarioSheet {
  const rows = sheet.rows.filter(({ id }) => id !== quantity);
  if (rows.length === sheet.rows.length) return sheet;
  const [first, ...others] = sheet.scenarios;
  const without = (scenario: Scenario): Scenario =>
    Object.hasOwn(scenario.overrides, quantity)
      ? { ...scenario, overrides: withEntry(scenario.overrides, quantity, null) }
      : scenario;
  return { ...sheet, rows, scenarios: [without(first), ...others.map(without)] };
}

function changeScenario(sheet: ScenarioSheet, id: string, change: (scenario: Scenario) => Scenario): ScenarioSheet {
  return withScenarios(
    sheet,
    sheet.scenarios.map((scenario) => (scenario.id === id ? change(scenario) : scenario)),
  );
}

/** The same sheet where nothing in it is another: then there is nothing to undo. */
function withScenarios(sheet: ScenarioSheet, [first, ...others]: readonly Scenario[]): ScenarioSheet {
  if (!first) return sheet;
  const isSame =
    sheet.scenarios.length === others.length + 1 &&
    [first, ...others].every((each, index) => each === sheet.scenarios[index]);
  return isSame ? sheet : { ...sheet, scenarios: [first, ...others] };
}

/** The same entries where the key has that text already, or nothing to be taken away. */
function withEntry(
  entries: Readonly<Record<string, string>>,
  key: string,
  text: string | null,
): Readonly<Record<string, string>> {
  if ((Object.hasOwn(entries, key) ? entries[key] : null) === text) return entries;
  const others = Object.entries(entries).filter(([each]) => each !== key);
  return Object.fromEntries(text === null ? others : [...others, [key, text]]);
}
