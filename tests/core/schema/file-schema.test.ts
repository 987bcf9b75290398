import { describe, expect, test } from 'vitest';
import { problemsIn, smallestFile, wholeFile } from '../plan/file/file-documents.js';
import { wholeDocument } from '../plan/sheet-documents.js';
import { validator } from './published.js';

const isFile = validator('file');
const whole = (changes: object): unknown => JSON.parse(JSON.stringify({ ...wholeFile(), ...changes }));
const sheet = (changes: object): object => ({ sheet: { ...wholeDocument(), ...changes } });
const season = (changes: object): object => sheet({ scenarios: [{ id: 'a', season: changes }], reference: 'a' });
const session = { date: '2026-11-23', category: 'slow', minutes: 45 };

describe('file.schema.json describes a plan file', () => {
  test.each<readonly [string, unknown]>([
    ['with every field', wholeFile()],
    ['of the sheet alone', smallestFile()],
    ['in which nothing is told', whole({ running: null, strength: null, checks: null, record: [], handout: {} })],
    ['in which it is told that nothing is known', whole({ running: { race: null, age: null, today: null } })],
    ['with the most own weeks that there are', whole({ checks: { weeks: Array(12).fill([20_000]) } })],
    ['with a race without a day', whole({ running: { race: { metres: 5000, seconds: 1500 } } })],
    ['with a season of its date alone', whole(season({ date: '2027-04-11' }))],
    [
      'with phases and weeks set by hand that say the least',
      whole(season({ date: '2027-04-11', phases: [{ phase: 'base' }], byHand: [{ start: '2027-02-15' }] })),
    ],
    [
      'with a scenario that has neither days nor a season',
      whole(sheet({ scenarios: [{ id: 'b', week: null, season: null }] })),
    ],
  ])('%s', (_, document) => {
    isFile(document);
    expect(isFile.errors).toBeNull();
  });
});

describe('file.schema.json refuses, as the reader does,', () => {
  test.each<readonly [object]>([
    [{ format: 'weekwright-sheet' }],
    [{ version: 2 }],
    [{ colour: 'red' }],
    [{ sheet: undefined }],
    [{ name: 'x'.repeat(61) }],
    [{ name: '🏃'.repeat(61) }],
    [sheet({ rulesOff: ['🏃'.repeat(41)] })],
    [sheet({ scenarios: [{ name: '🏃'.repeat(61) }] })],
    [{ handout: { note: 'x'.repeat(1001) } }],
    [{ handout: { note: '🏃'.repeat(1001) } }],
    [{ handout: [] }],
    [{ running: [] }],
    [{ running: { age: 4 } }],
    [{ running: { race: { metres: 700, seconds: 200 } } }],
    [{ running: { race: { metres: 5000 } } }],
    [{ running: { unit: null } }],
    [{ strength: { equipment: ['rope'] } }],
    [{ strength: { equipment: null } }],
    [{ strength: { lifted: [{ movement: 'goblet-squat', kilograms: 501, repetitions: 5 }] } }],
    [{ checks: { weeks: [[1, 2, 3]] } }],
    [{ checks: { weeks: [[20_001]] } }],
    [{ checks: { weeks: Array(13).fill([1]) } }],
    [{ checks: { efforts: { slow: 11 } } }],
    [{ checks: { answers: ['symptoms'] } }],
    [{ checks: { answers: [] } }],
    [{ record: Array(5001).fill(session) }],
    [{ record: [{ ...session, minutes: 1441 }] }],
    [{ record: [{ ...session, effort: 11 }] }],
    [{ record: [{ ...session, date: '23.11.2026' }] }],
    [{ record: [{ ...session, note: '' }] }],
    [sheet({ scenarios: [] })],
    [sheet({ scenarios: Array(7).fill({}) })],
    [sheet({ rows: Array(51).fill({ id: 'a', formula: '1' }) })],
    [sheet({ rulesOff: Array(101).fill('few-hours') })],
    [sheet({ formulas: { constructor: '1' } })],
    [sheet({ formulas: { prototype: '1' } })],
    [sheet({ formulas: { Strength: '1' } })],
    [sheet({ formulas: { strength_minutes: 'x'.repeat(2001) } })],
    [sheet({ formulas: Object.fromEntries(Array.from({ length: 201 }, (_, at) => [`a${at}`, '1'])) })],
    [season({ date: '2027-04-11', weeks: 105 })],
    [season({ date: '2027-04-11', phases: [] })],
    [season({ date: '2027-04-11', easierDrop: 0.96 })],
    [season({ date: '2027-04-11', byHand: [{ hours: 3 }] })],
    [season({ date: '11.4.2027' })],
  ])('%j', (changes) => {
    const document = whole(changes);
    expect(isFile(document)).toBe(false);
    expect(problemsIn(document)).not.toEqual([]);
  });

  test('a key that no record may have', () => {
    const hostile: unknown = JSON.parse('{ "__proto__": "1" }');
    const document = { ...wholeFile(), sheet: { ...wholeDocument(), formulas: hostile } };
    expect([isFile(document), problemsIn(document).map(({ path }) => path)]).toEqual([
      false,
      ['sheet.formulas.__proto__'],
    ]);
  });
});

describe('file.schema.json cannot say', () => {
  test.each<readonly [changes: object, problem: string]>([
    [sheet({ rulesOff: ['🏃'.repeat(40)] }), 'sheet.rulesOff[0]: unknown-name'],
    [{ onShow: 'c' }, 'onShow: not-one-of'],
    [{ record: [{ ...session, date: '2026-02-30' }] }, 'record[0].date: no-date'],
    [{ running: { race: { metres: 5000, seconds: 60 } } }, 'running.race.seconds: out-of-range'],
    [{ strength: { equipment: ['band', 'band'] } }, 'strength.equipment[1]: duplicate'],
    [{ strength: { forms: { hinge: 'plank' } } }, 'strength.forms.hinge: not-one-of'],
    [sheet({ reference: 'c' }), 'sheet.reference: unknown-name'],
    [season({}), 'sheet.scenarios[0].season.date: missing'],
  ])('%j', (changes, problem) => {
    const document = whole(changes);
    expect(isFile(document)).toBe(true);
    expect(problemsIn(document).map(({ path, code }) => `${path}: ${code}`)).toContain(problem);
  });
});
