import { describe, expect, it } from 'vitest';
import type { PlanRequest, PlanRunning, RunningRequest } from '../../../src/plan.js';
import { planWithRunning } from '../../reference/running/running-door.js';
import { linesOf, ran } from './fake-io.js';
import { jsonOf } from './pages.js';

const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** What `--json` should print for a request. */
function documentFor(running: RunningRequest, others: PlanRequest = {}): unknown {
  const { method, inputs, running: made } = planWithRunning({ ...others, running });
  return asJson({ format: 'weekwright-running', version: 1, method, inputs, ...made });
}

describe('the options of weekwright running', () => {
  const tenKilometres = { metres: 10_000, seconds: 2700 };
  const today = '2027-04-11';

  it.each<[string, RunningRequest, PlanRequest?]>([
    ['', {}],
    ['--race 10k=45:00', { race: tenKilometres }],
    ['--race=10k=45:00', { race: tenKilometres }],
    ['--race half-marathon=1:39:17', { race: { metres: 21_097.5, seconds: 5957 } }],
    ['--race 1500m=5:10', { race: { metres: 1500, seconds: 310 } }],
    ['--race 10k=45:00 --race-date 2027-01-02', { race: { ...tenKilometres, date: '2027-01-02' }, today }],
    ['--threshold-pace 4:40', { thresholdPace: 280 }],
    ['--threshold-pace 7:30 --unit mile', { thresholdPace: (450 * 1000) / 1609.344, unit: 'mile' }],
    ['--unit mile', { unit: 'mile' }],
    ['--unit km', { unit: 'km' }],
    ['--age 40', { age: 40 }],
    ['--highest-heart 190 --resting-heart 50', { highestHeart: 190, restingHeart: 50 }],
    ['--weight 62.5 --threshold-pace 5:00', { weight: 62.5, thresholdPace: 300 }],
    ['--hours 6 --phase peak --level trained', {}, { hours: 6, phase: 'peak', level: 'trained' }],
    ['--event 10k --strength-cap 90', {}, { event: '10k', strengthCap: 90 }],
    ['--days 60,0,45,60,0,90,120', {}, { week: { days: [60, 0, 45, 60, 0, 90, 120] } }],
    // The ends of what is allowed.
    ['--race 800m=1:40', { race: { metres: 800, seconds: 100 } }],
    ['--race 800m=13:20', { race: { metres: 800, seconds: 800 } }],
    ['--race 100km=27:46:40', { race: { metres: 100_000, seconds: 100_000 } }],
    ['--threshold-pace 2:30', { thresholdPace: 150 }],
    ['--threshold-pace 12:00', { thresholdPace: 720 }],
    ['--age 5', { age: 5 }],
    ['--age 110', { age: 110 }],
    ['--highest-heart 100', { highestHeart: 100 }],
    ['--highest-heart 240', { highestHeart: 240 }],
    ['--resting-heart 25', { restingHeart: 25 }],
    ['--resting-heart 120', { restingHeart: 120 }],
    ['--weight 20', { weight: 20 }],
    ['--weight 300', { weight: 300 }],
  ])('%s', async (options, running, others) => {
    const line = `running ${options}`.trim();
    expect(await jsonOf(line, { today })).toEqual(documentFor(running, others));
  });

  it('takes a race in quotes with a space, too', async () => {
    expect(await jsonOf(['running', '--race', '10k 45:00'])).toEqual(documentFor({ race: tenKilometres }));
  });

  it('asks for the day it is only where the day of a race is given', async () => {
    const { wishes } = (await jsonOf('running --race 10k=45:00', { today })) as PlanRunning;
    expect(wishes.today).toBeNull();
    const dated = (await jsonOf('running --race 10k=45:00 --race-date 2026-01-01', { today })) as PlanRunning;
    expect([dated.wishes.today, dated.notices.map(({ code }) => code)]).toEqual([today, ['old-race']]);
  });
});

