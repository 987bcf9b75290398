import { describe, expect, test } from 'vitest';
import { readSessions, type ReadSessions } from '../../../../src/exchange/record/read-sessions.js';
import type { Mapping } from '../../../../src/exchange/record/mapping.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { problemSentence } from '../../../../src/words/problem-sentence.js';
import { byName, tableOf } from './sample.js';

const read = (mapping: Partial<Mapping>, ...lines: readonly string[]): ReadSessions =>
  readSessions(tableOf(['Date;Kind;Long;Effort', ...lines].join('\n')), { ...byName, ...mapping });

describe('readSessions(table, mapping)', () => {
  test('reads each row as the mapping says', () => {
    const mapping = { columns: { date: 3, category: 2, minutes: 1, effort: 0 }, dates: 'dmy', times: 'ms' } as const;
    expect(read(mapping, '7,5;45:30;Easy RUN;30.11.2026 18:05', '', ';1:05:30; strength ;2026-12-01')).toEqual({
      read: [
        { line: 2, session: { date: '2026-11-30', category: 'slow', minutes: 46, effort: 7.5 } },
        { line: 4, session: { date: '2026-12-01', category: 'strength', minutes: 66, effort: null } },
      ],
      unread: [],
      unusedColumns: [],
    });
  });

  const dates = { least: '1900-01-01', most: '2199-12-31' };
  test.each([
    [';slow;45;7', 'Date', '', 'missing', {}],
    ['30.11.2026;slow;45;7', 'Date', '30.11.2026', 'no-date', dates],
    ['2026-02-29;slow;45;7', 'Date', '2026-02-29', 'no-date', dates],
    ['2026-11-30; ;45;7', 'Kind', '', 'missing', {}],
    ['2026-11-30;swim;45;7', 'Kind', 'swim', 'not-one-of', { choices: categoryIds }],
    ['2026-11-30;rest;45;7', 'Kind', 'rest', 'not-one-of', { choices: categoryIds }],
    ['2026-11-30;__proto__;45;7', 'Kind', '__proto__', 'not-one-of', { choices: categoryIds }],
    ['2026-11-30;constructor;45;7', 'Kind', 'constructor', 'not-one-of', { choices: categoryIds }],
    ['2026-11-30;slow', 'Long', '', 'missing', {}],
    ['2026-11-30;slow;long;7', 'Long', 'long', 'wrong-type', { expected: 'duration' }],
    ['2026-11-30;slow;45,5;7', 'Long', '45,5', 'not-a-step', { step: 1 }],
    ['2026-11-30;slow;0.5;7', 'Long', '0.5', 'not-a-step', { step: 1 }],
    ['2026-11-30;slow;45.5 min;7', 'Long', '45.5 min', 'not-a-step', { step: 1 }],
    ['2026-11-30;slow;0;7', 'Long', '0', 'out-of-range', { least: 1, most: 1440 }],
    ['2026-11-30;slow;-5;7', 'Long', '-5', 'out-of-range', { least: 1, most: 1440 }],
    ['2026-11-30;slow;0:00:29;7', 'Long', '0:00:29', 'out-of-range', { least: 1, most: 1440 }],
    ['2026-11-30;slow;1441;7', 'Long', '1441', 'out-of-range', { least: 1, most: 1440 }],
    ['2026-11-30;slow;1e999;7', 'Long', '1e999', 'out-of-range', { least: 1, most: 1440 }],
    ['2026-11-30;slow;45;hard', 'Effort', 'hard', 'wrong-type', { expected: 'number' }],
    ['2026-11-30;slow;45;10,1', 'Effort', '10,1', 'out-of-range', { least: 0, most: 10 }],
    ['2026-11-30;slow;45;-0,1', 'Effort', '-0,1', 'out-of-range', { least: 0, most: 10 }],
  ])('%j says why it is unread', (line, path, value, code, allowed) => {
    expect(read({}, line)).toEqual({
      read: [],
      unread: [{ line: 2, problems: [{ path, value, code, allowed }] }],
      unusedColumns: [],
    });
  });

  test.each([
    ['2026-11-30;slow;1;0', 1, 0],
    ['2026-11-30;slow;1440;10', 1440, 10],
    ['2026-11-30;slow;24:00;-0', 1440, 0],
  ])('%j is just within the limits', (line, minutes, effort) => {
    expect(read({}, line).read).toEqual([
      { line: 2, session: { date: '2026-11-30', category: 'slow', minutes, effort } },
    ]);
  });

  test('tells everything that is wrong with a row', () => {
    const { unread } = read({}, 'x;y;z;w');
    expect(unread[0]?.problems.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'Date no-date',
      'Kind not-one-of',
      'Long wrong-type',
      'Effort wrong-type',
    ]);
  });

  test('names the field where no column has it, or its column has no title', () => {
    const table = tableOf('2026-11-30,slow,x,1');
    const columns = { date: null, category: 1, minutes: 2, effort: null };
    expect(readSessions(table, { ...byName, columns }).unread).toEqual([
      {
        line: 1,
        problems: [
          { path: 'date', value: '', code: 'missing', allowed: {} },
          { path: 'minutes', value: 'x', code: 'wrong-type', allowed: { expected: 'duration' } },
        ],
      },
    ]);
  });

  test('leaves the effort open where no column has it', () => {
    const { read: sessions } = read({ columns: { ...byName.columns, effort: null } }, '2026-11-30;slow;45;hard');
    expect(sessions[0]?.session.effort).toBeNull();
  });

  test('names the columns that no field has', () => {
    const table = tableOf('Date;Kind;Long;;Note\n2026-11-30;slow;45;x;y');
    const columns = { ...byName.columns, effort: null };
    expect(readSessions(table, { ...byName, columns }).unusedColumns).toEqual(['#4', 'Note']);
  });

  test('takes kinds that bear the names of what every object has', () => {
    const kinds: Mapping['kinds'] = Object.fromEntries([
      ['__proto__', 'tempo'],
      ['constructor', 'cross'],
    ]);
    const { read: sessions } = read({ kinds }, '2026-11-30;__proto__;45;', '2026-11-30;Constructor;45;');
    expect(sessions.map(({ session }) => session.category)).toEqual(['tempo', 'cross']);
  });

  test('has problems that there are words for', async () => {
    const words = await loadWords('de');
    const lines = [
      'x;swim;long;hard',
      '2026-11-30;slow;45,5;',
      '2026-11-30;slow;0;11',
      ';;;1',
      '2026-11-30;slow;1e999;1',
    ];
    const sentences = read({}, ...lines).unread.flatMap(({ problems }) =>
      problems.map((problem) => problemSentence(words, problem)),
    );
    expect(sentences).toEqual([
      'Date ist "x"; erlaubt: ein Tag des Kalenders wie 2027-04-11, von 1900-01-01 bis 2199-12-31.',
      'Kind ist "swim"; erlaubt: slow, tempo, intervals, cross oder strength.',
      'Long ist "long"; nötig ist eine Dauer wie 45, 45 min oder 1:05.',
      'Effort ist "hard"; nötig ist eine Zahl.',
      'Long ist "45,5"; erlaubt: Schritte von 1.',
      'Long ist "0"; erlaubt: 1 bis 1.440.',
      'Effort ist "11"; erlaubt: 0 bis 10.',
      'Date fehlt.',
      'Kind fehlt.',
      'Long fehlt.',
      'Long ist "1e999"; erlaubt: 1 bis 1.440.',
    ]);
  });
});
