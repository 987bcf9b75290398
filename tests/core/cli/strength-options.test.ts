import { describe, expect, it } from 'vitest';
import { planWeek, type PlanRequest, type StrengthRequest } from '../../../src/plan.js';
import { patternIds } from '../../../src/training/method/strength-rules.js';
import { linesOf, ran } from './fake-io.js';
import { jsonOf } from './pages.js';

/** What `--json` should print for a request. */
function documentFor(strength: StrengthRequest, others: PlanRequest = {}): unknown {
  const plan = planWeek({ ...others, strength });
  if (!plan.ok || !plan.value.strength) throw new Error('there is no strength');
  const { method, inputs, strength: made } = plan.value;
  return JSON.parse(JSON.stringify({ format: 'weekwright-strength', version: 1, method, inputs, ...made }));
}

const set = (movement: string, kilograms: number, repetitions: number) => ({ movement, kilograms, repetitions });

describe('the options of weekwright strength', () => {
  it.each<[string, StrengthRequest, PlanRequest?]>([
    ['', {}],
    ['--equipment none', { equipment: [] }],
    ['--equipment barbell', { equipment: ['barbell'] }],
    ['--equipment band,dumbbells,barbell', { equipment: ['band', 'dumbbells', 'barbell'] }],
    ['--form squat=chair-squat', { forms: { squat: 'chair-squat' } }],
    ['--form squat=squat,pull=band-row', { forms: { squat: 'squat', pull: 'band-row' } }],
    ['--lifted goblet-squat:20x8', { lifted: [set('goblet-squat', 20, 8)] }],
    [
      '--lifted goblet-squat:22.5x10,dumbbell-row:15x1',
      { lifted: [set('goblet-squat', 22.5, 10), set('dumbbell-row', 15, 1)] },
    ],
    ['--hours 6 --phase peak --level trained', {}, { hours: 6, phase: 'peak', level: 'trained' }],
    ['--event 10k --strength-cap 90', {}, { event: '10k', strengthCap: 90 }],
    ['--days 60,0,45,60,0,90,120', {}, { week: { days: [60, 0, 45, 60, 0, 90, 120] } }],
    // The ends of what is allowed.
    ['--minutes 5', { minutes: 5 }],
    ['--minutes 180', { minutes: 180 }],
    ['--age 5', { age: 5 }],
    ['--age 110', { age: 110 }],
    ['--lifted goblet-squat:1x1', { lifted: [set('goblet-squat', 1, 1)] }],
    ['--lifted goblet-squat:500x10', { lifted: [set('goblet-squat', 500, 10)] }],
  ])('%s', async (options, strength, others) => {
    expect(await jsonOf(`strength ${options}`.trim())).toEqual(documentFor(strength, others));
  });

  it('may have spaces between entries, in quotes', async () => {
    const argv = ['strength', '--equipment', 'band, barbell', '--form', 'squat=squat, pull=band-row'];
    expect(await jsonOf(argv)).toEqual(
      documentFor({ equipment: ['band', 'barbell'], forms: { squat: 'squat', pull: 'band-row' } }),
    );
  });
});

