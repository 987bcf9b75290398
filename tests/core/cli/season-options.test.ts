import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { linesOf, ran } from './fake-io.js';
import { also, documentOf, plannedSeason, usualLine } from './season-line.js';

describe('the options of a season', () => {
  const wishes = { date: '2027-04-11', weeks: 16, mostHours: 6 };

  it.each<[string, string, object, object?]>([
    ['--rise', '8', { rise: 0.08 }],
    ['--easier-every', '3', { easierEvery: 3 }],
    ['--easier-drop', '40', { easierDrop: 0.4 }],
    ['--taper-weeks', '3', { taperWeeks: 3 }],
    ['--taper-drop', '45', { taperDrop: 0.45 }],
    ['--upkeep-from', 'peak', { upkeepFrom: 'peak' }],
    ['--upkeep-sessions', '1', { upkeepSessions: 1 }],
    ['--recovery-weeks', '0', { recoveryWeeks: 0 }],
    [
      '--phases',
      'off-season:2, base,build:4',
      {
        phases: [
          { phase: 'off-season', weeks: 2 },
          { phase: 'base', weeks: null },
          { phase: 'build', weeks: 4 },
        ],
      },
    ],
    [
      '--events',
      '2027-01-17:10k,2027-05-16:5k',
      {
        events: [
          { date: '2027-01-17', event: '10k' },
          { date: '2027-05-16', event: '5k' },
        ],
      },
    ],
    [
      '--by-hand',
      '2027-01-20:0:holiday,2027-02-10:2.5:ill,2027-02-17:3',
      {
        byHand: [
          { start: '2027-01-18', hours: 0, reason: 'holiday', sessions: {} },
          { start: '2027-02-08', hours: 2.5, reason: 'ill', sessions: {} },
          { start: '2027-02-15', hours: 3, reason: 'other', sessions: {} },
        ],
      },
    ],
    ['--weeks-off', '2', { weeksOff: 2 }],
    ['--longest-run', '60', { longestRun: 60 }],
    ['--level', 'trained', {}, { level: 'trained' }],
    ['--strength-cap', '90', {}, { strengthCap: 90 }],
  ])('%s %s', async (option, text, season, inputs = {}) => {
    const found = await documentOf(also(option, text));
    expect(found.wishes).toMatchObject(season);
    expect(found.inputs).toMatchObject(inputs);
    expect(found.weeks).toEqual(JSON.parse(JSON.stringify(plannedSeason({ ...wishes, ...season }, inputs).weeks)));
  });

  it.each([
    ['date and weeks', '--date 2027-04-11 --weeks 16'],
    ['start and weeks', '--start 2026-12-24 --weeks 16'],
    ['start and date', '--start 2026-12-24 --date 2027-04-11'],
    // Sixteen weeks are those of the method.
    ['the date', '--date 2027-04-11'],
    ['the start', '--start 2026-12-21'],
  ])('two of date, start and weeks are enough, or one: %s', async (_, options) => {
    const { weeks } = await documentOf(['season', ...options.split(' ')]);
    const [first] = weeks;
    const last = weeks.find(({ weeksToGo }) => weeksToGo === 0);
    expect([first?.start, last?.start, last?.events[0]?.date]).toEqual(['2026-12-21', '2027-04-05', '2027-04-11']);
  });

  it('of a coach: a method of their own divides the weeks', async () => {
    const rules = defaultMethod.rules.map((rule) =>
      rule.id === 'strength-cap' ? { ...rule, when: 'value > 60', value: '60' } : rule,
    );
    const files = { 'own.json': JSON.stringify({ ...defaultMethod, id: 'own', rules }) };
    const { method, weeks } = await documentOf(also('--method', 'own.json'), files);
    expect(method.id).toBe('own');
    expect(Math.max(...weeks.map(({ minutes }) => minutes.strength))).toBe(60);
  });
});

