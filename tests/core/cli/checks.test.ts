import { mean, standardDeviation, sum } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import type { CheckResult, PlanLoad } from '../../../src/plan.js';
import { adviceIds } from '../../../src/training/method/check-rules.js';
import { answerIds } from '../../../src/training/checks/screening.js';
import { linesOf, ran } from './fake-io.js';
import { cellsOf, jsonOf, leaks, pageOf, paragraph } from './pages.js';

const days = '--days 60,0,45,60,0,90,120';
const all = `${days} --age 40 --hours-before 3 --longest-run 30 --loads 300,0,300,0,200,0,500;900`;

/** Indented lines belong to the item above them. */
const itemOf = (lines: readonly string[], name: string): readonly string[] => {
  const at = lines.findIndex((line) => line.startsWith(`- ${name}: `));
  const [first, ...rest] = at < 0 ? [] : lines.slice(at);
  const end = rest.findIndex((line) => !line.startsWith('  '));
  return first === undefined ? [] : [first, ...rest.slice(0, end < 0 ? undefined : end)];
};

describe('weekwright checks', () => {
  it('says first what is worth a look, then how many checks are in line', async () => {
    const [head = ''] = linesOf(await pageOf(`checks --hours 4 ${days}`));
    // 36 and 24 of 132 minutes are 45 per cent, where 35 are in line: common practice and studies differ here.
    expect(head).toMatch(/^Worth a look: “Hard share of running minutes”\. In line: (\d+) of (\d+) checks\.$/);
    const [inLine, made] = (head.match(/\d+/g) ?? []).map(Number);
    expect(made).toBe((inLine ?? NaN) + 1);
  });

  it('says of each check how it came out, where it is in line and what would change it', async () => {
    const output = await pageOf(`checks --hours 4 ${all}`);
    // By hand: 60 of 132 minutes; 60 − 0.35 × 132 = 13.8. Four hours are a third more than three, and 3.6 a fifth.
    expect(itemOf(paragraph(output, /^Intensity\n/), 'Hard share of running minutes')).toEqual([
      '- Hard share of running minutes: worth a look. 45.5% of running minutes are tempo and intervals: 36 min and 24 min of 132 min. By sessions it is 2 of 4 runs.',
      '  In line up to 35%; caution above 60%.',
      '  What would change it: 14 min moved from tempo and intervals to slow running.',
    ]);
    expect(itemOf(paragraph(output, /^Progression\n/), 'Hours against the weeks before')).toEqual([
      '- Hours against the weeks before: worth a look. 4 h after 3 h a week: 33.3% more.',
      '  In line up to 20% more.',
      '  What would change it: 24 min less for now.',
    ]);
    // One vigorous minute counts as two moderate ones: World Health Organization 2020.
    expect(itemOf(paragraph(output, /^Health\n/), 'Activity for health')).toEqual([
      '- Activity for health: in line. 36 min of moderate and 132 min of vigorous activity, which together count as 300 min of moderate.',
      '  In line from 150 min on.',
    ]);
  });

  it('has the checks by what they are about, each once', async () => {
    const output = await pageOf(
      `checks --hours 10 --level elite ${all.replace(days, '--days 90,90,90,90,90,120,120')}`,
    );
    const groups = ['Health', 'Intensity', 'Strength', 'Load', 'Progression', 'Recovery'];
    const titles = output.split('\n\n').flatMap((each) => groups.filter((group) => each.startsWith(`${group}\n- `)));
    expect(titles).toEqual(groups);
    const names = groups.flatMap((group) =>
      paragraph(output, new RegExp(`^${group}\n`)).flatMap((line) => /^- ([^:]+): /.exec(line)?.[1] ?? []),
    );
    expect(new Set(names).size).toBe(names.length);
    // Everything but the season, balance from 65 on, and hours under 18.
    expect(names.length).toBe(defaultMethod.checks.list.length - 4);
  });

  it('says what would have to be told for the others, in a line each', async () => {
    const lines = paragraph(await pageOf('checks'), /^Not known yet\n/);
    expect(lines).toEqual([
      'Not known yet',
      '- Tell the loads of your own weeks to see it. (Load against your own weeks)',
      expect.stringMatching(/^- Lay the sessions on days to see it\. \(.*Days of rest, .*\)$/),
      '- Tell the hours of your weeks so far to see it. (Hours against the weeks before)',
      '- Tell your longest run of the last 30 days to see it. (Longest run against the last 30 days)',
      '- Plan a season to see it. (Steepest week of the season and Longest runs of the season)',
    ]);
  });

  it('has the load of the week alone while it lies on no days', async () => {
    const output = await pageOf('checks');
    const table = paragraph(output, /^How hard the week is\n/);
    expect(
      table.filter((line) => /^(?:Number|Load of the week|Mean|Standard|Monotony|Strain) /.test(line)),
    ).toHaveLength(2);
    expect(output).not.toContain('Load of each day');
  });

  it('has the load of each day, and its spread as another library works it out, beside the own weeks', async () => {
    const output = await pageOf(`checks ${all}`);
    const loads = paragraph(output, /^Load of each day\n/)
      .slice(1)
      .map((line) => Number(cellsOf(line)[1]?.replace(',', '')));
    expect(loads).toHaveLength(7);
    const own = [300, 0, 300, 0, 200, 0, 500];
    const ratio = (list: readonly number[]): number => mean([...list]) / standardDeviation([...list]);
    const whole = (value: number): string => Math.round(value).toLocaleString('en');
    const tenth = (value: number): string => String(Math.round(value * 10) / 10);
    const table = paragraph(output, /^How hard the week is\n/).map(cellsOf);
    expect(table[1]).toEqual(['Number', 'This week', 'Your own weeks', 'How']);
    // The own weeks have 1300 and 900.
    expect(table[2]?.slice(0, 3)).toEqual(['Load of the week', whole(sum(loads)), '1,100']);
    expect(table[3]?.slice(0, 2)).toEqual(['Mean of a day', whole(mean(loads))]);
    expect(table[4]?.slice(0, 2)).toEqual(['Standard deviation', whole(standardDeviation(loads))]);
    expect(table[5]?.slice(0, 3)).toEqual(['Monotony', tenth(ratio(loads)), tenth(ratio(own))]);
    expect(table[6]?.slice(0, 3)).toEqual(['Strain', whole(sum(loads) * ratio(loads)), whole(1300 * ratio(own))]);
  });

  it('counts efforts that were told', async () => {
    const line = 'checks --effort slow=1,tempo=1,intervals=1,cross=1,strength=1';
    // Four hours of effort 1.
    expect(cellsOf(paragraph(await pageOf(line), /^How hard the week is\n/)[2])[1]).toBe('240');
  });

  it('says what each check rests on with its sources, and what that does not say', async () => {
    const output = await pageOf(`checks ${all}`);
    const lines = paragraph(output, /^Hours against the weeks before: /);
    expect(lines[0]).toMatch(/: In 261 runners .* \(assumption, adjustable\)$/);
    expect(lines[1]).toMatch(/^ {2}Buist I, .*\. doi:10\.1177\/0363546507307505$/);
    expect(lines.at(-1)).toMatch(/^What the source does not say: It was distance, not hours\./);
    const found = output
      .split('\n')
      .flatMap((line) => /^- ([^:]+): (?:in line|worth a look|caution)\. /.exec(line)?.[1] ?? []);
    const founded = output
      .split('\n\n')
      .flatMap((each) => /^([^:]+): .*\n[^]*What the source does not say: /.exec(each)?.[1] ?? []);
    expect(founded).toEqual(found);
    expect(output).toMatch(/\n\nA planning aid, not medical advice\. .*\n$/);
  });

  it.each([
    [17, 'Caution: Under 18: plan with a coach trained for young athletes; these numbers are made for adults.'],
    [65, 'Caution: From 65 on: balance and strength on three days a week or more.'],
  ])('has the usual caution of the age of %d', async (age, caution) => {
    const [, second = ''] = (await pageOf(`checks --age ${age}`)).split('\n\n');
    expect(second.startsWith(caution)).toBe(true);
  });

  it.each(['', ' --age 18', ' --age 64'])('has none with%s', async (age) => {
    expect(await pageOf(`checks${age}`)).not.toMatch(/^Caution: /m);
  });

  it('says which wishes for days cannot hold together', async () => {
    const output = await pageOf('checks --days 60,0,45,60,0,0,0');
    expect(output).toContain('\n\nThese wishes cannot hold together.\n- ');
    expect(output).not.toContain('Load of each day');
  });

  it('speaks German', async () => {
    const output = await pageOf(`checks --hours 4 ${all} --answers known-disease --lang de`);
    expect(linesOf(output)[0]).toMatch(/^Einen Blick wert: „Harter Anteil der Laufminuten“.* Im Rahmen: \d+ von \d+ /);
    expect(output).toContain('\n- Stunden gegen die Wochen davor: einen Blick wert. 4 h nach 3 h in der Woche: ');
    expect(output).toMatch(
      /: einen Blick wert\. 45,5\s% der Laufminuten sind Tempo und Intervalle: 36 min und 24 min von 132 min\./,
    );
    expect(output).toMatch(/^Belastung jedes Tages\nMontag +\d/m);
    expect(output).toContain(
      '\n\nVor dem Anfangen\n- Mit einer bekannten Krankheit: vor hartem Training ärztlich fragen.',
    );
    expect(output).not.toMatch(leaks);
  });

  it.each(['off-season', 'base', 'build', 'peak', 'taper', 'recovery'])('leaves no gap in %s', async (phase) => {
    for (const level of ['new', 'elite'])
      for (const lang of ['en', 'de'])
        for (const age of ['16', '40', '70'])
          expect(await pageOf(`checks --phase ${phase} --level ${level} --age ${age} --lang ${lang}`)).not.toMatch(
            leaks,
          );
  });
});