describe('weekwright strength with wrong options', () => {
  const squats = 'chair-squat, squat, goblet-squat, or barbell-squat';
  const patterns = `${patternIds.slice(0, -1).join(', ')}, or pull`;
  const loaded =
    'goblet-squat, barbell-squat, dumbbell-hinge, barbell-deadlift, dumbbell-split-squat, raised-split-squat, dumbbell-calf-raise, dumbbell-press, or dumbbell-row';

  it.each<[string, string]>([
    ['--equipment rope', '--equipment[0] is "rope"; allowed: band, dumbbells, barbell, or none.'],
    ['--equipment band,rope', '--equipment[1] is "rope"; allowed: band, dumbbells, or barbell.'],
    ['--equipment none,band', '--equipment[0] is "none"; allowed: band, dumbbells, or barbell.'],
    ['--equipment band,', '--equipment[1] is ""; allowed: band, dumbbells, or barbell.'],
    ['--equipment band,band', '--equipment[1] is "band", which is taken already; each name stands once.'],
    ['--equipment band,band,band,band', '--equipment is too long; allowed: 3 at most.'],
    ['--minutes 4', '--minutes is 4; allowed: 5 to 180.'],
    ['--minutes 181', '--minutes is 181; allowed: 5 to 180.'],
    ['--minutes 30.5', '--minutes is 30.5; allowed: steps of 1.'],
    ['--minutes half', '--minutes is "half"; it has to be a number.'],
    ['--form squat', `--form (squat) is ""; allowed: ${squats}.`],
    ['--form squat=lunge', `--form (squat) is "lunge"; allowed: ${squats}.`],
    ['--form squat=bridge', `--form (squat) is "bridge"; allowed: ${squats}.`],
    ['--form squat=squat=squat', `--form (squat) is "squat=squat"; allowed: ${squats}.`],
    ['--form lunge=squat', `--form is "lunge"; allowed: ${patterns}.`],
    ['--form __proto__=squat', `--form is "__proto__"; allowed: ${patterns}.`],
    ['--form squat=squat,squat=goblet-squat', '--form is "squat", which is taken already; each name stands once.'],
    ['--lifted plank:20x8', `--lifted[0].movement is "plank"; allowed: ${loaded}.`],
    ['--lifted goblet-squat:0.5x8', '--lifted[0].kilograms is 0.5; allowed: 1 to 500.'],
    ['--lifted goblet-squat:501x8', '--lifted[0].kilograms is 501; allowed: 1 to 500.'],
    ['--lifted goblet-squat:20x11', '--lifted[0].repetitions is 11; allowed: 1 to 10.'],
    ['--lifted goblet-squat:20x0', '--lifted[0].repetitions is 0; allowed: 1 to 10.'],
    ['--lifted goblet-squat:20x7.5', '--lifted[0].repetitions is 7.5; allowed: steps of 1.'],
    ['--lifted goblet-squat:20x8x2', '--lifted[0].repetitions is "8x2"; it has to be a number.'],
    ['--lifted goblet-squat:20x8:2', '--lifted[0].repetitions is "8:2"; it has to be a number.'],
    [
      '--lifted goblet-squat',
      '--lifted[0].kilograms is ""; it has to be a number.\n--lifted[0].repetitions is ""; it has to be a number.',
    ],
    [
      '--lifted goblet-squat:20x8,goblet-squat:10x8',
      '--lifted[1].movement is "goblet-squat", which is taken already; each name stands once.',
    ],
    ['--age 4', '--age is 4; allowed: 5 to 110.'],
    ['--age 111', '--age is 111; allowed: 5 to 110.'],
    ['--age 17.5', '--age is 17.5; allowed: steps of 1.'],
    ['--hours 25', '--hours is 25; allowed: 0.5 to 20.'],
    ['--days 60', '--days has 1; it has to have 7.'],
    ['--minutes', '--minutes needs a value.'],
    ['--minutes 30 --minutes 40', '--minutes stands there twice; allowed: once.'],
    [
      '--race 10k=45:00',
      '--race is not an option here. Allowed: --hours, --phase, --level, --event, --strength-cap, --days, --equipment, --minutes, --form, --lifted, --age, --method, --json, --lang, --help, --version.',
    ],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`strength ${options}`.split(' '));
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: `${expected}\n` });
  });

  it('names every fault at once, those of the week too, in the language asked for', async () => {
    const line = 'strength --minutes 4 --equipment rope --form squat=x --lifted goblet-squat:xx8 --hours 30 --lang de';
    const { code, errors } = await ran(line.split(' '));
    expect([code, ...linesOf(errors)]).toEqual([
      2,
      '--hours ist 30; erlaubt: 0,5 bis 20.',
      '--equipment[0] ist "rope"; erlaubt: band, dumbbells, barbell oder none.',
      '--minutes ist 4; erlaubt: 5 bis 180.',
      '--form (squat) ist "x"; erlaubt: chair-squat, squat, goblet-squat oder barbell-squat.',
      '--lifted[0].kilograms ist ""; nötig ist eine Zahl.',
      '--lifted[0].repetitions ist "x8"; nötig ist eine Zahl.',
    ]);
  });

  it('says what is wrong with a method file', async () => {
    const { code, errors } = await ran('strength --method gone.json'.split(' '));
    expect([code, linesOf(errors).length]).toEqual([2, 1]);
    expect(errors).toMatch(/gone\.json/);
  });

  it.each(['plan', 'season', 'running'])('%s has no option of equipment', async (command) => {
    const { code, errors } = await ran([command, '--equipment', 'band']);
    expect(code).toBe(2);
    expect(errors).toMatch(/^--equipment is not an option here/);
  });
});
