import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { readShape } from '../../training/method/read-shape.js';
import { readRequest } from '../read-request.js';
import { checkWishes } from '../week/check-wishes.js';
import { readSeason } from '../season/read-season.js';
import { checkScenarios } from './check-scenarios.js';
import type { Scenario, ScenarioSheet } from './document.js';
import { sheetSchema, type ScenarioShape } from './scenario-schema.js';

/**
 * Reads a what-if sheet from outside, as `writeScenarios` makes it: its shape, then what goes across its fields. The
 * texts of formulas are not compiled here.
 *
 * What may be left out: empty parts; inputs, which are the method's starting values then; the id of a scenario, which is
 * `scenario-1` for the first one and so on; the reference, which is the first scenario.
 *
 * @param method the method in use; a sheet made with another is refused.
 * @returns the sheet, or every problem of the first stage that has one: version, shape, method, the rest.
 */
export function readScenarios(document: unknown, method: Method): Outcome<ScenarioSheet> {
  const newer = newerVersion(document);
  if (newer) return { ok: false, problems: [newer] };
  const shape = readShape(sheetSchema, document);
  if (!shape.ok) return shape;
  if (shape.value.method !== method.id) return { ok: false, problems: [otherMethod(shape.value.method, method)] };
  return sheetOf(shape.value, method);
}

/** A sheet of a later version may have fields that are not known here: its version is all there is to say. */
function newerVersion(document: unknown): Problem | undefined {
  if (typeof document !== 'object' || document === null) return undefined;
  if (!('format' in document) || document.format !== 'weekwright-sheet' || !('version' in document)) return undefined;
  const { version: value } = document;
  if (typeof value !== 'number' || !Number.isInteger(value) || value <= 1) return undefined;
  return { path: 'version', value, code: 'newer-version', allowed: { most: 1 } };
}

function otherMethod(value: string, { id }: Method): Problem {
  return { path: 'method', value, code: 'other-method', allowed: { method: id } };
}

function sheetOf(shape: ScenarioShape, method: Method): Outcome<ScenarioSheet> {
  const read = shape.scenarios.map((_, index) => readScenario(shape, index, method));
  const scenarios = read.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const { formulas, rows, rulesOff } = shape;
  const ids = shape.scenarios.map(({ id }, index) => id ?? idOfPlace(index));
  const reference = shape.reference ?? ids[0] ?? '';
  const problems = [
    ...read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems)),
    ...checkScenarios({ ...shape, ids, reference }, method),
  ];
  const [first, ...others] = scenarios;
  if (problems.length > 0 || !first) return { ok: false, problems };
  return { ok: true, value: { method, formulas, rows, rulesOff, scenarios: [first, ...others], reference } };
}

const idOfPlace = (index: number): string => `scenario-${index + 1}`;

function readScenario({ scenarios }: ScenarioShape, index: number, method: Method): Outcome<Scenario> {
  const scenario = scenarios[index];
  if (!scenario) throw new RangeError(`there is no scenario ${index}`);
  const { id = idOfPlace(index), name, inputs, sessions, week, season, overrides, rulesOff } = scenario;
  const request = readRequest({ ...inputs, sessions }, method);
  if (!request.ok) return { ok: false, problems: request.problems.map((problem) => within(index, 'inputs', problem)) };
  const problems = week ? checkWishes(week, method.rounding.step) : [];
  if (problems.length > 0) return { ok: false, problems: problems.map((problem) => within(index, 'week', problem)) };
  const { inputs: whole, picks } = request.value;
  const carried = season && readSeason(season, { method, inputs: whole });
  if (carried?.ok === false)
    return { ok: false, problems: carried.problems.map((problem) => inScenario(index, problem)) };
  return { ok: true, value: { id, name, inputs: whole, sessions: picks, week, season, overrides, rulesOff } };
}

/** The sessions have passed the schema: what a request can still have wrong is an input out of the method's range. */
function within(index: number, part: 'inputs' | 'week', problem: Problem): Problem {
  return inScenario(index, { ...problem, path: `${part}.${problem.path}` });
}

const inScenario = (index: number, problem: Problem): Problem => ({
  ...problem,
  path: `scenarios[${index}].${problem.path}`,
});
