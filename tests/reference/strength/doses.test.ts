import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/strength.json' with { type: 'json' };
import evidence from '../../../shared/evidence/evidence.json' with { type: 'json' };
import english from '../../../shared/locales/en.json' with { type: 'json' };
import german from '../../../shared/locales/de.json' with { type: 'json' };
import movements from '../../../shared/movements/movements.json' with { type: 'json' };
import { builtInStrength } from '../../../src/training/method/built-in-strength.js';
import {
  equipmentIds,
  patternIds,
  roleIds,
  type Dose,
  type RoleId,
} from '../../../src/training/method/strength-rules.js';
import { shareOfMaximum } from '../../../src/training/strength/share-of-maximum.js';

/*
 * The doses of strength against those that were published. The numbers of the print stand here or in shared/checks, not in
 * the method; where ours differ the difference is written down.
 */

const { stages, maximum, dose, progress, time, spared } = builtInStrength;
const entry = (id: string) => evidence.find((each) => each.id === id);
const says = (id: string, ...numbers: readonly string[]): void => {
  for (const number of numbers) expect(`${id}: ${entry(id)?.claim}`).toContain(number);
};

function doseOf(stage: string, role: RoleId): Dose {
  const found = stages.find(({ id }) => id === stage)?.doses[role];
  if (!found) throw new Error(`${stage} has no ${role}`);
  return found;
}

/** Per cent of the heaviest single of a set with repetitions in hand. */
const percent = ({ repetitions, in_hand }: Dose): number =>
  Math.round((shareOfMaximum(repetitions + (in_hand ?? NaN), maximum.table) ?? NaN) * 100);

interface Span {
  readonly least: number;
  readonly most: number;
}

/** '2–5 min' as seconds, '30–90 s', '85–100'. */
function span(printed: string): Span {
  const [, least, most, unit] = /^(\d+)–(\d+)(?: (min|s))?$/.exec(printed) ?? [];
  const factor = unit === 'min' ? 60 : 1;
  return { least: Number(least) * factor, most: Number(most) * factor };
}
const covers = ({ least, most }: Span, value: number): boolean => value >= least && value <= most;

/** Which of a printed goal's spans a dose of ours is outside. */
function differences(goal: string, ours: Dose): readonly string[] {
  const row = published.goals.cases.find(({ in: { goal: named } }) => named === goal);
  if (!row) throw new Error(`no goal ${goal}`);
  const { pct1RM, reps, sets, rest } = row.out;
  return [
    ...(covers(span(pct1RM), percent(ours)) ? [] : ['load']),
    ...(covers(span(reps), ours.repetitions) ? [] : ['repetitions']),
    ...(covers(span(sets), ours.sets.least) ? [] : ['least sets']),
    ...(covers(span(sets), ours.sets.most) ? [] : ['most sets']),
    ...(covers(span(rest), ours.rest) ? [] : ['rest']),
  ];
}

describe(`doses by goal: ${published.goals.source.cite}`, () => {
  test('heavier lifts are those for strength; 83 % for 85, since two repetitions stay in hand', () => {
    expect(differences('strength', doseOf('heavier', 'main'))).toEqual(['load']);
    expect(percent(doseOf('heavier', 'main'))).toBe(83);
    expect(shareOfMaximum(doseOf('heavier', 'main').repetitions, maximum.table)).toBe(0.87);
  });

  test('explosive lifts are those for power in several efforts; two sets where time is short, printed are three', () => {
    expect(differences('power, multiple effort', doseOf('explosive', 'main'))).toEqual(['least sets']);
    expect(doseOf('explosive', 'main').sets).toEqual({ least: 2, most: 3 });
  });

  test('no stage lifts for power in a single effort: one or two repetitions are nothing for runners alone', () => {
    for (const { id, doses } of stages)
      if (doses.main) expect(differences('power, single effort', doseOf(id, 'main'))).toContain('repetitions');
  });

  test('general lifts are those for growth but for the sets, which are fewer in less time', () => {
    expect(differences('hypertrophy', doseOf('general', 'main'))).toEqual(['least sets']);
  });

  test('every printed goal is held against ours', () => {
    expect(published.goals.cases.map(({ in: { goal } }) => goal)).toEqual([
      'strength',
      'power, single effort',
      'power, multiple effort',
      'hypertrophy',
    ]);
  });
});