describe('weekwright checks with answers', () => {
  const adviceOf = async (answers: string): Promise<readonly string[]> =>
    paragraph(await pageOf(`checks --answers ${answers}`), /^Before you start\n/);

  it.each([
    ['known-disease', 'With a known disease: ask a doctor before hard training.'],
    ['known-disease,easy-only', 'With a known disease and no symptoms, easy to moderate training can go on.'],
    ['not-active', 'Not active in the last months: begin with easy to moderate training'],
    ['easy-only', 'Nothing that was said here stands against starting.'],
  ])('%s: says what they lead to', async (answers, advice) => {
    const lines = await adviceOf(answers);
    expect(lines[1]?.startsWith(`- ${advice}`)).toBe(true);
    expect(lines.at(-1)).toBe('- Local rules and the judgement of licensed practitioners come first.');
  });

  it('has a caution for each that calls for one', async () => {
    const lines = await adviceOf('pain,pregnant,recent-birth,low-energy');
    expect(lines.slice(1, -1).map((line) => line.split(/[:,]/)[0])).toEqual([
      '- Pain in training',
      '- Pregnant',
      '- After a birth',
      '- Too little energy for the training harms health and performance',
    ]);
  });

  it('says nothing of it where none was given', async () => {
    expect(await pageOf('checks')).not.toContain('Before you start');
  });

  it.each([
    [
      'symptoms',
      /^No plan: Do not train now\. These signs need a professional .* get medical help at once\. Local rules and the judgement of licensed practitioners come first\.\n$/,
    ],
    ['bone-pain', /^No plan: Do not train now\. .*\n$/],
    ['symptoms,easy-only,pregnant', /^No plan: Do not train now\. .*\n$/],
    [
      'known-disease,not-active',
      /^No plan: With a known disease, and not active .*: ask a doctor before you start\. Local rules and the judgement of licensed practitioners come first\.\n$/,
    ],
    ['not-active,known-disease,easy-only', /^No plan: With a known disease, and not active .*\n$/],
  ])('%s: there is no plan, in no form, only the advice', async (answers, advice) => {
    for (const more of ['', ` ${all}`, ' --json']) {
      const { code, output, errors } = await ran(`checks --answers ${answers}${more}`.split(' '));
      expect([code, output]).toEqual([2, '']);
      expect(errors).toMatch(advice);
    }
  });

  it('stops in German too, with the other faults', async () => {
    const { code, output, errors } = await ran('checks --hours 30 --answers bone-pain --lang de'.split(' '));
    expect([code, output]).toEqual([2, '']);
    expect(linesOf(errors)).toEqual([
      '--hours ist 30; erlaubt: 0,5 bis 20.',
      expect.stringMatching(
        /^Kein Plan: Jetzt nicht trainieren\. .* ärztliche Hilfe holen\. Örtliche Regeln .* gehen vor\.$/,
      ),
    ]);
  });

  it('never has them in the document', async () => {
    for (const answers of ['known-disease,pain,pregnant,recent-birth,low-energy', 'not-active,easy-only']) {
      const { output } = await ran(['checks', '--answers', answers, '--json']);
      expect(output).toBe((await ran(['checks', '--json'])).output);
      for (const id of answerIds) expect(output).not.toContain(`"${id}"`);
    }
  });
});

