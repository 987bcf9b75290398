import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newSheet, setRow } from '../../../../src/plan/scenarios/change.js';
import { readScenarios } from '../../../../src/plan/scenarios/read-scenarios.js';
import { newRowId } from '../../../../src/plan/scenarios/row-id.js';
import { writeScenarios } from '../../../../src/plan/scenarios/write-scenarios.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { fourHours } from './sheets.js';

const sheet = newSheet(builtInMethod, fourHours);
const withRows = (...ids: readonly string[]) =>
  ids.reduce((each, id) => setRow(each, { id, name: id, formula: '1' }), sheet);

describe('newRowId(sheet, name)', () => {
  test.each([
    ['Hard minutes', 'hard_minutes'],
    ['  Hard -- minutes!  ', 'hard_minutes'],
    ['Läufe am Berg', 'laufe_am_berg'],
    ['Crème brûlée', 'creme_brulee'],
    ['Straße', 'stra_e'],
    ['HARD', 'hard'],
    ['3 sessions', 'row_3_sessions'],
    ['100 %', 'row_100'],
    ['', 'row'],
    ['???', 'row'],
    ['坂道', 'row'],
    ['_a_', 'a'],
    ['a'.repeat(60), 'a'.repeat(36)],
    [`${'a'.repeat(35)} b`, 'a'.repeat(35)],
  ])('"%s" is %s', (name, id) => {
    expect(newRowId(sheet, name)).toBe(id);
  });

  test.each(['Slow minutes', 'weekly hours', 'Phase build', 'min', 'Value', 'mod', 'true', 'Constructor', 'prototype'])(
    '"%s" is taken, and gets a number',
    (name) => {
      expect(newRowId(sheet, name)).toBe(`${name.toLowerCase().replace(' ', '_')}_2`);
    },
  );

  test('counts on past the rows there are', () => {
    expect(newRowId(withRows('own'), 'Own')).toBe('own_2');
    expect(newRowId(withRows('own', 'own_2', 'own_3'), 'Own')).toBe('own_4');
    expect(newRowId(withRows('row'), '?')).toBe('row_2');
  });

  test('is an id that a document of the sheet may have', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 60 }), { minLength: 1, maxLength: 8 }), (names) => {
        const full = names.reduce(
          (each, name) => setRow(each, { id: newRowId(each, name), name, formula: 'weekly_hours' }),
          sheet,
        );
        expect(full.rows).toHaveLength(names.length);
        expect(valueOf(readScenarios(writeScenarios(full), builtInMethod))).toEqual(full);
      }),
      runs(30, 20_000),
    );
  });
});
