import { describe, expect, it } from 'vitest';
import { planWeek, type ChecksRequest, type PlanRequest } from '../../../src/plan.js';
import { linesOf, ran } from './fake-io.js';
import { jsonOf } from './pages.js';

/** What `--json` should print for a request. */
function documentFor(checks: ChecksRequest, others: PlanRequest = {}): unknown {
  const plan = planWeek({ ...others, checks });
  if (!plan.ok || !plan.value.load) throw new Error('nothing was checked');
  const { method, inputs, load, checks: made } = plan.value;
  return JSON.parse(JSON.stringify({ format: 'weekwright-checks', version: 1, method, inputs, load, checks: made }));
}

const week = { days: [60, 0, 45, 60, 0, 90, 120] };

describe('the options of weekwright checks', () => {
  it.each<[string, ChecksRequest, PlanRequest?]>([
    ['', {}],
    ['--hours-before 3.5', { hoursBefore: 3.5 }],
    ['--longest-run 62.5', { longestRun: 62.5 }],
    ['--loads 1200', { weeks: [[1200]] }],
    ['--loads 1200;1300', { weeks: [[1200], [1300]] }],
    ['--loads 300,0,300,0,200,0,500;1100', { weeks: [[300, 0, 300, 0, 200, 0, 500], [1100]] }],
    ['--effort slow=2', { efforts: { slow: 2 } }],
    ['--effort slow=2.5,strength=7', { efforts: { slow: 2.5, strength: 7 } }],
    ['--answers known-disease', { answers: ['known-disease'] }],
    ['--answers not-active,pregnant', { answers: ['not-active', 'pregnant'] }],
    ['--hours 6 --phase peak --level trained', {}, { hours: 6, phase: 'peak', level: 'trained' }],
    ['--hours 10 --event 10k --strength-cap 90', {}, { hours: 10, event: '10k', strengthCap: 90 }],
    ['--days 60,0,45,60,0,90,120', {}, { week }],
    ['--days 60,0,45,60,0,90,120 --loads 9,0,0,0,0,0,0', { weeks: [[9, 0, 0, 0, 0, 0, 0]] }, { week }],
    // The ends of what is allowed.
    ['--age 5', { age: 5 }],
    ['--age 110', { age: 110 }],
    ['--hours-before 0.25', { hoursBefore: 0.25 }],
    ['--hours-before 60', { hoursBefore: 60 }],
    ['--longest-run 5', { longestRun: 5 }],
    ['--longest-run 1440', { longestRun: 1440 }],
    ['--loads 0', { weeks: [[0]] }],
    ['--loads 20000', { weeks: [[20_000]] }],
    [`--loads ${Array(12).fill('900').join(';')}`, { weeks: Array.from({ length: 12 }, () => [900]) }],
    [
      '--effort slow=0,tempo=10,intervals=10,cross=0,strength=0',
      { efforts: { slow: 0, tempo: 10, intervals: 10, cross: 0, strength: 0 } },
    ],
  ])('%s', async (options, checks, others) => {
    expect(await jsonOf(`checks ${options}`.trim())).toEqual(documentFor(checks, others));
  });

  it('may have spaces between entries, in quotes', async () => {
    const argv = ['checks', '--loads', '900; 300, 0, 300, 0, 200, 0, 500', '--effort', 'slow = 2, tempo=6'];
    expect(await jsonOf([...argv, '--answers', 'pain, pregnant'])).toEqual(
      documentFor({ weeks: [[900], [300, 0, 300, 0, 200, 0, 500]], efforts: { slow: 2, tempo: 6 } }),
    );
  });

  it.each(['season', 'running', 'strength', 'plan', 'basis'])('%s has no option of answers', async (command) => {
    const { code, errors } = await ran([command, '--answers', 'symptoms']);
    expect(code).toBe(2);
    expect(errors).toMatch(/^--answers is not an option here/);
  });
});