describe("weekwright checks by a clinic's method", () => {
  const { screening, list } = defaultMethod.checks;
  const advice = Object.fromEntries(adviceIds.map((id) => [id, `Clinic: ${id}!\u202E`]));
  const own = {
    ...defaultMethod,
    id: 'own',
    checks: {
      ...defaultMethod.checks,
      list: list.map((rule) => (rule.id === 'rest-days' ? { ...rule, name: 'Days in bed' } : rule)),
      screening: { ...screening, advice },
    },
  };
  const world = { files: { 'own.json': JSON.stringify(own) } };

  it('prints its own advice, and nothing that steers a terminal', async () => {
    const { code, output, errors } = await ran('checks --answers symptoms --method own.json'.split(' '), world);
    expect({ code, output, errors }).toEqual({
      code: 2,
      output: '',
      errors: 'No plan: Clinic: stop!\uFFFD Local rules and the judgement of licensed practitioners come first.\n',
    });
    const page = await pageOf('checks --answers not-active --method own.json', world);
    expect(paragraph(page, /^Before you start\n/)[1]).toBe('- Clinic: start-easy!\uFFFD');
  });

  it('has its own names of checks', async () => {
    const output = await pageOf(`checks ${days} --method own.json`, world);
    expect(output).toMatch(/^- Days in bed: in line\. 2 days without training\.$/m);
  });
});

