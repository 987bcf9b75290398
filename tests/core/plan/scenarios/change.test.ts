import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  copyScenario,
  makeReference,
  moveScenario,
  newScenarioId,
  newSheet,
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
import { readScenarios } from '../../../../src/plan/scenarios/read-scenarios.js';
import { writeScenarios } from '../../../../src/plan/scenarios/write-scenarios.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { acts, type Act } from './random-acts.js';
import { fourHours, frozen, sheetWith } from './sheets.js';

const one = frozen(newSheet(builtInMethod, fourHours));
const three = frozen(copyScenario(copyScenario(one, 'a'), 'b'));
const full = frozen(Array.from({ length: 5 }).reduce<ScenarioSheet>((sheet) => copyScenario(sheet, 'a'), one));
const idsOf = ({ scenarios }: ScenarioSheet): string => scenarios.map(({ id }) => id).join('');
const row = { id: 'own', name: 'Own', formula: 'slow_minutes' };
const rich = frozen(
  setFormula(setRow(setOverride(three, 'b', { quantity: 'slow_minutes', formula: '60' }), row), 'running_share', '0.5'),
);

describe('what cannot be done gives the same sheet', () => {
  test.each<[what: string, sheet: ScenarioSheet, act: Act]>([
    ['a seventh scenario', full, (sheet) => copyScenario(sheet, 'a')],
    ['a copy of none', one, (sheet) => copyScenario(sheet, 'z')],
    ['the last one removed', one, (sheet) => removeScenario(sheet, 'a')],
    ['none removed', three, (sheet) => removeScenario(sheet, 'z')],
    ['the first one moved to the front', three, (sheet) => moveScenario(sheet, 'a', -1)],
    ['the last one moved to the back', three, (sheet) => moveScenario(sheet, 'c', 1)],
    ['none moved', three, (sheet) => moveScenario(sheet, 'z', 1)],
    ['the reference made the reference', three, (sheet) => makeReference(sheet, 'a')],
    ['none made the reference', three, (sheet) => makeReference(sheet, 'z')],
    ['the same name', three, (sheet) => renameScenario(sheet, 'b', '')],
    ['none named', three, (sheet) => renameScenario(sheet, 'z', 'Z')],
    ['inputs of none', three, (sheet) => setInputs(sheet, 'z', { hours: 5 })],
    [
      'a value put over a quantity of none',
      three,
      (sheet) => setOverride(sheet, 'z', { quantity: 'own', formula: '1' }),
    ],
    [
      'a value put over it again',
      rich,
      (sheet) => setOverride(sheet, 'b', { quantity: 'slow_minutes', formula: '60' }),
    ],
    ['nothing lifted', rich, (sheet) => setOverride(sheet, 'a', { quantity: 'slow_minutes', formula: null })],
    [
      'a name of every object lifted',
      rich,
      (sheet) => setOverride(sheet, 'a', { quantity: 'toString', formula: null }),
    ],
    ['a rule of none switched', three, (sheet) => switchRule(sheet, 'z', 'strength-cap')],
    ['the same formula for all', rich, (sheet) => setFormula(sheet, 'running_share', '0.5')],
    ['the formula of the method again', rich, (sheet) => setFormula(sheet, 'weekly_minutes', null)],
    ['no row removed', rich, (sheet) => removeRow(sheet, 'nothing')],
  ])('%s', (_, sheet, act) => {
    expect(act(sheet)).toBe(sheet);
  });
});

describe('columns', () => {
  test('a copy stands behind its original, under the first letter that is free, without its name', () => {
    const named = renameScenario(rich, 'b', 'Second');
    const copied = copyScenario(named, 'b');
    expect(idsOf(copied)).toBe('abdc');
    expect(scenarioOf(copied, 'd')).toEqual({ ...scenarioOf(named, 'b'), id: 'd', name: '' });
    expect(newScenarioId(removeScenario(copied, 'a'))).toBe('a');
    expect(full.scenarios).toHaveLength(mostScenarios);
    expect(idsOf(full)).toBe('afedcb');
  });

  test('move by one place', () => {
    expect(idsOf(moveScenario(three, 'c', -1))).toBe('acb');
    expect(idsOf(moveScenario(three, 'a', 1))).toBe('bac');
    expect(moveScenario(three, 'a', 1).scenarios[1]).toBe(three.scenarios[0]);
  });

  test('the first one left becomes the reference where that goes', () => {
    expect(removeScenario(three, 'a')).toMatchObject({ reference: 'b' });
    expect(removeScenario(makeReference(three, 'b'), 'b')).toMatchObject({ reference: 'a' });
    expect(removeScenario(makeReference(three, 'b'), 'a')).toMatchObject({ reference: 'b' });
  });

  test('scenarioOf(sheet, id) is the reference where there is none of that id', () => {
    const sheet = makeReference(three, 'b');
    expect(scenarioOf(sheet, 'c').id).toBe('c');
    expect(scenarioOf(sheet, 'z').id).toBe('b');
    expect(scenarioOf({ ...sheet, reference: 'y' }, 'z').id).toBe('a');
  });
});

