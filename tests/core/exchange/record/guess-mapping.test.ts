import { describe, expect, test } from 'vitest';
import { guessMapping } from '../../../../src/exchange/record/guess-mapping.js';
import { kindKey, kindsIn } from '../../../../src/exchange/record/kinds-in.js';
import { tableOf, vocabulary } from './sample.js';

const guess = (...lines: readonly string[]): ReturnType<typeof guessMapping> =>
  guessMapping(tableOf(lines.join('\n')), vocabulary);

describe('the columns', () => {
  test.each([
    ['by whole words', 'Date;Kind;Minutes;Effort', [0, 1, 2, 3]],
    ['in any case and order', 'ANSTRENGUNG; dauer ;art;DATUM', [3, 2, 1, 0]],
    ['by a word among others', 'Effort (0-10);Session type;Duration [min];Training day', [3, 1, 2, 0]],
    ['by a whole word before one among others', 'Day of week;Date;Kind;Kind of shoes;Duration', [1, 2, 4, null]],
    ['not by a part of a word', 'Dates;Kindness;Minutest;Effortless', [null, null, null, null]],
    ['the first of equal ones', 'Date;Date;Minutes;Minutes', [0, null, 2, null]],
  ])('are told by titles: %s', (_, titles, [date, category, minutes, effort]) => {
    expect(guess(titles).columns).toEqual({ date, category, minutes, effort });
  });

  test.each([
    ['no titles', ['2026-11-30,easy,45,7', '2026-12-01,Kraft,30,5'], [0, 1, 2, 3]],
    ['no titles, another order', ['7,45,easy,2026-11-30', '5,30,Kraft,2026-12-01'], [3, 2, 1, 0]],
    ['unknown titles', ['quand,quoi,combien', '2026-11-30,easy,0:45', '2026-12-01,x,0:50'], [0, 1, 2, null]],
    ['a clock beside numbers', ['a,b,c', '2026-11-30,12,0:45', '2026-12-01,14,0:50'], [0, null, 2, null]],
    ['numbers with and without titles', ['Date,,x,Minutes', '2026-11-30,7,8,45', '2026-12-01,5,6,30'], [0, null, 3, 1]],
    ['an unknown title of small numbers', ['Date,x,Minutes', '2026-11-30,8,45', '2026-12-01,6,30'], [0, null, 2, null]],
    ['too few dates', ['a,b', '2026-11-30,x', '?,x', '?,x'], [null, null, null, null]],
    ['nothing below the titles', ['x,y,z'], [null, null, null, null]],
  ])('are told by cells: %s', (_, lines, [date, category, minutes, effort]) => {
    expect(guess(...lines).columns).toEqual({ date, category, minutes, effort });
  });
});

describe('the order of dates', () => {
  test.each([
    [['2026-11-30'], 'ymd'],
    [['30.11.2026'], 'dmy'],
    [['30/11/2026', '01/02/2026'], 'dmy'],
    [['11/30/2026', '01/02/2026'], 'mdy'],
    [['01.02.2026'], 'dmy'],
    [['1.2.26', '3.4.26'], 'dmy'],
    [['01/02/2026'], 'ymd'],
    [['01/02/2026', '2026-11-30'], 'ymd'],
    [['11/30/2026', '11/29/2026', 'sick', '31/12/2026'], 'mdy'],
    [['sick'], 'ymd'],
    [[], 'ymd'],
  ])('of %j is %s', (cells, order) => {
    expect(guess('Date;Minutes', ...cells.map((cell) => `${cell};x`)).dates).toBe(order);
  });
});

describe('what times mean', () => {
  test.each([
    [['45', '30'], 'minutes'],
    [['1', '2'], 'minutes'],
    [['45 min', '1 h'], 'minutes'],
    [['1.5', '2', '0,75'], 'hours'],
    [['0:45', '1:05'], 'hms'],
    [['0:45:30', '1:05:00'], 'hms'],
    [['45:30', '1:05:30'], 'ms'],
    [['12:30', '20:15'], 'ms'],
    [['45', '1:05'], 'minutes'],
    [['1.5', '0.75', '1:05'], 'hours'],
    [['900', '45', '1:05'], 'minutes'],
    [['x'], 'minutes'],
    [[], 'minutes'],
  ])('in %j is %s', (cells, times) => {
    expect(guess('Date;Minutes', ...cells.map((cell) => `x;${cell}`)).times).toBe(times);
  });
});

describe('the kinds', () => {
  const kindsOf = (...cells: readonly string[]): unknown =>
    guess('Minutes;Kind', ...cells.map((cell) => `45;${cell}`)).kinds;

  test('are told by words, by ids, by a word among others, and left where none or several tell', () => {
    expect(kindsOf('Easy', 'Kraft', 'cross', 'Easy run, 5k', 'tempo or easy', 'tempo running', 'row', 'EASY ')).toEqual(
      {
        easy: 'slow',
        kraft: 'strength',
        cross: 'cross',
        'easy run, 5k': 'slow',
        'tempo or easy': null,
        'tempo running': 'tempo',
        row: null,
      },
    );
  });

  test('may be names that every object has', () => {
    const kinds = guess('Minutes;Kind', '45;__proto__', '45;constructor', '45;toString').kinds;
    expect(Object.keys(kinds)).toEqual(['__proto__', 'constructor', 'tostring']);
    expect(Object.values(kinds)).toEqual([null, null, null]);
    expect(Object.getPrototypeOf(kinds)).toBe(Object.prototype);
  });

  test('are none without a column', () => {
    expect(guess('Minutes;Date', '45;2026-11-30').kinds).toEqual({});
  });
});

describe('kindsIn(table, column)', () => {
  test('gives each text once, as it is first met', () => {
    const table = tableOf('Kind,x\n Easy ,1\neasy,1\n,1\nCaf\u00e9,1\ncafe\u0301,1\n__proto__,1\nEASY,1');
    expect(kindsIn(table, 0)).toEqual(['Easy', 'Caf\u00e9', '__proto__']);
    expect(kindsIn(table, 0).map(kindKey)).toEqual(['easy', 'caf\u00e9', '__proto__']);
  });

  test.each([-1, 5, 0.5, NaN])('gives none of column %d, which is none', (column) => {
    expect(kindsIn(tableOf('Kind,x\nEasy,1'), column)).toEqual([]);
  });
});
