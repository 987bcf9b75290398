import fc from 'fast-check';
import {
  copyScenario,
  makeReference,
  moveScenario,
  pickSessions,
  removeRow,
  removeScenario,
  renameScenario,
  scenarioOf,
  setFormula,
  setInputs,
  setOverride,
  setRow,
  setSessions,
  switchRule,
} from '../../../../src/plan/scenarios/change.js';
import { mostScenarios, type ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { anyAthletes } from '../../../reference/athletes.js';

/** Something that a person does to a sheet. */
export type Act = (sheet: ScenarioSheet) => ScenarioSheet;
/** An act on one scenario. */
export type ScenarioAct = (sheet: ScenarioSheet, id: string) => ScenarioSheet;

const overridden = fc.constantFrom(
  'weekly_hours',
  'season_phase',
  'strength_cap',
  'weekly_minutes',
  'in_season_slow_share',
  'split_taper',
  'slow_share',
  'strength_share',
  'slow_minutes',
  'strength_minutes',
  'planned_minutes',
  'running_share',
  'slow_rounded',
  'strength_rounded',
  'total_rounded',
  'slow_shortest',
  'strength_longest',
  'own_a',
);
/** Good ones and such as fail: out of range, too much, a circle, a division by zero, a name that is nowhere. */
const formulas = fc.constantFrom(
  ...['0', '1', '0.2', '3', '5', '60', '75', '90', '-5', '400', 'value', 'value * 1.1', 'value + 5', 'value / 2'],
  ...['weekly_hours * 12', 'strength_cap / 2', 'tempo_minutes', 'slow_minutes', 'slow_rounded', '1 / 0', 'nowhere'],
);
const ruleIds = fc.constantFrom(...builtInMethod.rules.map(({ id }) => id));
const picks = fc.option(fc.array(fc.constantFrom(15, 30, 45, 60), { minLength: 1, maxLength: 4 }), { nil: null });

/** Acts that touch one scenario and nothing else. */
export const scenarioActs: fc.Arbitrary<ScenarioAct> = fc.oneof(
  anyAthletes.map(
    (inputs): ScenarioAct =>
      (sheet, id) =>
        setInputs(sheet, id, inputs),
  ),
  fc.double({ min: 0.5, max: 20, noNaN: true }).map(
    (hours): ScenarioAct =>
      (sheet, id) =>
        setInputs(sheet, id, { hours }),
  ),
  fc.record({ quantity: overridden, formula: fc.option(formulas, { nil: null, freq: 4 }) }).map(
    (entry): ScenarioAct =>
      (sheet, id) =>
        setOverride(sheet, id, entry),
  ),
  ruleIds.map(
    (rule): ScenarioAct =>
      (sheet, id) =>
        switchRule(sheet, id, rule),
  ),
  fc.string({ maxLength: 8 }).map(
    (name): ScenarioAct =>
      (sheet, id) =>
        renameScenario(sheet, id, name),
  ),
  fc.record({ category: fc.constantFrom(...categoryIds), picked: picks }).map(
    ({ category, picked }): ScenarioAct =>
      (sheet, id) =>
        setSessions(sheet, id, pickSessions(scenarioOf(sheet, id).sessions, category, picked)),
  ),
);

const columnActs: fc.Arbitrary<ScenarioAct> = fc.constantFrom<ScenarioAct>(
  copyScenario,
  copyScenario,
  removeScenario,
  makeReference,
  (sheet, id) => moveScenario(sheet, id, -1),
  (sheet, id) => moveScenario(sheet, id, 1),
);

const commonActs: fc.Arbitrary<Act> = fc.oneof(
  ruleIds.map(
    (rule): Act =>
      (sheet) =>
        switchRule(sheet, null, rule),
  ),
  fc
    .record({
      quantity: fc.constantFrom('weekly_minutes', 'strength_minutes', 'running_share', 'own_a'),
      formula: fc.option(fc.constantFrom('weekly_hours * 50', 'weekly_hours * 15', '0.5', 'own_a'), { nil: null }),
    })
    .map(
      ({ quantity, formula }): Act =>
        (sheet) =>
          quantity === 'own_a' && sheet.rows.every(({ id }) => id !== quantity)
            ? sheet
            : setFormula(sheet, quantity, formula),
    ),
  fc
    .record({ id: fc.constantFrom('own_a', 'own_b'), formula: fc.constantFrom('slow_minutes * 2', 'own_b + 1', '7') })
    .map(
      (row): Act =>
        (sheet) =>
          setRow(sheet, { ...row, name: 'A row' }),
    ),
  fc.constantFrom<Act>(
    (sheet) => removeRow(sheet, 'own_a'),
    (sheet) => removeRow(sheet, 'own_b'),
  ),
);

/** Any act. */
export const acts: fc.Arbitrary<Act> = fc.oneof(
  { weight: 5, arbitrary: placed(scenarioActs) },
  { weight: 3, arbitrary: placed(columnActs) },
  { weight: 2, arbitrary: commonActs },
);

/** On the scenario at a place; where there is none, on the last one. */
function placed(some: fc.Arbitrary<ScenarioAct>): fc.Arbitrary<Act> {
  return fc.record({ act: some, on: fc.nat({ max: mostScenarios - 1 }) }).map(
    ({ act, on }): Act =>
      (sheet) =>
        act(sheet, (sheet.scenarios[on] ?? sheet.scenarios.at(-1) ?? sheet.scenarios[0]).id),
  );
}
