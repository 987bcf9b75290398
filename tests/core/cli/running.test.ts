import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import printed from '../../../shared/checks/running.json';
import { speedByNewton, uptakeByPrint } from '../../reference/running/race-reference.js';
import { onClock, paceAt } from './by-print.js';
import { linesOf } from './fake-io.js';
import { cellsOf, leaks, pageOf, paragraph } from './pages.js';

const tenKilometres = 'running --race 10k=45:00';

describe('weekwright running', () => {
  // Daniels and Gilbert 1979 once more: tests/reference/running/race-reference.ts.
  const uptake = uptakeByPrint(10_000, 2700);

  it('says first at what pace slow runs go and how far the week goes, then how each kind is run', async () => {
    const output = await pageOf(tenKilometres);
    const slow = `${paceAt(uptake, 0.74)} to ${paceAt(uptake, 0.6)}`;
    expect(linesOf(output)[0]).toMatch(new RegExp(`^Slow runs at ${slow} a kilometre: \\d+ to \\d+ km this week\\.$`));
    const [, head, ...rows] = paragraph(output, /^How each kind of run is run\n/);
    expect(cellsOf(head)).toEqual(['Kind', 'Pace a kilometre', 'Effort, 0 to 10', 'By feel']);
    // The shares of shared/methods/default.json.
    expect(rows.map((row) => cellsOf(row).slice(0, 3))).toEqual([
      ['Slow running', `${paceAt(uptake, 0.74)}–${paceAt(uptake, 0.6)}`, '2 to 4'],
      ['Tempo running', `${paceAt(uptake, 0.89)}–${paceAt(uptake, 0.84)}`, '5 to 6'],
      ['Intervals', `${paceAt(uptake, 1)}–${paceAt(uptake, 0.93)}`, '7 to 9'],
    ]);
    expect(rows[0]).toMatch(/so that whole sentences can be spoken$/);
  });

  it('tells every run with its sentence and its distance, and what they come to', async () => {
    const output = await pageOf(`${tenKilometres} --hours 4`);
    const [, ...runs] = paragraph(output, /^The runs of the week\n/);
    // 70, 35 and 25 minutes: common practice, no source.
    const minutes = runs.flatMap((line) => /^- .*, (\d+) min · [\d.]+ to [\d.]+ km$/.exec(line)?.[1] ?? []);
    expect(minutes.reduce((sum, each) => sum + Number(each), 0)).toBe(70 + 35 + 25);
    expect(runs).toHaveLength(2 * minutes.length);
    expect(runs.filter((line) => /^ {2}\S.*\.$/.test(line))).toHaveLength(minutes.length);
    const kilometres = runs.flatMap((line) => / ([\d.]+) to ([\d.]+) km$/.exec(line)?.slice(1).map(Number) ?? []);
    const sumOf = (end: number): number =>
      kilometres.filter((_, index) => index % 2 === end).reduce((sum, each) => sum + each, 0);
    const [week = ''] = paragraph(output, /^All runs of the week together/);
    const [from = 0, to = 0] = (week.match(/[\d.]+(?= to| km)/g) ?? []).map(Number);
    // Each is rounded to a tenth.
    expect(Math.abs(from - sumOf(0))).toBeLessThan(0.05 * (minutes.length + 1));
    expect(Math.abs(to - sumOf(1))).toBeLessThan(0.05 * (minutes.length + 1));
  });

  it('tells a slow run of a known length as far as its speeds go', async () => {
    const output = await pageOf(`${tenKilometres} --days 60,0,45,60,0,90,120`);
    const [, ...lines] = paragraph(output, /^The runs of the week\n/);
    const slow = lines.map((line) => /^- \w+day: Slow running, (\d+) min · (.*)$/.exec(line)).find((found) => found);
    const km = (share: number): string => ((speedByNewton(uptake * share) * Number(slow?.[1])) / 1000).toFixed(1);
    expect(slow?.[2]).toBe(`${km(0.6)} to ${km(0.74)} km`);
    const days = lines.flatMap((line) => /^- (\w+day): /.exec(line)?.[1] ?? []);
    expect(days.length).toBe(lines.length / 2);
  });

  // Riegel 1981: T2 = T1 (D2 / D1)^1.06, as printed and worked out in shared/checks/running.json.
  it.each(printed.riegel.cases.map((each) => each.in))('has equal times by the law of endurance: %j', async (case_) => {
    const { D1, D2, T1 } = case_;
    const output = await pageOf(`running --race ${D1}m=${onClock(T1)}`);
    const rows = paragraph(output, /^Equal times at other distances\n/).slice(3);
    const names: Readonly<Record<number, string>> = {
      5000: '5 km',
      10000: '10 km',
      21097.5: 'half marathon',
      42195: 'marathon',
    };
    const row = rows.map(cellsOf).find(([name]) => name === names[D2]);
    expect(row?.[2]).toBe(onClock(T1 * (D2 / D1) ** 1.06));
    const [from = '', to = ''] = row?.[1]?.replace(/ [¹²]$/, '').split(' to ') ?? [];
    const seconds = (time: string): number => time.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
    expect(seconds(from)).toBeLessThanOrEqual(T1 * (D2 / D1) ** 1.06);
    expect(seconds(to)).toBeGreaterThanOrEqual(T1 * (D2 / D1) ** 1.06);
  });

  it('says which ranges are wider, and why', async () => {
    const lines = paragraph(await pageOf(tenKilometres), /^Equal times at other distances\n/);
    expect(lines[1]).toBe(
      `It implies a greatest oxygen uptake of about ${uptake.toFixed(0)} ml a kilogram a minute; 91% of it is held for 45:00.`,
    );
    expect(cellsOf(lines[2])).toEqual(['Distance', 'Time', 'Law of endurance', 'Oxygen uptake']);
    // Vickers and Vertosick 2016: ten minutes and more; 3:27:01 and ten minutes, to the next minute.
    expect(cellsOf(lines.find((line) => line.startsWith('marathon')))[1]).toBe('3:27:00 to 3:38:00 ¹');
    expect(lines.at(-1)).toMatch(/^¹ For half of marathon runners/);
    expect(cellsOf(lines.find((line) => line.startsWith('10 km')))[1]).toBe('45:00');
  });

  it('has a note for each reason, and none where there is none', async () => {
    // Under 3.5 minutes, where the law of endurance begins.
    const short = paragraph(await pageOf('running --race 1500m=3:29'), /^Equal times/);
    expect(short.flatMap((line) => /^([¹²] \S+)/.exec(line)?.[1] ?? [])).toEqual(['¹ For', '² Outside']);
    expect(short.flatMap((line) => / ([¹²])(?: |$)/.exec(line)?.[1] ?? [])).toEqual([
      '²',
      '²',
      '²',
      '²',
      '²',
      '²',
      '¹',
    ]);
    // A marathon of three hours: each of the others is between 3.5 and 230 minutes.
    const long = paragraph(await pageOf('running --race marathon=3:00:00'), /^Equal times/);
    expect(long.filter((line) => /[¹²]/.test(line))).toEqual([]);
  });

  it('tells heart rates and bands, and where the highest comes from', async () => {
    const output = await pageOf('running --highest-heart 190 --resting-heart 50');
    const [, head, ...rows] = paragraph(output, /^How each kind of run is run\n/);
    expect(cellsOf(head)[1]).toBe('Heart rate');
    // The numbers of tests/core/training/running/heart-rate.test.ts.
    expect(rows.map((row) => cellsOf(row)[1])).toEqual(['128–150', '165–173', '179–190']);
    expect(paragraph(output, /^Highest heart rate/)).toEqual([
      'Highest heart rate 190, as measured.',
      'Ranges by the reserve between resting and highest heart rate.',
      'In short bouts the heart lags behind: go by pace and effort there.',
    ]);
    // Karvonen 1957 with the edges of the position stand: 50 + 0.3 × 140, and so on.
    expect(
      paragraph(output, /^Bands of the position stand\n/)
        .slice(1)
        .map((line) => cellsOf(line)[0]),
    ).toEqual(['light', 'moderate', 'vigorous', 'near maximal to maximal']);
    expect(output).toMatch(/^light +92–/m);
    expect(output).toMatch(/^near maximal to maximal +176–190$/m);
  });

  it('estimates the highest heart rate from the age by both equations', async () => {
    const output = await pageOf('running --age 20');
    // Tanaka 2001 and Gellish 2007 at 20: shared/checks/running.json.
    expect(output).toContain(
      '\nHighest heart rate about 194, estimated from the age (Tanaka 2001 194 and Gellish 2007 193). For about one person in three such an estimate is off by more than 7 to 12 beats: a measured one is better.\nRanges by the highest heart rate alone; with the resting one they fit better.\n',
    );
  });

  it('goes by feel where no pace is known, with nothing that is not known', async () => {
    const output = await pageOf('running');
    expect(linesOf(output)[0]).toBe(
      'A race or a threshold pace gives paces and distances; until then runs go by feel.',
    );
    expect(paragraph(output, /^The runs of the week\n/)[2]).toMatch(/so that whole sentences can be spoken\.$/);
    expect(output).not.toMatch(/ km\b|kcal|Equal times|Bands|Highest heart|All runs|Energy of the week/);
    expect(output).toContain('\nWhat this rests on\nSlow running at 60 to 74 per cent');
  });

  it('estimates energy where weight and pace are known', async () => {
    const output = await pageOf(`${tenKilometres} --weight 70`);
    expect(paragraph(output, /^The runs of the week\n/)[1]).toMatch(/ km · \d+ to \d+ kcal$/);
    expect(output).toMatch(/^Energy of the week, cross-training and strength included: about [\d,]+ to [\d,]+ kcal\./m);
    expect(await pageOf('running --weight 70')).not.toMatch(/kcal/);
  });

  it('counts in miles where that is asked for', async () => {
    const output = await pageOf(`${tenKilometres} --unit mile`);
    const perMile = (share: number): string =>
      onClock(Math.round((60 * 1609.344) / speedByNewton(uptake * share) / 5) * 5);
    expect(linesOf(output)[0]).toMatch(
      new RegExp(`^Slow runs at ${perMile(0.74)} to ${perMile(0.6)} a mile: \\d+ to \\d+ mi this week\\.$`),
    );
    expect(cellsOf(paragraph(output, /^How each/)[1])[1]).toBe('Pace a mile');
    expect(paragraph(output, /^The runs of the week\n/)[1]).toMatch(/ mi$/);
  });

  it('marks a caution, tells a note, and says that a race counts before a threshold pace', async () => {
    const output = await pageOf('running --race 10k=45:00 --threshold-pace 4:40 --age 16 --race-date 2026-01-01', {
      today: '2027-01-01',
    });
    expect(output.split('\n\n')[1]?.split('\n')).toEqual([
      '- The race was 365 days ago: after more than 180 days its paces may fit no longer.',
      '- Caution: under 18, plan with a coach trained for young athletes; these numbers are made for adults.',
      '- The race counts while there is one.',
    ]);
  });

  it('says what the numbers rest on, with status and sources, and ends with a caution', async () => {
    const output = await pageOf(tenKilometres);
    const [first, ...sources] = paragraph(output, /^Two published equations give the range/);
    expect(first).toMatch(/\(published\)$/);
    expect(sources[0]).toMatch(/^ {2}Riegel PS\. Athletic records and human endurance\. American Scientist 1981/);
    expect(paragraph(output, /^Slow running at 60|^What this rests on/)[1]).toMatch(/\(assumption, adjustable\)$/);
    expect(output).toMatch(/\n\nA planning aid, not medical advice\. .*\n$/);
    expect(output).not.toMatch(leaks);
  });

  it('says which wishes for days cannot hold together', async () => {
    const output = await pageOf(`${tenKilometres} --days 60,0,45,60,0,0,0`);
    expect(output).toContain('\n\nThese wishes cannot hold together.\n- ');
    expect(output).toMatch(/^Any one of these would help$/m);
    expect(paragraph(output, /^The runs of the week\n/)[1]).toMatch(/^- Slow running, /);
  });

  it('says where a week has no runs', async () => {
    const output = await pageOf(`${tenKilometres} --method own.json`, { files: { 'own.json': strengthOnly } });
    expect(output).toMatch(/^No runs in this week\.$/m);
    expect(linesOf(output)[0]).toMatch(/; no runs this week\.$/);
    expect(output).not.toMatch(/All runs of the week/);
  });

  it('speaks German', async () => {
    const output = await pageOf(`${tenKilometres} --age 40 --weight 70 --lang de`);
    const slow = `${paceAt(uptake, 0.74)} bis ${paceAt(uptake, 0.6)}`;
    expect(linesOf(output)[0]).toMatch(
      new RegExp(`^Langsame Läufe in ${slow} je Kilometer: \\d+ bis \\d+ km in dieser Woche\\.$`),
    );
    expect(cellsOf(paragraph(output, /^Wie jede Art Lauf/)[1])).toEqual([
      'Art',
      'Tempo je Kilometer',
      'Puls',
      'Anstrengung, 0 bis 10',
      'Nach Gefühl',
    ]);
    expect(output).toMatch(/^Alle Läufe der Woche zusammen: [\d,]+ bis [\d,]+ km\.$/m);
    expect(output).toMatch(/^Halbmarathon +1:39:00 bis 1:40:00 +1:39:17 /m);
    expect(output).not.toMatch(leaks);
  });
});

const strengthOnly = JSON.stringify({
  ...defaultMethod,
  splits: defaultMethod.splits.map((split) => ({
    ...split,
    shares: { slow: 0, tempo: 0, intervals: 0, cross: 0.4, strength: 0.6 },
  })),
  rules: [],
});
