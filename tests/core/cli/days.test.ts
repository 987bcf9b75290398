import { csvParseRows } from 'd3-dsv';
import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { planWeek, type Plan } from '../../../src/plan.js';
import { linesOf, ran } from './fake-io.js';

const days = [60, 0, 45, 60, 0, 90, 120];
const option = ['--days', days.join(',')];

/** The lines below a heading, up to the next empty one. */
function below(output: string, heading: string): readonly string[] {
  const lines = linesOf(output);
  const rest = lines.slice(lines.indexOf(heading) + 1);
  return rest.slice(0, rest.indexOf(''));
}

describe('weekwright plan --days', () => {
  it('prints the days with their sessions, what they take, and what the week costs', async () => {
    const { code, output, errors } = await ran(['plan', ...option]);
    expect([code, errors]).toEqual([0, '']);
    const table = below(output, 'The week, day by day');
    expect(table.map((line) => line.split(' ')[0])).toEqual([
      'Monday',
      'Tuesday',
      'Wednesday',
      'Thursday',
      'Friday',
      'Saturday',
      'Sunday',
    ]);
    expect(table[1]).toMatch(/^Tuesday {4}– +day off$/);
    expect(table[2]).toMatch(/^Wednesday {2}[A-Z][\w -]+ \d+ min.* +\d+ of 45 min$/);
    // By hand: seven sessions on five days, so two days have two; nothing else has to clash.
    const clashes = below(output, 'This week costs 2; no week costs less.');
    expect(clashes).toHaveLength(2);
    for (const line of clashes)
      expect(line).toMatch(/^- More than one session on \w+day\. \(costs 1; assumption, adjustable\)$/);
  });

  it('puts the same sessions on the same days as --json', async () => {
    const [shown, document] = [await ran(['plan', ...option]), await ran(['plan', ...option, '--json'])];
    const plan = planWeek({ week: { days } });
    expect(document.output).toBe(`${JSON.stringify(plan.ok && plan.value, null, 2)}\n`);
    const { week } = JSON.parse(document.output) as Plan;
    const minutes = week?.days?.map((sessions) => sessions.map((session) => `${session.minutes} min`)) ?? [];
    const printed = below(shown.output, 'The week, day by day').map((line) => line.match(/\d+ min(?=,| )/g) ?? []);
    expect(printed).toEqual(minutes);
  });

  it('speaks German', async () => {
    const { output } = await ran(['plan', ...option, '--lang', 'de']);
    expect(below(output, 'Die Woche, Tag für Tag')[1]).toMatch(/^Dienstag {4}– +frei$/);
    expect(below(output, 'Diese Woche kostet 2; keine Woche kostet weniger.')[0]).toMatch(
      /^- Mehr als eine Einheit am \w+\. \(kostet 1; Annahme, einstellbar\)$/,
    );
  });

  it('advises on the order where a run and strength share a day', async () => {
    // By hand: six sessions at least on three days, two of them strength, and cross-training can be beside one only.
    const crowded = await ran(['plan', '--days', '0,90,0,90,0,0,120']);
    expect(crowded.output).toMatch(/^Where a run and strength fall on one day: run first/m);
    // Three sessions on seven days.
    const roomy = await ran(['plan', '--hours', '2', '--days', '60,60,60,60,60,60,60']);
    expect(roomy.output).toContain('\nNothing clashes: no week costs less.\n');
    expect(roomy.output).not.toContain('run first');
  });

  it('says which wishes cannot hold together, and what would help', async () => {
    const { code, output } = await ran(['plan', '--days', '60,0,45,60,0,0,0']);
    expect(code).toBe(0);
    const wishes = below(output, 'These wishes cannot hold together.');
    expect(wishes).toContain('- 75 minutes of strength');
    expect(wishes).toContain('- Tuesday is off');
    expect(wishes).toContain('- Wednesday has 45 minutes');
    const help = below(output, 'Any one of these would help');
    expect(help[0]).toMatch(/^- \d+ more minutes on \w+; the week then costs \d+$/);
    expect(output).not.toContain('The week, day by day');
  });

  it('lays no week where no days are given', async () => {
    const { output } = await ran(['plan']);
    expect(output).not.toMatch(/day by day|no week costs less/);
  });

  it("names clashes in a coach's words", async () => {
    const clashes = defaultMethod.week.clashes.map((each) =>
      each.id === 'two-sessions' ? { ...each, says: 'crowded: {days}' } : each,
    );
    const files = { 'own.json': JSON.stringify({ ...defaultMethod, week: { ...defaultMethod.week, clashes } }) };
    const { output } = await ran(['plan', ...option, '--method', 'own.json'], { files });
    expect(output).toMatch(/^- Crowded: \w+day \(costs 1; /m);
  });
});

describe('weekwright plan --roster with days', () => {
  const costs = (output: string): unknown[] => csvParseRows(output).map((row) => [row[0], row.at(-1)]);
  const from = (input: string, ...options: string[]) => ran(['plan', '--roster', '-', ...options], { input });

  it('reads a column of them, and says what each week costs or that nothing fits', async () => {
    const { code, output } = await from(`name,days\nMira,${days.join(' ')}\nOle, 0 0 0 0 0  0 0 \nPia,\n`);
    expect(code).toBe(0);
    expect(costs(output)).toEqual([
      ['name', 'week_cost'],
      ['Mira', '2'],
      ['Ole', 'nothing-fits'],
      ['Pia', ''],
    ]);
  });

  it('takes --days for lines that have none', async () => {
    const noDays = '0 0 0 0 0 0 0';
    const csv = await from(`name,days\nMira,\nOle,${noDays}\n`, ...option);
    const ndjson = await from(`{"name":"Mira"}\n{"name":"Ole","days":[${noDays.replaceAll(' ', ',')}]}`, ...option);
    expect(costs(csv.output).slice(1)).toEqual([
      ['Mira', '2'],
      ['Ole', 'nothing-fits'],
    ]);
    expect(ndjson).toEqual(csv);
  });

  it('takes a whole week from a line of NDJSON too, and gives it back in the plan', async () => {
    const week = { days, longRun: 5 };
    const input = [JSON.stringify({ name: 'a', days }), JSON.stringify({ name: 'b', week })].join('\n');
    const { output } = await from(input, '--json');
    const plans = linesOf(output).map((line) => JSON.parse(line) as Plan);
    const expected = [planWeek({ week: { days } }), planWeek({ week })];
    expect(plans.map((plan) => plan.week)).toEqual(expected.map((plan) => plan.ok && plan.value.week));
    expect(plans[1]?.week?.wishes.longRun).toBe(5);
  });

  it('names the day of a fault as the line has it', async () => {
    const csv = await from('name,days\na,60 x 45 60 0 90 120\nb,60 0\n');
    expect([csv.code, linesOf(csv.errors)]).toEqual([
      2,
      ['Line 2 (a): days (Tuesday) is "x"; it has to be a number.', 'Line 3 (b): days has 2; it has to have 7.'],
    ]);
    const ndjson = await from(
      [
        '{"days":[60,0,45,60,0,90,2000]}',
        '{"days":"60 0 45 60 0 90 120"}',
        '{"week":{"days":[60,0,45,60,0,90,-1]}}',
        '{"days":[60,0,45,60,0,90,120],"week":{"longRun":6}}',
      ].join('\n'),
    );
    expect(linesOf(ndjson.errors)).toEqual([
      'Line 1: days (Sunday) is 2000; allowed: 1,440 or less.',
      'Line 2: days is "60 0 45 60 0 90 120"; it has to be a list.',
      'Line 3: week.days (Sunday) is -1; allowed: 0 or more.',
      'Line 4: days is [60,0,45,60,0,90,120], which is taken already; each name stands once.',
    ]);
  });
});
