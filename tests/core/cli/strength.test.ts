import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import library from '../../../shared/movements/movements.json';
import printed from '../../../shared/checks/strength.json';
import type { PlanStrength } from '../../../src/plan.js';
import { linesOf, ran } from './fake-io.js';
import { jsonOf, leaks, pageOf, paragraph } from './pages.js';

const days = '--days 60,0,45,60,0,90,120';
const sessionsOf = (output: string): readonly (readonly string[])[] =>
  output.split('\n\n').flatMap((each) => (/^Session \d/.test(each) ? [each.split('\n')] : []));

/** Minutes of a session's last line of time: used, all, to spare. */
const timesOf = (session: readonly string[]): readonly number[] =>
  (session.find((line) => / to spare\.$/.test(line))?.match(/[\d.]+(?= minutes?)/g) ?? []).map(Number);

describe('weekwright strength', () => {
  it('says first what stage it is and how long the sessions are', async () => {
    const output = await pageOf(`strength --hours 4 ${days}`);
    const [head = ''] = linesOf(output);
    const found = /^Heavier: sessions of (\d+) minutes on (\w+day) and (\d+) minutes on (\w+day)\.$/.exec(head);
    // 75 minutes: common practice, no source.
    expect(Number(found?.[1]) + Number(found?.[3])).toBe(75);
    expect(sessionsOf(output).map(([title]) => title?.replace(/legs.*\)$/, 'legs)'))).toEqual([
      `Session 1, ${found?.[2] ?? ''} (${found?.[1] ?? ''} min, legs)`,
      `Session 2, ${found?.[4] ?? ''} (${found?.[3] ?? ''} min, legs)`,
    ]);
  });

  it('fills every session from warm-up to cool-down, and says what it takes', async () => {
    const sessions = sessionsOf(await pageOf('strength --minutes 50'));
    expect(sessions).toHaveLength(2);
    for (const session of sessions) {
      expect(session[0]).toMatch(/^Session \d \(50 min, legs in full\)$/);
      // Five and three minutes: shared/methods/default.json.
      expect(session[1]).toBe('- Warm-up: 5 minutes, easy movement, then the first lift without weight');
      expect(session).toContain('- Cool-down: 3 minutes, easy movement until the breath is calm');
      const [used = NaN, all, spare = NaN] = timesOf(session);
      expect(all).toBe(50);
      // Each is rounded to half a minute.
      expect(Math.abs(used + spare - 50)).toBeLessThanOrEqual(0.5);
    }
  });

  it('tells two movements in turn as such, and one alone with its rest', async () => {
    const [session = []] = sessionsOf(await pageOf('strength --minutes 50'));
    const at = session.findIndex((line) => /^- In turn, \d+ seconds of rest after both:$/.test(line));
    expect(session.slice(at + 1).filter((line) => /^ {2}- /.test(line)).length).toBeGreaterThanOrEqual(2);
    expect(session[at + 1]).toMatch(/^ {2}- \S.*: \d × \d+.*; effort \d of 10/);
    const jump = session.find((line) => line.startsWith('- Squat jump: ')) ?? '';
    // Jumps of the stage: five repetitions, effort 7, ninety seconds.
    expect(jump).toMatch(/^- Squat jump: \d × 5; effort 7 of 10; 90 seconds of rest$/);
  });

  // Epley 1985 and Brzycki 1993 as worked out in shared/checks/strength.json.
  it.each(printed.maximum.cases.filter((each) => each.in.r > 1 && each.in.r <= 10))(
    'tells what can be lifted: %j',
    async (each) => {
      const { w, r } = each.in;
      const output = await pageOf(`strength --lifted goblet-squat:${w}x${r}`);
      const [low, high] = [each.out.epley, each.out.brzycki].sort((one, other) => one - other);
      const rounded = (value = NaN): string => String(Math.round(value * 10) / 10);
      expect(paragraph(output, /^Weights: what can be lifted\n/)).toEqual([
        'Weights: what can be lifted',
        `- Goblet squat: Heaviest single about ${rounded(low)} to ${rounded(high)} kg, by two equations; the lower is used.`,
      ]);
    },
  );

  it('takes a single for what it is, and ten repetitions for a third more by both equations', async () => {
    const output = await pageOf('strength --lifted goblet-squat:32.5x1,dumbbell-row:30x10');
    expect(paragraph(output, /^Weights: what can be lifted\n/).slice(1)).toEqual([
      '- Goblet squat: Heaviest single 32.5 kg.',
      '- Row with a dumbbell: Heaviest single 40 kg.',
    ]);
  });

  it('tells the weight and what to go on with where a set has told it, else the share', async () => {
    const output = await pageOf(`strength --lifted goblet-squat:100x5`);
    // By hand: 112.5 kg once (Brzycki); five and two in hand are seven, 83 per cent (print): 93.4, down to 92.5 kg.
    // 2 to 10 per cent more are 94.4 to 101.8: 95 to 100 kg.
    const lines = sessionsOf(output).flat();
    const at = lines.findIndex((line) => line.includes('Goblet squat: '));
    expect(lines[at]).toMatch(/Goblet squat: \d × 5, 92\.5 kg; effort 8 of 10, 2 repetitions in hand/);
    expect(lines[at + 1]?.trim()).toBe(
      'One or two repetitions more than asked for, twice in a row: go on with 95 to 100 kg.',
    );
    const other = lines.findIndex((line) => line.includes('Split squat with the back foot raised: '));
    expect(lines[other + 1]).toMatch(/^ +About 83% of the heaviest single\.$/);
    const indent = (line = ''): number => line.length - line.trimStart().length;
    expect(indent(lines[other + 1])).toBe(indent(lines[other]) + 2);
  });

  it('has no weights and nothing that can be lifted without equipment', async () => {
    const output = await pageOf('strength --equipment none');
    expect(sessionsOf(output).flat().join('\n')).not.toMatch(/\d kg|heaviest single/);
    expect(output).not.toContain('Weights: what can be lifted');
    expect(output).not.toMatch(/^ *(?:- )?\S*(?:dumbbell|band)\b.*×/im);
  });

  it('says what was left out for want of time', async () => {
    const sessions = sessionsOf(await pageOf('strength --minutes 20'));
    expect(sessions.map((session) => session.some((line) => /^Left out for want of time: \S.*\.$/.test(line)))).toEqual(
      [true, true],
    );
    const roomy = await pageOf('strength --minutes 120');
    expect(roomy).not.toMatch(/^(?:Left out|With more time)/m);
  });

  it('says that nothing fits where it does not', async () => {
    const dose = { sets: { least: 9, most: 9 }, repetitions: 12, in_hand: 3, seconds: 20, rest: 600, effort: 5 };
    const stages = defaultMethod.strength.stages.map((stage) => ({
      ...stage,
      doses: { main: dose, calf: dose, support: dose, jump: null },
    }));
    const own = JSON.stringify({ ...defaultMethod, strength: { ...defaultMethod.strength, stages } });
    const output = await pageOf('strength --minutes 5 --method own.json', { files: { 'own.json': own } });
    expect(output).toMatch(/^- Session 1: 5 minutes are too few for a movement with its sets\.$/m);
    expect(output).not.toMatch(/ to spare\./);
    expect(sessionsOf(output)[0]?.[0]).toBe('Session 1 (5 min, legs in full)');
  });

  it('says how every movement of the week is done, once, and what to mind', async () => {
    const output = await pageOf('strength --equipment barbell --form squat=barbell-squat');
    const [, ...lines] = paragraph(output, /^How the movements are done\n/);
    const names = lines.map((line) => /^- ([^:]+): \S/.exec(line)?.[1] ?? '');
    expect(new Set(names).size).toBe(names.length);
    const done = sessionsOf(output)
      .flat()
      .flatMap((line) => /^ *- ([^:]+): \d × /.exec(line)?.[1] ?? []);
    expect([...new Set(done)].sort()).toEqual([...names].sort());
    expect(lines.find((line) => line.startsWith('- Squat with a barbell: '))).toMatch(
      /Learn it with a qualified coach before loads get heavy\.$/,
    );
  });

  it('marks a caution and tells notes first', async () => {
    const output = await pageOf(`strength --age 16 --form pull=dumbbell-row --equipment none`);
    expect(output.split('\n\n')[1]?.split('\n')).toEqual([
      '- Caution: under 18, lift with a qualified person beside you; these numbers are made for adults.',
      '- Sessions are not laid on days: with days, legs are spared before hard runs.',
      '- Row with a dumbbell needs what is not there: the usual form stands in for it.',
      '- A main lift without a weight is not heavy: 15 repetitions stand in for it. Trials that improved running economy used weights, and jumps.',
    ]);
  });

  it('says what the numbers rest on, with status and sources, and ends with what to mind', async () => {
    const output = await pageOf('strength');
    expect(output).toMatch(/\n\nWhat this rests on\nHeavy lifting, 80 per cent and more/);
    const [first, ...sources] = paragraph(output, /^Two published equations for the heaviest single/);
    expect(first).toMatch(/\(published\)$/);
    expect(sources[0]).toMatch(/^ {2}Epley B\. Poundage chart/);
    expect(output).toMatch(
      /\n\nCaution: Pain that grows during a set .*\n\nA planning aid, not medical advice\. .*\n$/,
    );
    expect(output).not.toMatch(leaks);
  });

  it('says which wishes for days cannot hold together', async () => {
    const output = await pageOf('strength --days 60,0,45,60,0,0,0');
    expect(output).toContain('\n\nThese wishes cannot hold together.\n- ');
    expect(output).toMatch(/^Session 1 \(/m);
  });

  it('says where a week has no strength', async () => {
    const splits = defaultMethod.splits.map((split) => ({
      ...split,
      shares: { slow: 0.6, tempo: 0.1, intervals: 0.1, cross: 0.2, strength: 0 },
    }));
    const own = JSON.stringify({ ...defaultMethod, splits, rules: [] });
    const output = await pageOf('strength --method own.json', { files: { 'own.json': own } });
    expect(linesOf(output)[0]).toBe('No strength sessions in this week.');
    expect(output).not.toMatch(/^Session|How the movements/m);
  });

  it('speaks German', async () => {
    const output = await pageOf(`strength ${days} --lifted goblet-squat:100x5 --lang de`);
    expect(linesOf(output)[0]).toMatch(/^Schwerer: Einheiten von \d+ Minuten am \w+ und \d+ Minuten am \w+\.$/);
    expect(output).toMatch(/^Einheit 1, \w+tag \(\d+ min, Beine \w+\)\n- Aufwärmen: /m);
    expect(output).toMatch(/: \d × 5, 92,5 kg; Anstrengung 8 von 10, 2 Wiederholungen blieben übrig$/m);
    expect(output).toMatch(/^- Im Wechsel, nach beiden \d+ Sekunden Pause:$/m);
    expect(output).toContain('\nWie die Übungen gehen\n- ');
    expect(output).not.toMatch(leaks);
  });

  it.each(['off-season', 'base', 'build', 'peak', 'taper', 'recovery'])('leaves no gap in %s', async (phase) => {
    for (const level of ['new', 'developing', 'trained', 'elite'])
      for (const lang of ['en', 'de'])
        expect(await pageOf(`strength --phase ${phase} --level ${level} --lang ${lang}`)).not.toMatch(leaks);
  });
});