describe('inputs', () => {
  test('are set, the others stay', () => {
    expect(scenarioOf(setInputs(three, 'b', { hours: 5 }), 'b').inputs).toEqual({ ...fourHours, hours: 5 });
  });

  test('lift what was put over those that are set, and nothing else', () => {
    const sheet = sheetWith({ weekly_hours: 6, season_phase: 'phase_taper', slow_minutes: 60 });
    expect(setInputs(sheet, 'a', { hours: 5 }).scenarios[0].overrides).toEqual({
      season_phase: 'phase_taper',
      slow_minutes: '60',
    });
    const { overrides } = sheet.scenarios[0];
    expect(setInputs(sheet, 'a', { level: 'elite' }).scenarios[0].overrides).toBe(overrides);
  });
});

describe('rules', () => {
  test('are switched off and on, in one scenario or in all', () => {
    const off = switchRule(three, 'b', 'strength-cap');
    expect(off.scenarios.map(({ rulesOff }) => rulesOff)).toEqual([[], ['strength-cap'], []]);
    expect(switchRule(off, 'b', 'strength-cap')).toEqual(three);
    const allOff = switchRule(switchRule(three, null, 'few-hours'), null, 'strength-cap');
    expect(allOff.rulesOff).toEqual(['few-hours', 'strength-cap']);
    expect(switchRule(allOff, null, 'few-hours').rulesOff).toEqual(['strength-cap']);
  });
});

describe('rows and formulas', () => {
  test('a row is added, replaced, edited by its formula, and removed with what was put over it', () => {
    const other = { ...row, formula: 'tempo_minutes' };
    expect(setRow(three, row).rows).toEqual([row]);
    expect(setRow(rich, other).rows).toEqual([other]);
    const edited = setFormula(rich, 'own', 'tempo_minutes');
    expect([edited.rows, edited.formulas]).toEqual([[other], rich.formulas]);
    const over = setOverride(rich, 'b', { quantity: 'own', formula: '5' });
    expect(removeRow(over, 'own')).toEqual({ ...rich, rows: [] });
    expect(removeRow(over, 'own').scenarios[0]).toBe(over.scenarios[0]);
  });

  test('a formula for all is taken back', () => {
    expect(setFormula(rich, 'running_share', null).formulas).toEqual({});
  });

  test('sessions are picked and left to the planner again', () => {
    const picked = setSessions(three, 'c', pickSessions({ slow: [70] }, 'strength', [30, 45]));
    expect(scenarioOf(picked, 'c').sessions).toEqual({ slow: [70], strength: [30, 45] });
    expect(pickSessions(scenarioOf(picked, 'c').sessions, 'slow', null)).toEqual({ strength: [30, 45] });
  });
});

describe('any acts', () => {
  test('never change the sheet they got, and leave one that can be written and read again', () => {
    fc.assert(
      fc.property(fc.array(acts, { minLength: 1, maxLength: 30 }), (some) => {
        const last = some.reduce((sheet, act) => frozen(act(sheet)), one);
        expect(last.scenarios.length).toBeLessThanOrEqual(mostScenarios);
        expect(new Set(last.scenarios.map(({ id }) => id)).size).toBe(last.scenarios.length);
        expect(idsOf(last)).toContain(last.reference);
        // What is put over a row that is not there waits for it; no document has that.
        const isThere = (id: string): boolean => !id.startsWith('own_') || last.rows.some((each) => each.id === id);
        fc.pre(last.scenarios.every(({ overrides }) => Object.keys(overrides).every(isThere)));
        expect(valueOf(readScenarios(JSON.parse(JSON.stringify(writeScenarios(last))), builtInMethod))).toEqual(last);
      }),
      runs(150, 10_000),
    );
  });
});
