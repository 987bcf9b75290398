import { describe, expect, it } from 'vitest';
import { ran } from './fake-io.js';
import { pageOf } from './pages.js';

describe.each(['calendar', 'table'])('weekwright %s with wrong options', (command) => {
  const wrongDate = 'allowed: a day of the calendar such as 2027-04-11, from 1900-01-01 to 2199-12-31.';

  it.each<[string, string]>([
    ['', '--week-of is missing: it names the week. Or ask for a season, with --date, --start or --weeks.'],
    ['--week-of', '--week-of needs a value.'],
    ['--week-of 2027-02-29', `--week-of is "2027-02-29"; ${wrongDate}`],
    ['--week-of 13.1.2027', `--week-of is "13.1.2027"; ${wrongDate}`],
    // Of this week only two days can be written.
    ['--week-of 2199-12-30', '--week-of is "2199-12-30"; allowed: 2199-12-29 or earlier.'],
    [
      '--week-of 2027-01-13 --date 2027-04-11 --weeks 8',
      '--week-of is for one week alone; a season is asked for with --date, --weeks.',
    ],
    ['--phase base --start 2027-01-11', '--phase is for one week alone; a season is asked for with --start.'],
    ['--rise 8', '--date is missing.'],
    ['--date 2027-02-29', `--date is "2027-02-29"; ${wrongDate}`],
    [
      '--week-of 2027-01-13 --hours 25 --unit yard',
      '--hours is 25; allowed: 0.5 to 20.\n--unit is "yard"; allowed: km or mile.',
    ],
    ['--week-of 2027-01-13 --race-date 2027-01-01', '--race is missing.'],
    ['--week-of 2027-01-13 --equipment rope', '--equipment[0] is "rope"; allowed: band, dumbbells, barbell, or none.'],
    ['--week-of 2027-01-13 --days 60', '--days has 1; it has to have 7.'],
    ['--week-of 2027-01-13 --method gone.json', '--method could not be read from "gone.json" (there is no such file).'],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`${command} ${options}`.trim().split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it('names them in German', async () => {
    const missing = await ran([command, '--lang', 'de']);
    expect([missing.code, missing.output]).toEqual([2, '']);
    expect(missing.errors).toBe(
      '--week-of fehlt: Es nennt die Woche. Oder es geht um eine Saison, mit --date, --start oder --weeks.\n',
    );
    const both = await ran(`${command} --week-of 2027-01-13 --date 2027-04-11 --lang de`.split(' '));
    expect(both.errors).toBe('--week-of gilt nur für eine einzelne Woche; um eine Saison geht es wegen --date.\n');
  });

  it('has no --json: the answer is a file already', async () => {
    const { code, output, errors } = await ran([command, '--week-of', '2027-01-13', '--json']);
    expect([code, output]).toEqual([2, '']);
    expect(errors).toMatch(/^--json is not an option here\. Allowed: --hours, /);
  });

  it.each([
    ['en', 'Weeks of which the sessions are for any day, as they do not fit on the days given: 2027-01-11.\n'],
    [
      'de',
      'Wochen, deren Einheiten für irgendeinen Tag gelten, weil sie nicht auf die angegebenen Tage passen: 2027-01-11.\n',
    ],
  ])('says in %s beside the file where sessions do not fit on the days', async (lang, expected) => {
    const line = `${command} --hours 4 --week-of 2027-01-13 --lang ${lang}`;
    const { code, output, errors } = await ran(`${line} --days 30,0,0,0,0,0,0`.split(' '));
    expect([code, errors]).toEqual([0, expected]);
    expect(output).toBe(await pageOf(line));
  });

  it.each([
    ['en', /^ {2}--week-of DATE +a day of the week that is asked for$/m],
    ['de', /^ {2}--week-of DATE +ein Tag der Woche, um die es geht$/m],
  ])('has help in %s, with an example', async (lang, option) => {
    const output = await pageOf([command, '--help', '--lang', lang]);
    expect(output).toMatch(new RegExp(`^ {2}weekwright ${command} --hours 4 .*--week-of 2027-01-11.* > week\\.`, 'm'));
    expect(output).toMatch(new RegExp(`^ {2}weekwright ${command} --hours 4 .*--date 2027-04-11 .* > season\\.`, 'm'));
    expect(output).toMatch(option);
    for (const name of ['days', 'date', 'race', 'equipment', 'lang'])
      expect(output).toMatch(new RegExp(`^ {2}--${name} `, 'm'));
    expect(output).not.toMatch(/--json|option\.|\.about|[{}]/);
  });

  it.each(['week', 'season'])('has an example of a %s that is answered', async (what) => {
    const help = await pageOf([command, '--help']);
    const [, line = ''] = new RegExp(`^ {2}weekwright (.*) > ${what}\\.`, 'm').exec(help) ?? [];
    expect(await pageOf(line)).not.toBe('');
  });
});

describe('weekwright calendar with wrong options of its own', () => {
  it.each<[string, string]>([
    ['--early 06:00', '--at is missing.'],
    ['--at 6:00', '--at is "6:00"; it has to be a time of day such as 18:00.'],
    ['--at 24:00', '--at is "24:00"; it has to be a time of day such as 18:00.'],
    ['--at 18:00 --early 7am', '--early is "7am"; it has to be a time of day such as 18:00.'],
    ['--at 18:00 --early 18:30', '--early is 18:30; allowed: before --at, which is 18:00.'],
    ['--at 06:00', '--early is 07:00; allowed: before --at, which is 06:00.'],
    [`--name ${'n'.repeat(61)}`, '--name is too long; allowed: 60 at most.'],
    [`--contact ${'c'.repeat(201)}`, '--contact is too long; allowed: 200 at most.'],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`calendar --week-of 2027-01-13 ${options}`.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it.each<[string, string]>([
    ['--at 25:00', '--at ist "25:00"; nötig ist eine Uhrzeit wie 18:00.'],
    ['--at 18:00 --early 18:00', '--early ist 18:00; erlaubt: vor --at, und das ist 18:00.'],
  ])('%s, in German', async (options, expected) => {
    const { code, errors } = await ran(`calendar --week-of 2027-01-13 --lang de ${options}`.split(' '));
    expect([code, errors]).toEqual([2, `${expected}\n`]);
  });

  it.each(['00:01', '23:59'])('takes %s with an early time before it', async (at) => {
    const { code } = await ran(`calendar --week-of 2027-01-13 --at ${at} --early 00:00`.split(' '));
    expect(code).toBe(0);
  });

  it('takes texts that are just as long as allowed', async () => {
    const line = `calendar --week-of 2027-01-13 --name ${'n'.repeat(60)} --contact ${'c'.repeat(200)}`;
    expect(await pageOf(line)).toContain(`X-WR-CALNAME:${'n'.repeat(60)}`.slice(0, 60));
  });

  it('names what is wrong with the week and with the times at once', async () => {
    const { errors } = await ran('calendar --week-of x --at y --hours 0'.split(' '));
    expect(errors.split('\n').map((line) => line.split(' ')[0])).toEqual(['--week-of', '--at', '--hours', '']);
  });

  it('has times that are none of a table', async () => {
    const { code, errors } = await ran('table --week-of 2027-01-13 --at 18:00'.split(' '));
    expect(code).toBe(2);
    expect(errors).toMatch(/^--at is not an option here\./);
  });
});