describe('weekwright checks with wrong options', () => {
  const answers =
    'symptoms, bone-pain, known-disease, not-active, easy-only, pain, pregnant, recent-birth, or low-energy';
  const kinds = 'slow, tempo, intervals, cross, or strength';

  it.each<[string, string]>([
    ['--age 4', '--age is 4; allowed: 5 to 110.'],
    ['--age 111', '--age is 111; allowed: 5 to 110.'],
    ['--age 17.5', '--age is 17.5; allowed: steps of 1.'],
    ['--age old', '--age is "old"; it has to be a number.'],
    ['--hours-before 0.2', '--hours-before is 0.2; allowed: 0.25 to 60.'],
    ['--hours-before 60.1', '--hours-before is 60.1; allowed: 0.25 to 60.'],
    ['--hours-before 3,5', '--hours-before is "3,5"; it has to be a number.'],
    ['--longest-run 4', '--longest-run is 4; allowed: 5 to 1,440.'],
    ['--longest-run 1441', '--longest-run is 1441; allowed: 5 to 1,440.'],
    ['--longest-run 1:00', '--longest-run is "1:00"; it has to be a number.'],
    ['--loads 20001', '--loads (week 1) is 20001; allowed: 0 to 20,000.'],
    ['--loads 900;-1', '--loads (week 2) is -1; allowed: 0 to 20,000.'],
    ['--loads 900;', '--loads (week 2) is ""; it has to be a number.'],
    ['--loads 900;1,2', '--loads (week 2) has 2; it has to have seven days, or one number for the week.'],
    ['--loads 1,2,3,4,5,6', '--loads (week 1) has 6; it has to have seven days, or one number for the week.'],
    ['--loads 1,2,3,4,5,6,7,8', '--loads (week 1) is too long; allowed: 7 at most.'],
    ['--loads 1,2,x,4,5,6,7', '--loads (week 1, Wednesday) is "x"; it has to be a number.'],
    ['--loads 900;1,2,3,4,5,6,20001', '--loads (week 2, Sunday) is 20001; allowed: 0 to 20,000.'],
    [`--loads ${Array(13).fill('900').join(';')}`, '--loads is too long; allowed: 12 at most.'],
    ['--effort slow', '--effort (slow) is ""; it has to be a number.'],
    ['--effort slow=11', '--effort (slow) is 11; allowed: 0 to 10.'],
    ['--effort slow=-1', '--effort (slow) is -1; allowed: 0 to 10.'],
    ['--effort slow=3=4', '--effort (slow) is "3=4"; it has to be a number.'],
    ['--effort swim=3', `--effort is "swim"; allowed: ${kinds}.`],
    ['--effort __proto__=3', `--effort is "__proto__"; allowed: ${kinds}.`],
    ['--effort slow=3,slow=4', '--effort is "slow", which is taken already; each name stands once.'],
    ['--answers yes', `--answers[0] is "yes"; allowed: ${answers}.`],
    ['--answers pain,', `--answers[1] is ""; allowed: ${answers}.`],
    ['--hours 25', '--hours is 25; allowed: 0.5 to 20.'],
    ['--days 60', '--days has 1; it has to have 7.'],
    ['--loads', '--loads needs a value.'],
    ['--age 40 --age 41', '--age stands there twice; allowed: once.'],
    [
      '--race 10k=45:00',
      '--race is not an option here. Allowed: --hours, --phase, --level, --event, --strength-cap, --days, --hours-before, --longest-run, --age, --loads, --effort, --answers, --method, --json, --lang, --help, --version.',
    ],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`checks ${options}`.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it('names every fault at once, in the language asked for', async () => {
    const line =
      'checks --hours 30 --age 4 --hours-before 0 --longest-run x --loads 1,2,3,x,5,6,7;1,2 --effort slow=11 --lang de';
    const { code, errors } = await ran(line.split(' '));
    expect([code, ...linesOf(errors)]).toEqual([
      2,
      '--hours ist 30; erlaubt: 0,5 bis 20.',
      '--age ist 4; erlaubt: 5 bis 110.',
      '--hours-before ist 0; erlaubt: 0,25 bis 60.',
      '--longest-run ist "x"; nötig ist eine Zahl.',
      '--loads (Woche 1, Donnerstag) ist "x"; nötig ist eine Zahl.',
      '--effort (slow) ist 11; erlaubt: 0 bis 10.',
    ]);
  });

  it('says what is wrong with a method file', async () => {
    const { code, errors } = await ran('checks --method gone.json'.split(' '));
    expect([code, linesOf(errors).length]).toEqual([2, 1]);
    expect(errors).toMatch(/gone\.json/);
  });
});
