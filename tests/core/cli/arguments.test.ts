import { describe, expect, it } from 'vitest';
import { ran } from './fake-io.js';

describe('weekwright with wrong arguments', () => {
  const allOptions =
    '--hours, --phase, --level, --event, --strength-cap, --days, --method, --roster, --json, --lang, --help, --version';

  it.each<[string, string]>([
    ['plam', '"plam" is not a command. Allowed: plan, season, running, strength, checks, calendar, table, basis.'],
    ['plan --hours 25', '--hours is 25; allowed: 0.5 to 20.'],
    ['plan --hours -1', '--hours is -1; allowed: 0.5 to 20.'],
    ['plan --hours=four', '--hours is "four"; it has to be a number.'],
    ['plan --hours 4,5', '--hours is "4,5"; it has to be a number.'],
    ['plan --hours 0x4', '--hours is "0x4"; it has to be a number.'],
    ['plan --hours 1e999', '--hours is "1e999"; it has to be a number.'],
    ['plan --phase sumer', '--phase is "sumer"; allowed: off-season, base, build, peak, taper, or recovery.'],
    ['plan --level old', '--level is "old"; allowed: new, developing, trained, or elite.'],
    ['plan --event 15k', '--event is "15k"; allowed: none, 5k, 10k, half-marathon, marathon, or longer.'],
    ['plan --strength-cap 60', '--strength-cap is 60; allowed: 90 to 120.'],
    ['plan --days 60,0,45,60,0,90', '--days has 6; it has to have 7.'],
    ['plan --days 60', '--days has 1; it has to have 7.'],
    ['plan --days 60,0,45,,0,90,120', '--days (Thursday) is ""; it has to be a number.'],
    ['plan --days 60,0,45,6O,0,90,120', '--days (Thursday) is "6O"; it has to be a number.'],
    [
      'plan --days -60,0,45,60,0,90,1441',
      '--days (Monday) is -60; allowed: 0 or more.\n--days (Sunday) is 1441; allowed: 1,440 or less.',
    ],
    ['plan --days 60,0,45.5,60,0,90,120', '--days (Wednesday) is 45.5; allowed: steps of 1.'],
    ['plan --days', '--days needs a value.'],
    ['plan --lang nl', '--lang is "nl"; allowed: en, ar, de, es, or fr.'],
    ['plan --hour 4', `--hour is not an option here. Allowed: ${allOptions}.\n"4" is one argument too many.`],
    ['plan -x', `-x is not an option here. Allowed: ${allOptions}.`],
    ['plan --hours --phase build', '--hours needs a value.'],
    ['plan --hours=', '--hours needs a value.'],
    ['plan --hours', '--hours needs a value.'],
    ['plan --json=yes', '--json takes no value; given: "yes".'],
    ['plan --hours 4 --hours 5', '--hours stands there twice; allowed: once.'],
    ['plan now', '"now" is one argument too many.'],
    ['plan --date 2027-04-11', `--date is not an option here. Allowed: ${allOptions}.`],
    ['plan --constructor', `--constructor is not an option here. Allowed: ${allOptions}.`],
  ])('%s', async (line, expected) => {
    const { code, output, errors } = await ran(line.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it('names every fault at once', async () => {
    const { errors } = await ran('plan --hours 25 --phase sumer --strength-cap 4'.split(' '));
    expect(errors.split('\n').map((line) => line.split(' ')[0])).toEqual(['--hours', '--phase', '--strength-cap', '']);
  });

  it('names them in the language asked for', async () => {
    const { code, errors } = await ran('plan --hours 25 --lang de'.split(' '));
    expect([code, errors]).toEqual([2, '--hours ist 25; erlaubt: 0,5 bis 20.\n']);
  });

  it('names a day in the language asked for', async () => {
    const { errors } = await ran('plan --days 60,0,45,60,0,90,-1 --lang de'.split(' '));
    expect(errors).toBe('--days (Sonntag) ist -1; erlaubt: 0 oder mehr.\n');
  });

  it('shows the help on the error stream where nothing is asked', async () => {
    const { code, output, errors } = await ran([]);
    expect([code, output]).toEqual([2, '']);
    expect(errors).toContain('weekwright plan');
  });
});

describe('weekwright --help and --version', () => {
  it.each([['--help'], ['-h'], ['--help --hours x']])('%s is answered', async (line) => {
    const { code, output, errors } = await ran(line.split(' '));
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(
      /^Commands\n {2}plan {6}\S.*\n {2}season {4}\S.*\n {2}running {3}\S.*\n {2}strength {2}\S.*\n {2}checks {4}\S.*\n {2}calendar {2}\S.*\n {2}table {5}\S.*\n {2}basis {5}\S/m,
    );
  });

  it('lists every option of a plan with what is allowed and where it starts', async () => {
    const { code, output } = await ran(['plan', '--help']);
    expect(code).toBe(0);
    expect(output).toMatch(/^ {2}--hours HOURS +hours a week, 0\.5 to 20; 4 where left out$/m);
    expect(output).toMatch(
      /^ {2}--phase PHASE +off-season, base, build, peak, taper, recovery; build where left out$/m,
    );
    expect(output).toMatch(/^ {2}--strength-cap MINUTES .* 90 to 120; 120 where left out$/m);
    expect(output).toMatch(/^ {2}--days MINUTES,… +minutes available on the seven days, Monday first/m);
    expect(output).toContain('name,hours,phase,level,event,strength_cap,days');
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it('gives help in German', async () => {
    const { output } = await ran(['plan', '--help', '--lang', 'de']);
    expect(output).toMatch(/^Optionen\n {2}--hours HOURS +Stunden pro Woche, 0,5 bis 20/m);
    expect(output).toMatch(/^ {2}--days MINUTES,… +verfügbare Minuten der sieben Tage, von Montag an/m);
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it.each(['en', 'de'])('names the help of every command in %s', async (lang) => {
    const { output } = await ran(['--help', '--lang', lang]);
    for (const command of ['plan', 'season', 'running', 'strength', 'checks', 'calendar', 'table', 'basis']) {
      expect(output).toContain(`weekwright ${command} --help`);
      expect(output).toMatch(new RegExp(`^ {2}weekwright ${command} \\[?--`, 'm'));
    }
    expect(output).not.toMatch(/command\.|heading\.|[{}]/);
  });

  it('gives the version', async () => {
    expect(await ran(['--version'])).toEqual({ code: 0, output: '1.2.3\n', errors: '' });
  });
});