describe('weekwright running with wrong options', () => {
  const forms = '10k=45:00, half-marathon=1:39:17, or 1500m=5:10';
  const allowed =
    '--hours, --phase, --level, --event, --strength-cap, --days, --race, --race-date, --threshold-pace, --unit, --age, --highest-heart, --resting-heart, --weight, --method, --json, --lang, --help, --version';

  it.each<[string, string]>([
    ['--race 10k', `--race is "10k"; allowed: text of the form ${forms}.`],
    ['--race 45:00', `--race is "45:00"; allowed: text of the form ${forms}.`],
    ['--race 10=45:00', `--race is "10=45:00"; allowed: text of the form ${forms}.`],
    ['--race 10k=45', `--race is "10k=45"; allowed: text of the form ${forms}.`],
    ['--race 10k=45:00=1', `--race is "10k=45:00=1"; allowed: text of the form ${forms}.`],
    ['--race 10k=-45:00', `--race is "10k=-45:00"; allowed: text of the form ${forms}.`],
    ['--race toString=45:00', `--race is "toString=45:00"; allowed: text of the form ${forms}.`],
    ['--race 10k 45:00', '"45:00" is one argument too many.'],
    ['--race 799m=3:00', '--race (metres) is 799; allowed: 800 to 100,000.'],
    ['--race 101km=10:00:00', '--race (metres) is 101000; allowed: 800 to 100,000.'],
    // 480 and 60 metres a minute.
    ['--race 800m=1:39', '--race (time) is "1:39"; allowed: 1:40 to 13:20.'],
    ['--race 800m=0:00', '--race (time) is "0:00"; allowed: 1:40 to 13:20.'],
    ['--race 10k=20:49', '--race (time) is "20:49"; allowed: 20:50 to 2:46:40.'],
    ['--race 10k=2:46:41', '--race (time) is "2:46:41"; allowed: 20:50 to 2:46:40.'],
    ['--race-date 2027-01-01', '--race is missing.'],
    [
      '--race 10k=45:00 --race-date 2027-02-29',
      '--race-date is "2027-02-29"; allowed: a day of the calendar such as 2027-04-11, from 1900-01-01 to 2199-12-31.',
    ],
    ['--threshold-pace fast', '--threshold-pace is "fast"; allowed: text of the form 4:40.'],
    ['--threshold-pace 280', '--threshold-pace is "280"; allowed: text of the form 4:40.'],
    ['--threshold-pace 4:60', '--threshold-pace is "4:60"; allowed: text of the form 4:40.'],
    ['--threshold-pace 2:29', '--threshold-pace is "2:29"; allowed: 2:30 to 12:00.'],
    ['--threshold-pace 12:01', '--threshold-pace is "12:01"; allowed: 2:30 to 12:00.'],
    ['--unit yard', '--unit is "yard"; allowed: km or mile.'],
    ['--age old', '--age is "old"; it has to be a number.'],
    ['--age 4', '--age is 4; allowed: 5 to 110.'],
    ['--age 111', '--age is 111; allowed: 5 to 110.'],
    ['--highest-heart 99', '--highest-heart is 99; allowed: 100 to 240.'],
    ['--highest-heart 241', '--highest-heart is 241; allowed: 100 to 240.'],
    ['--resting-heart 24', '--resting-heart is 24; allowed: 25 to 120.'],
    ['--resting-heart 121', '--resting-heart is 121; allowed: 25 to 120.'],
    ['--highest-heart 110 --resting-heart 115', '--resting-heart is 115; allowed: 25 to 109.'],
    ['--weight 19.9', '--weight is 19.9; allowed: 20 to 300.'],
    ['--weight 301', '--weight is 301; allowed: 20 to 300.'],
    ['--weight 62,5', '--weight is "62,5"; it has to be a number.'],
    ['--hours 25', '--hours is 25; allowed: 0.5 to 20.'],
    ['--phase sumer', '--phase is "sumer"; allowed: off-season, base, build, peak, taper, or recovery.'],
    ['--days 60,0,45,6O,0,90,120', '--days (Thursday) is "6O"; it has to be a number.'],
    ['--lang nl', '--lang is "nl"; allowed: en, ar, de, es, or fr.'],
    ['--age', '--age needs a value.'],
    ['--race --age 40', '--race needs a value.'],
    ['--age 40 --age 41', '--age stands there twice; allowed: once.'],
    ['--equipment band', `--equipment is not an option here. Allowed: ${allowed}.`],
    ['--roster x', `--roster is not an option here. Allowed: ${allowed}.`],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`running ${options}`.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it('tells a pace in miles where paces are in miles', async () => {
    const { code, errors } = await ran('running --threshold-pace 3:59 --unit mile'.split(' '));
    // 2:30 to 12:00 a kilometre are 4:01.4 to 19:18.7 a mile.
    expect([code, errors]).toEqual([2, '--threshold-pace is "3:59"; allowed: 4:02 to 19:18.\n']);
  });

  it('refuses a race of tomorrow', async () => {
    const line = 'running --race 10k=45:00 --race-date 2027-04-12'.split(' ');
    const { code, errors } = await ran(line, { today: '2027-04-11' });
    expect([code, errors]).toEqual([2, expect.stringMatching(/^--race-date is "2027-04-12"; allowed: 2027-04-11 or /)]);
    expect((await ran(line, { today: '2027-04-12' })).code).toBe(0);
  });

  it('names every fault at once, those of the week too, in the language asked for', async () => {
    const line = 'running --race 10k --threshold-pace x --unit mil --age 3 --hours 30 --highest-heart 300 --lang de';
    const { code, errors } = await ran(line.split(' '));
    expect([code, ...linesOf(errors)]).toEqual([
      2,
      '--race ist "10k"; erlaubt: Text der Form 10k=45:00, half-marathon=1:39:17 oder 1500m=5:10.',
      '--threshold-pace ist "x"; erlaubt: Text der Form 4:40.',
      '--hours ist 30; erlaubt: 0,5 bis 20.',
      '--unit ist "mil"; erlaubt: km oder mile.',
      '--age ist 3; erlaubt: 5 bis 110.',
      '--highest-heart ist 300; erlaubt: 100 bis 240.',
    ]);
  });

  it.each([
    ['700m=3:00', '--race (Meter) ist 700; erlaubt: 800 bis 100.000.'],
    ['800m=13:21', '--race (Zeit) ist "13:21"; erlaubt: 1:40 bis 13:20.'],
  ])('names the parts of a race in German: %s', async (race, expected) => {
    const { code, errors } = await ran(['running', '--race', race, '--lang', 'de']);
    expect([code, linesOf(errors)]).toEqual([2, [expected]]);
  });

  it('says what is wrong with a method file', async () => {
    const { code, errors } = await ran('running --method gone.json'.split(' '));
    expect([code, linesOf(errors).length]).toEqual([2, 1]);
    expect(errors).toMatch(/gone\.json/);
  });

  it.each(['plan', 'season', 'strength'])('%s has no option of a race', async (command) => {
    const { code, errors } = await ran([command, '--race', '10k=45:00']);
    expect(code).toBe(2);
    expect(errors).toMatch(/^--race is not an option here/);
  });
});
