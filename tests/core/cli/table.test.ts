import { csvParseRows } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import { categoryIds } from '../../../src/training/method/ids.js';
import { ran } from './fake-io.js';
import { pageOf } from './pages.js';
import { plannedSeason } from './season-line.js';

const file = (lines: readonly string[]): string => lines.map((line) => `${line}\r\n`).join('');
// The minutes are those of the same hour in calendar-file.test.ts, by hand.
const oneHour = 'table --hours 1 --phase recovery --week-of 2027-01-13';
const season = 'table --hours 4 --most-hours 6 --event half-marathon --date 2027-04-11 --weeks 16';

describe('weekwright table', () => {
  it('is a line for every session, byte by byte but for what a strength session is made of', async () => {
    const output = await pageOf(`${oneHour} --days 60,0,0,0,0,0,60`);
    expect(output.replace(/(?<=^.*Strength.*,)"Warm-up [^"]*"/m, 'SETS')).toBe(
      file([
        'Date,Day,What,Minutes,How hard,How',
        '2027-01-11,Monday,Cross-training,20,3 of 10,"Cycling, swimming or whatever spares the legs."',
        '2027-01-11,Monday,Strength,15,5 of 10,SETS',
        '2027-01-17,Sunday,Slow running,25,2 to 4 of 10,25 minutes so that whole sentences can be spoken.',
      ]),
    );
  });

  it('has neither dates nor days where sessions are for any day', async () => {
    const [, ...rows] = csvParseRows(await pageOf(oneHour));
    expect(rows.map((row) => row.slice(0, 4))).toEqual([
      ['', '', 'Slow running', '25'],
      ['', '', 'Cross-training', '20'],
      ['', '', 'Strength', '15'],
    ]);
  });

  it('speaks German, without the places where a screen may break a word', async () => {
    const [head, ...rows] = csvParseRows(await pageOf(`${oneHour} --days 60,0,0,0,0,0,60 --lang de`));
    expect(head).toEqual(['Datum', 'Tag', 'Was', 'Minuten', 'Wie hart', 'Wie']);
    expect(rows.map((row) => row.slice(0, 3))).toEqual([
      ['2027-01-11', 'Montag', 'Ausgleichstraining'],
      ['2027-01-11', 'Montag', 'Krafttraining'],
      ['2027-01-17', 'Sonntag', 'Langsames Laufen'],
    ]);
  });

  it('has what is told of the runner', async () => {
    const line = 'table --hours 4 --week-of 2027-01-13 --threshold-pace 4:40';
    const rows = csvParseRows(await pageOf(line));
    expect(rows.find((row) => row[2] === 'Tempo running')?.[5]).toMatch(/ at \d:\d\d to \d:\d\d a kilometre/);
  });

  it('has a line for every week of a season, with the minutes that the planner gives', async () => {
    const [head, ...rows] = csvParseRows(await pageOf(season));
    const kinds = ['Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength'];
    expect(head).toEqual(['Week', 'From', 'Phase', 'Hours', ...kinds, 'Longest run']);
    const { weeks } = plannedSeason({ date: '2027-04-11', weeks: 16, mostHours: 6 });
    expect(rows.map(([number, from, , ...numbers]) => [Number(number), from, ...numbers.map(Number)])).toEqual(
      weeks.map((week) => [
        ...[week.number, week.start, Number(week.hours.toFixed(2))],
        ...[...categoryIds.map((id) => week.rounded[id]), week.longestRun ?? 0],
      ]),
    );
    expect(rows.map((row) => row[2])).toContain('taper (half marathon)');
  });

  it('has no byte order mark, and ends every line as RFC 4180 says', async () => {
    for (const line of [oneHour, season]) {
      const output = await pageOf(line);
      expect(output).not.toMatch(/^\uFEFF/);
      expect(output).toMatch(/\r\n$/);
      expect(output.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    }
  });

  it('takes a name of a coach for no formula', async () => {
    const { default: method } = await import('../../../shared/methods/default.json');
    const categories = method.categories.map((each) => (each.id === 'slow' ? { ...each, name: '=1+1,"x"' } : each));
    const files = { 'own.json': JSON.stringify({ ...method, id: 'own', categories }) };
    const { output } = await ran(`${oneHour} --method own.json`.split(' '), { files });
    expect(csvParseRows(output)[1]?.[2]).toBe('\'=1+1,"x"');
  });
});