interface ChecksDocument {
  readonly load: PlanLoad;
  readonly checks: readonly CheckResult[];
}

describe('weekwright checks --json', () => {
  it('is a document of its own kind, the same in every language', async () => {
    const document = (await jsonOf(`checks ${all}`)) as ChecksDocument;
    expect(Object.keys(document)).toEqual(['format', 'version', 'method', 'inputs', 'load', 'checks']);
    expect(document).toMatchObject({
      format: 'weekwright-checks',
      version: 1,
      method: { id: 'weekwright' },
      inputs: { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 },
      load: { own: { load: 1100 } },
    });
    expect(document.checks.find(({ id }) => id === 'hours-rise')).toMatchObject({
      group: 'progression',
      level: 'look',
      values: { weekly_hours: 4, hours_before: 3 },
      sources: ['C01', 'C02', 'C03', 'C04'],
    });
    expect(sum([...(document.load.days ?? [])])).toBe(document.load.week);
    const argv = `checks ${all} --json`.split(' ');
    expect(await ran([...argv, '--lang', 'de'])).toEqual(await ran(argv));
  });
});

describe('weekwright checks --help', () => {
  it('lists every option with what is allowed, and every answer with what it means', async () => {
    const output = await pageOf('checks --help');
    for (const [synopsis, says] of [
      ['--hours HOURS', 'hours a week, 0\\.5 to 20; 4 where left out'],
      ['--days MINUTES,…', 'minutes available'],
      ['--age YEARS', 'in years, 5 to 110'],
      ['--hours-before HOURS', 'hours of a usual week in the last month, 0\\.25 to 60'],
      ['--longest-run MINUTES', 'minutes of the longest run in the last 30 days'],
      ['--loads LOAD,…;LOAD,…', 'loads .* 0 to 20,000 each, 12 weeks at most'],
      ['--effort KIND=EFFORT,…', 'how hard sessions of slow, tempo, intervals, cross, strength .* 0 to 10'],
      ['--answers ANSWER,…', 'what is so'],
      ['--method FILE', ''],
      ['--json', ''],
      ['--lang LANGUAGE', ''],
    ] as const)
      expect(output).toMatch(new RegExp(`^ {2}${synopsis} +${says}`, 'm'));
    for (const id of answerIds) expect(output).toMatch(new RegExp(`^ {2}${id} +[A-Z].{5,}`, 'm'));
    expect(output).not.toMatch(/--(?:roster|race|weeks|weight|equipment)\b/);
    expect(output).not.toMatch(/option\.|screening\.|[{}]/);
  });

  it('is there in German', async () => {
    const output = await pageOf('checks --help --lang de');
    expect(output).toMatch(/^ {2}--longest-run MINUTES +Minuten des längsten Laufs in den letzten 30 Tagen$/m);
    expect(output).toMatch(/^Antworten\n {2}symptoms +Schmerz oder Druck in der Brust/m);
    expect(output).not.toMatch(/option\.|screening\.|[{}]/);
  });

  it('leaves the longest run of a season as it is', async () => {
    expect(await pageOf('season --help')).toMatch(/--longest-run MINUTES +.* in the four weeks before the season$/m);
  });
});