describe('weekwright season with wrong options', () => {
  const date = 'a day of the calendar such as 2027-04-11, from 1900-01-01 to 2199-12-31';

  it.each<[string, string]>([
    ['season', '--date is missing.'],
    ['season --date 2027-02-29', `--date is "2027-02-29"; allowed: ${date}.`],
    ['season --date 11.4.2027', `--date is "11.4.2027"; allowed: ${date}.`],
    ['season --start 2027-13-01', `--start is "2027-13-01"; allowed: ${date}.`],
    [
      'season --start 2027-04-12 --date 2027-04-11',
      '--date is "2027-04-11"; allowed: a day from the week of the start (2027-04-12) on, within 104 weeks.',
    ],
    ['season --start 2027-01-04 --date 2027-04-11 --weeks 9', '--weeks is 9; allowed: 14.'],
    [`${usualLine} --weeks 0`.replace('--weeks 16 ', ''), '--weeks is 0; allowed: 1 to 104.'],
    [`${usualLine} --weeks 2.5`.replace('--weeks 16 ', ''), '--weeks is 2.5; allowed: steps of 1.'],
    [`${usualLine} --hours 25`.replace('--hours 4 ', ''), '--hours is 25; allowed: 0.5 to 20.'],
    [`${usualLine} --most-hours 25`.replace('--most-hours 6 ', ''), '--most-hours is 25; allowed: 0.5 to 20.'],
    [`${usualLine} --rise ten`, '--rise is "ten"; it has to be a number.'],
    // Per cent as they were typed.
    [`${usualLine} --rise 130`, '--rise is 130; allowed: 0 to 100.'],
    [`${usualLine} --easier-drop 99.5`, '--easier-drop is 99.5; allowed: 0 to 95.'],
    [`${usualLine} --taper-drop=-7`, '--taper-drop is -7; allowed: 0 to 95.'],
    [`${usualLine} --easier-every 9`, '--easier-every is 9; allowed: 0 to 8.'],
    [`${usualLine} --taper-weeks 4`, '--taper-weeks is 4; allowed: 0 to 3.'],
    [`${usualLine} --upkeep-from base`, '--upkeep-from is "base"; allowed: never, taper, or peak.'],
    [`${usualLine} --upkeep-sessions 0`, '--upkeep-sessions is 0; allowed: 1 to 3.'],
    [`${usualLine} --recovery-weeks 9`, '--recovery-weeks is 9; allowed: 0 to 8.'],
    [`${usualLine} --weeks-off x`, '--weeks-off is "x"; it has to be a number.'],
    [`${usualLine} --longest-run -5`.replace(' -5', '=-5'), '--longest-run is -5; allowed: 0 to 10,080.'],
    [
      `${usualLine} --phases base,buidl:4`,
      '--phases[1].phase is "buidl"; allowed: off-season, base, build, peak, or recovery.',
    ],
    [`${usualLine} --phases base:x`, '--phases[0].weeks is "x"; it has to be a number.'],
    [
      `${usualLine} --events 2027-01-17:15k`,
      '--events[0].event is "15k"; allowed: none, 5k, 10k, half-marathon, marathon, or longer.',
    ],
    [`${usualLine} --events 2027-01-17`, '--events[0].event is missing.'],
    [`${usualLine} --events 17.1.:10k`, `--events[0].date is "17.1."; allowed: ${date}.`],
    [`${usualLine} --by-hand 2027-01-18`, '--by-hand[0].hours is ""; it has to be a number.'],
    [`${usualLine} --by-hand 2027-01-18:3:lazy`, '--by-hand[0].reason is "lazy"; allowed: holiday, ill, or other.'],
    [
      `${usualLine} --by-hand 2027-01-18:3,2027-01-20:4`,
      '--by-hand[1].start is "2027-01-20", which is taken already; each name stands once.',
    ],
    [`${usualLine} --rise`, '--rise needs a value.'],
    [`${usualLine} --rise 8 --rise 9`, '--rise stands there twice; allowed: once.'],
  ])('%s', async (given, expected) => {
    const { code, output, errors } = await ran(given.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it.each(['--days', '--phase', '--roster'])('%s is an option of a plan, not of a season', async (option) => {
    const { code, errors } = await ran(also(option, 'x'));
    expect(code).toBe(2);
    expect(errors).toMatch(new RegExp(`^${option} is not an option here. Allowed: --hours, --date, --start, `));
    expect(errors).not.toMatch(new RegExp(`Allowed:.*${option},`));
  });

  it.each(['--date', '--weeks', '--rise', '--phases', '--by-hand'])(
    '%s is an option of a season, not of a plan',
    async (option) => {
      const { code, errors } = await ran(['plan', option, 'x']);
      expect(code).toBe(2);
      expect(errors).toMatch(new RegExp(`^${option} is not an option here. Allowed: --hours, --phase, `));
    },
  );

  it('names every fault of the fields at once, in the language asked for', async () => {
    const { errors } = await ran(also('--rise', '130', '--easier-every', '9', '--upkeep-from', 'x', '--lang', 'de'));
    expect(linesOf(errors)).toEqual([
      '--rise ist 130; erlaubt: 0 bis 100.',
      '--easier-every ist 9; erlaubt: 0 bis 8.',
      '--upkeep-from ist "x"; erlaubt: never, taper oder peak.',
    ]);
  });

  it('says of a phase that there is none of that name, and no more', async () => {
    const { errors } = await ran(also('--phases', 'bas:6'));
    expect(linesOf(errors)).toEqual([
      '--phases[0].phase is "bas"; allowed: off-season, base, build, peak, or recovery.',
    ]);
  });

  it.each([
    ['--events', '2027-01-17:10k:3'],
    ['--by-hand', '2027-01-18:3:ill:now'],
    ['--phases', 'base:6:7'],
  ])('loses no part of what was typed: %s %s is refused', async (option, text) => {
    const { code, errors } = await ran(also(option, text));
    expect(code).toBe(2);
    expect(errors).toMatch(new RegExp(`^${option}`));
  });

  it('says what is wrong with a method file', async () => {
    const { code, errors } = await ran(also('--method', 'gone.json'));
    expect([code, linesOf(errors).length]).toEqual([2, 1]);
    expect(errors).toMatch(/gone\.json/);
  });
});