describe("weekwright strength by a coach's method", () => {
  const [press] = library.filter(({ id }) => id === 'dumbbell-press');
  const own = {
    ...defaultMethod,
    id: 'own',
    strength: {
      ...defaultMethod.strength,
      equipment: [],
      movements: [{ ...press, id: 'sack-lift', name: 'Sack lift', how: 'Lift a sack.', equipment: [], grade: 3 }],
    },
  };
  const world = { files: { 'own.json': JSON.stringify(own) } };

  it('has the equipment and the movements of a section of its own', async () => {
    const output = await pageOf('strength --minutes 90 --form push=sack-lift --method own.json', world);
    expect(output).toMatch(/- Sack lift: \d × \d+/);
    expect(output).toContain('\n- Sack lift: Lift a sack.');
    expect(output).not.toMatch(/: \d × .* kg/);
    const document = (await jsonOf('strength --method own.json', world)) as PlanStrength & { method: { id: string } };
    expect([document.method.id, document.wishes.equipment]).toEqual(['own', []]);
  });

  it('refuses a movement of the coach that is not there', async () => {
    const { code, errors } = await ran(['strength', '--form', 'push=sack-lift']);
    expect([code, errors]).toEqual([
      2,
      '--form (push) is "sack-lift"; allowed: wall-push-up, push-up, or dumbbell-press.\n',
    ]);
  });
});

