import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planWeek, type Plan } from '../../../src/plan.js';
import { eventIds, levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { linesOf, ran, type Ran } from './fake-io.js';

const header = 'name,hours,phase,level,event,strength_cap';
const allowed = 'Allowed: name, hours, phase, level, event, strength_cap, or days.';
const plansOf = (roster: string, ...options: string[]): Promise<Ran> =>
  ran(['plan', '--roster', '-', ...options], { input: roster });

describe('weekwright plan --roster with CSV', () => {
  it('prints a table with a header, one runner a line', async () => {
    const { code, output, errors } = await plansOf(
      `${header}\nMira,4,build,developing,half-marathon,120\nOle,8,base,new,marathon,90\n`,
    );
    expect([code, errors]).toEqual([0, '']);
    const [columns, mira, ole] = csvParseRows(output);
    expect(columns).toEqual([
      ...header.split(','),
      'split',
      ...['slow_minutes', 'tempo_minutes', 'intervals_minutes', 'cross_minutes', 'strength_minutes', 'total_minutes'],
      ...['slow_sessions', 'tempo_sessions', 'intervals_sessions', 'cross_sessions', 'strength_sessions'],
      'rules',
      'notices',
      'week_cost',
    ]);
    expect(mira?.slice(0, 13)).toEqual([
      'Mira',
      '4',
      'build',
      'developing',
      'half-marathon',
      '120',
      'in_season',
      '70',
      '35',
      '25',
      '35',
      '75',
      '240',
    ]);
    // By hand: 222 / 72 / 0 / 96 / 90 exact minutes are 44.4 / 14.4 / 0 / 19.2 / 18 steps; 44.4 ÷ 44.5 wins the last one.
    expect(ole?.slice(6, 13)).toEqual(['off_season', '225', '70', '0', '95', '90', '480']);
    expect(ole?.slice(-3)).toEqual(['strength-cap', 'many-hours', '']);
  });

  it('takes quoted cells, any line ends, a byte order mark, spaces around values, blank lines', async () => {
    const roster = `\uFEFFhours,name\r\n"4","Ole, the ""Elder"""\r\n\r\n 4.5 ,"two\r\nlines"\r4,last`;
    const { code, output, errors } = await plansOf(roster);
    expect([code, errors]).toEqual([0, '']);
    const rows = csvParseRows(output).slice(1);
    expect(rows.map(([name, hours]) => [name, hours])).toEqual([
      ['Ole, the "Elder"', '4'],
      ['two\r\nlines', '4.5'],
      ['last', '4'],
    ]);
  });

  it('takes what a cell leaves out from the options, else from the method', async () => {
    const { output } = await plansOf('name,hours,phase\na,,\nb,5,base\n', '--phase', 'peak', '--event', '10k');
    const rows = csvParseRows(output).slice(1);
    expect(rows.map((row) => row.slice(0, 6))).toEqual([
      ['a', '4', 'peak', 'developing', '10k', '120'],
      ['b', '5', 'base', 'developing', '10k', '120'],
    ]);
  });

  it('reports every faulty line with its line and field, and plans the others', async () => {
    const roster = [
      header,
      'good,4,build,developing,half-marathon,120',
      '"two\nlines",25,sumer,developing,none,120',
      '',
      'comma,"4,5",build,developing,none,80',
      'short,4',
      'long,4,build,developing,none,120,more',
      'late,4,build,developing,none,120',
    ].join('\n');
    const { code, output, errors } = await plansOf(roster);
    expect(code).toBe(1);
    expect(csvParseRows(output).map(([name]) => name)).toEqual(['name', 'good', 'late']);
    expect(linesOf(errors)).toEqual([
      'Line 3 (two',
      'lines): hours is 25; allowed: 0.5 to 20.',
      'Line 3 (two',
      'lines): phase is "sumer"; allowed: off-season, base, build, peak, taper, or recovery.',
      'Line 6 (comma): hours is "4,5"; it has to be a number.',
      'Line 6 (comma): strength_cap is 80; allowed: 90 to 120.',
      'Line 7 (short): 2 fields; allowed: 6, as in the header.',
      'Line 8 (long): 7 fields; allowed: 6, as in the header.',
    ]);
  });

  it.each([
    ['text behind a quoted cell', 'b,"4"x', 3],
    ['a quotation mark inside a bare cell', 'b,4"', 3],
    ['a quotation mark that is never closed', 'b,"4\nc,4', 3],
  ])('reads nothing behind %s, and says so', async (_, broken, line) => {
    const { code, output, errors } = await plansOf(`name,hours\na,4\n${broken}\nd,4\n`);
    expect(code).toBe(1);
    expect(csvParseRows(output).map(([name]) => name)).toEqual(['name', 'a']);
    expect(errors).toBe(`Line ${line}: Quotation marks that do not match; nothing after this line was read.\n`);
  });

  it.each([
    ['', `Line 1: The roster is empty; its first line has to name columns: ${header},days.\n`],
    ['name,hours,age\na,4,30\n', `Line 1: age is not a known field here. ${allowed}\n`],
    ['name,hours,hours\na,4,5\n', 'Line 1: hours is "hours", which is taken already; each name stands once.\n'],
    ['name,\na,4\n', `Line 1: column 2 is not a known field here. ${allowed}\n`],
    ['name;hours\na;4\n', /^Line 1: name;hours is not a known field here\./],
    ['name,hours\na,99\n', 'Line 2 (a): hours is 99; allowed: 0.5 to 20.\n'],
  ])('plans nothing from %j, and says why', async (roster, expected) => {
    const { code, output, errors } = await plansOf(roster);
    expect([code, output]).toEqual([2, '']);
    if (typeof expected === 'string') expect(errors).toBe(expected);
    else expect(errors).toMatch(expected);
  });

  it('has no lines for a header alone', async () => {
    const { code, output } = await plansOf(`${header}\n`);
    expect([code, linesOf(output).length]).toEqual([0, 1]);
  });
});

describe('weekwright plan --roster with NDJSON', () => {
  const roster = [
    '{"name":"Mira","hours":4,"phase":"build","sessions":{"strength":[25,25,25]}}',
    '{"hours":5}',
    '',
    '{"name":"Ole","hours":"4","sport":"run"}',
    '[1]',
    '{"name":7}',
    '{"name":"late"',
  ].join('\r\n');

  it('prints plan documents with names under --json', async () => {
    const { code, output } = await plansOf(roster, '--json');
    expect(code).toBe(1);
    const documents = linesOf(output).map((line) => JSON.parse(line) as Plan & { name: string });
    const expected = [
      ['Mira', planWeek({ hours: 4, phase: 'build', sessions: { strength: [25, 25, 25] } })],
      ['', planWeek({ hours: 5 })],
    ] as const;
    expect(documents).toEqual(expected.map(([name, plan]) => ({ name, ...(plan.ok && plan.value) })));
    expect(documents[0]?.sessions.strength).toEqual([25, 25, 25]);
  });

  it('reports every faulty line', async () => {
    const { errors } = await plansOf(roster);
    const lines = linesOf(errors);
    expect(lines.slice(0, 4)).toEqual([
      'Line 4 (Ole): sport is not a known field here. Allowed: name, hours, phase, level, event, strengthCap, sessions, days, or week.',
      'Line 4 (Ole): hours is "4"; it has to be a number.',
      'Line 5: the line is [1]; it has to be an object.',
      'Line 6: name is 7; it has to be a text.',
    ]);
    expect(lines[4]).toMatch(/^Line 7: the line is not valid JSON: /);
  });

  it('reads a file too', async () => {
    const files = { 'club.ndjson': '{"name":"Mira","hours":4}\n' };
    const { code, output } = await ran(['plan', '--roster', 'club.ndjson'], { files });
    expect(code).toBe(0);
    expect(csvParseRows(output)[1]?.[0]).toBe('Mira');
    const missing = await ran(['plan', '--roster', 'none.csv', '--lang', 'de'], { files });
    expect([missing.code, missing.errors]).toEqual([
      2,
      '--roster ließ sich nicht von "none.csv" lesen (es gibt keine solche Datei).\n',
    ]);
  });
});

describe('a roster as CSV and as NDJSON', () => {
  const runner = fc.record({
    name: fc.string({ maxLength: 12 }).map((name) => name.trim()),
    hours: fc.integer({ min: 2, max: 80 }).map((quarters) => quarters / 4),
    phase: fc.constantFrom(...phaseIds),
    level: fc.constantFrom(...levelIds),
    event: fc.constantFrom(...eventIds),
    strengthCap: fc.integer({ min: 90, max: 120 }),
  });
  const quoted = (value: string | number): string => `"${String(value).replaceAll('"', '""')}"`;

  it('gives the same plans, whatever the names hold', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(runner, { minLength: 1, maxLength: 8 }), async (runners) => {
        const rows = runners.map((each) => Object.values(each).map(quoted).join(','));
        const ndjson = runners.map((each) => JSON.stringify(each)).join('\n');
        const [fromCsv, fromNdjson] = [await plansOf([header, ...rows].join('\r\n')), await plansOf(ndjson)];
        expect(fromCsv).toEqual(fromNdjson);
        expect(fromCsv.code).toBe(0);
        expect(csvParseRows(fromCsv.output).length).toBe(runners.length + 1);
      }),
      { numRuns: 50 },
    );
  });
});