describe('doses by the reviews', () => {
  test('two sessions a week, three at most, two to four lifts, up to 200 jumps', () => {
    // A11, Blagrove et al. 2018, doi:10.1007/s40279-017-0835-7; A12, Balsalobre-Fernández et al. 2016.
    says('A11', '2 to 3 sessions a week', '6 to 20 weeks');
    says('A12', '2 to 3 sessions a week', '2 to 4 lifts', 'up to 200 jumps');
    expect(dose.sessions).toEqual({ usual: 2, most: 3 });
    expect(dose.main).toEqual({ least: 2, most: 4 });
    expect(dose.landings).toBe(200);
    expect([dose.status, dose.sources]).toEqual(['published', ['A11', 'A12']]);
  });

  test('loads rise by 2 to 10 % when one or two repetitions more are managed', () => {
    // A02, Ratamess et al. 2009, doi:10.1249/MSS.0b013e3181915670.
    says('A02', '2 to 10 %', 'one or two repetitions more', '60 to 70 %', '8 to 12 repetitions');
    expect([progress.least, progress.most]).toEqual([0.02, 0.1]);
    expect([progress.status, progress.sources]).toEqual(['published', ['A02']]);
  });

  test('newcomers and general preparation lift 60 to 70 %', () => {
    for (const stage of ['first-steps', 'general']) {
      expect(percent(doseOf(stage, 'main'))).toBeGreaterThanOrEqual(60);
      expect(percent(doseOf(stage, 'main'))).toBeLessThanOrEqual(70);
    }
    const novice = doseOf('first-steps', 'main');
    expect(novice.repetitions).toBeGreaterThanOrEqual(8);
    expect(novice.repetitions).toBeLessThanOrEqual(12);
    expect(stages.find(({ id }) => id === 'first-steps')?.doses.jump).toBeNull();
  });

  test('heavier, explosive and upkeep lifts are at 80 % and more', () => {
    // A15, Llanos-Lagos et al. 2024, doi:10.1007/s40279-023-01978-y.
    says('A15', '80 %');
    for (const stage of ['heavier', 'explosive', 'upkeep'])
      expect(percent(doseOf(stage, 'main'))).toBeGreaterThanOrEqual(80);
  });

  test('upkeep keeps the load of heavier lifts and cuts the sets', () => {
    // A25, Spiering et al. 2021, doi:10.1519/JSC.0000000000003964: one set holds strength as long as the load is kept.
    says('A25', 'when the load is kept', 'two from 65 years on');
    for (const role of ['main', 'calf'] as const) {
      const [upkeep, heavier] = [doseOf('upkeep', role), doseOf('heavier', role)];
      expect(percent(upkeep)).toBe(percent(heavier));
      expect(upkeep.sets.least).toBe(1);
      expect(upkeep.sets.most).toBeLessThan(heavier.sets.most);
    }
  });

  test('stages come in the order of the issue: general, heavier, explosive, upkeep', () => {
    const phases = ['base', 'build', 'peak', 'taper', 'off-season', 'recovery'] as const;
    const used = phases.map(
      (phase) => stages.find((each) => !each.levels && (each.phases?.includes(phase) ?? true))?.id,
    );
    expect(used).toEqual(['general', 'heavier', 'explosive', 'upkeep', 'general', 'general']);
  });

  test('what is ours is said to be ours', () => {
    expect(new Set(stages.map(({ status }) => status))).toEqual(new Set(['assumption']));
    expect([time.status, spared.status]).toEqual(['assumption', 'assumption']);
  });

  test('every source is in shared/evidence', () => {
    const known = new Set(evidence.map(({ id }) => id));
    const named = [...stages, time, spared, maximum, progress, dose].flatMap(({ sources }) => sources ?? []);
    expect(named.filter((id) => !known.has(id))).toEqual([]);
    // The notices lean on these: under 18, 65 and over.
    expect([known.has('E14'), known.has('E19')]).toEqual([true, true]);
  });

  test('every session has two lifts or more, and its patterns once', () => {
    const roleOf = (pattern: string) => builtInStrength.patterns.find(({ id }) => id === pattern)?.role;
    for (const session of builtInStrength.sessions) {
      expect(session.filter((pattern) => roleOf(pattern) === 'main').length).toBeGreaterThanOrEqual(dose.main.least);
      expect(new Set(session).size).toBe(session.length);
    }
  });
});

describe('the library of movements', () => {
  const forms = (pattern: string) => movements.filter((each) => each.pattern === pattern);

  test('has three forms or more of every pattern, from easiest to hardest, one of them the easiest there is', () => {
    for (const pattern of patternIds) {
      const grades = forms(pattern).map(({ grade }) => grade);
      expect(grades.length, pattern).toBeGreaterThanOrEqual(3);
      expect([...grades].sort((one, other) => one - other)).toEqual(grades);
      expect(grades[0]).toBe(1);
    }
  });

  test('has a form without equipment for every pattern, up to the second grade', () => {
    for (const pattern of patternIds)
      expect(
        forms(pattern).filter(({ equipment, grade }) => equipment.length === 0 && grade <= 2).length,
      ).toBeGreaterThan(0);
  });

  test('has squats and hinges with dumbbells and with a barbell', () => {
    for (const pattern of ['squat', 'hinge'])
      for (const equipment of ['dumbbells', 'barbell'])
        expect(forms(pattern).some((each) => each.equipment.includes(equipment))).toBe(true);
  });

  test('has weights only where there is something to hold', () => {
    for (const { loaded, held, equipment } of movements)
      if (loaded)
        expect([held, equipment.some((each) => each !== 'band') && equipment.length > 0]).toEqual([false, true]);
  });

  test('cautions at jumps and at the barbell', () => {
    for (const { pattern, equipment, cautions } of movements as readonly {
      pattern: string;
      equipment: string[];
      cautions?: unknown[];
    }[]) {
      if (pattern === 'jump') expect(cautions).toHaveLength(3);
      if (equipment.includes('barbell')) expect(cautions).toContainEqual({ key: 'movement-caution.barbell' });
    }
  });

  test('has all its words in both languages, and says how in a line', () => {
    const keys = movements.flatMap(({ name, how, cautions = [] }) => [name, how, ...cautions].map(({ key }) => key));
    for (const texts of [english, german]) {
      const has = new Map<string, unknown>(Object.entries(texts));
      expect(keys.filter((key) => typeof has.get(key) !== 'string')).toEqual([]);
      for (const { how } of movements) expect(String(has.get(how.key)).length).toBeLessThanOrEqual(90);
      const names = movements.map(({ name }) => has.get(name.key));
      expect(new Set(names).size).toBe(movements.length);
    }
  });

  test('knows all equipment and all roles', () => {
    expect(new Set(movements.flatMap(({ equipment }) => equipment))).toEqual(new Set(equipmentIds));
    expect(new Set(builtInStrength.patterns.map(({ role }) => role))).toEqual(new Set(roleIds));
  });
});