describe('weekwright strength --json', () => {
  it('is a document of its own kind, the same in every language', async () => {
    const document = await jsonOf('strength');
    expect(document).toMatchObject({
      format: 'weekwright-strength',
      version: 1,
      method: { id: 'weekwright' },
      inputs: { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 },
      wishes: { equipment: ['band', 'dumbbells'], minutes: null, forms: {}, lifted: [], age: null },
      stage: 'heavier',
    });
    expect(await ran(['strength', '--json', '--lang', 'de'])).toEqual(await ran(['strength', '--json']));
  });
});

describe('weekwright strength --help', () => {
  it('lists every option with what is allowed, and every movement by its id', async () => {
    const output = await pageOf('strength --help');
    for (const [synopsis, says] of [
      ['--hours HOURS', 'hours a week, 0\\.5 to 20; 4 where left out'],
      ['--days MINUTES,…', 'minutes available'],
      ['--equipment EQUIPMENT,…', '.*band, dumbbells, barbell, or none; band,dumbbells where left out'],
      ['--minutes MINUTES', 'minutes of every session, 5 to 180; as planned'],
      ['--form PATTERN=MOVEMENT,…', 'movements chosen'],
      ['--lifted MOVEMENT:KILOGRAMSxREPETITIONS,…', 'sets .*1 to 500 kilograms, 1 to 10 times'],
      ['--age YEARS', 'in years, 5 to 110'],
      ['--method FILE', ''],
      ['--json', ''],
      ['--lang LANGUAGE', ''],
      ['--help', ''],
      ['--version', ''],
    ] as const)
      expect(output).toMatch(new RegExp(`^ {2}${synopsis} +${says}`, 'm'));
    for (const { id, pattern } of library) expect(output).toMatch(new RegExp(`^ {2}${pattern} .*\\b${id}\\b`, 'm'));
    expect(output).not.toMatch(/--(?:roster|race|weeks|weight)\b/);
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it('is there in German', async () => {
    const output = await pageOf('strength --help --lang de');
    expect(output).toMatch(/^ {2}--minutes MINUTES +Minuten jeder Einheit, 5 bis 180/m);
    expect(output).toMatch(/^Bewegungsmuster und ihre Übungen$/m);
    expect(output).not.toMatch(/option\.|[{}]/);
  });
});
