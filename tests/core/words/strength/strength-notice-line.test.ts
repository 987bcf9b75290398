import { describe, expect, test } from 'vitest';
import { strengthNoticeCodes, type StrengthNotice } from '../../../../src/plan/strength/document.js';
import { patternIds } from '../../../../src/training/method/strength-rules.js';
import { strengthNoticeLine } from '../../../../src/words/strength/strength-notice-line.js';
import { strengthOf } from '../../../reference/strength/strength-door.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const onDays = strengthOf(
  {},
  {
    days: [[], [{ category: 'strength', minutes: 40 }], [], [{ category: 'strength', minutes: 40 }], [], [], []],
  },
);
const onNone = strengthOf({}, { strength: [40, 40] });

const notice = (
  code: StrengthNotice['code'],
  values: StrengthNotice['values'] = {},
  about: Partial<StrengthNotice> = {},
): StrengthNotice => ({ code, level: 'note', ...about, values });

// Values as in tests/core/plan/strength/strength-notices.test.ts.
const cases: readonly (readonly [StrengthNotice, string, string])[] = [
  [
    notice('one-session', { usual: 2, most: 3 }),
    'One session a week keeps what is there; trials in runners that gained had 2 to 3.',
    'Eine Einheit je Woche erhält, was da ist; in Studien, die Läufern halfen, waren es 2 bis 3.',
  ],
  [
    notice('many-sessions', { count: 4, most: 3 }),
    '4 strength sessions: trials in runners had 3 at most.',
    '4 Krafteinheiten: In Studien mit Läufern waren es höchstens 3.',
  ],
  [
    notice('few-main', { count: 0, least: 2 }, { session: 1 }),
    'Session 2, Thursday: 0 main lifts; trials in runners had at least 2 in a session.',
    'Einheit 2, Donnerstag: 0 Hauptübungen; in Studien mit Läufern waren es mindestens 2 je Einheit.',
  ],
  [
    notice('many-landings', { landings: 240, most: 200 }, { session: 0, level: 'caution' }),
    'Caution: Session 1, Tuesday has 240 landings; trials had 200 at most.',
    'Vorsicht: Einheit 1, Dienstag hat 240 Landungen; in Studien waren es höchstens 200.',
  ],
  [
    notice('not-heavy', { repetitions: 15 }),
    'A main lift without a weight is not heavy: 15 repetitions stand in for it. Trials that improved running economy used weights, and jumps.',
    'Eine Hauptübung ohne Gewicht ist nicht schwer: Dafür stehen 15 Wiederholungen. Studien, in denen die Laufökonomie besser wurde, nutzten Gewichte und Sprünge.',
  ],
  [
    notice('form-out-of-reach', {}, { movement: 'barbell-squat', pattern: 'squat' }),
    'Squat with a barbell needs what is not there: the usual form stands in for it.',
    'Kniebeuge mit Langhantel braucht etwas, das nicht da ist: Dafür steht die übliche Form.',
  ],
  [
    notice('no-movement', {}, { pattern: 'pull' }),
    'There is no form of pull for what there is to train with.',
    'Für das, was vorhanden ist, gibt es keine Form von: Ziehen.',
  ],
  [
    notice('legs-spared', {}, { session: 0 }),
    'Session 1, Tuesday: legs are spared for the hard run on the day or the day after: no jumps, fewer sets of the main lifts.',
    'Einheit 1, Dienstag: Die Beine werden für den harten Lauf am selben oder nächsten Tag geschont: keine Sprünge, weniger Sätze der Hauptübungen.',
  ],
  [
    notice('no-days'),
    'Sessions are not laid on days: with days, legs are spared before hard runs.',
    'Die Einheiten liegen nicht auf Tagen: Mit Tagen werden die Beine vor harten Läufen geschont.',
  ],
  [
    notice('under-18', { age: 17 }, { level: 'caution' }),
    'Caution: under 18, lift with a qualified person beside you; these numbers are made for adults.',
    'Vorsicht: Unter 18 gehört beim Heben eine ausgebildete Person dazu; diese Zahlen sind für Erwachsene gemacht.',
  ],
  [
    notice('from-65', { age: 70, sessions: 2 }),
    'From 65 on two sessions a week keep strength, and guidance asks for balance and strength on three days.',
    'Ab 65 erhalten zwei Einheiten je Woche die Kraft, und empfohlen werden Gleichgewicht und Kraft an drei Tagen.',
  ],
  [
    notice('nothing-fits', { minutes: 5 }, { session: 1 }),
    'Session 2, Thursday: 5 minutes are too few for a movement with its sets.',
    'Einheit 2, Donnerstag: 5 Minuten sind zu wenig für eine Übung mit ihren Sätzen.',
  ],
];

describe('strengthNoticeLine(words, method, { notice, strength })', () => {
  test.each(cases)('%j', (given, expected, other) => {
    expect(strengthNoticeLine(english, method, { notice: given, strength: onDays })).toBe(expected);
    expect(strengthNoticeLine(german, method, { notice: given, strength: onDays })).toBe(other);
  });

  test('counts the movements without a weight', () => {
    const line = (count: number): string =>
      strengthNoticeLine(english, method, { notice: notice('no-weights', { count }), strength: onDays });
    expect(line(1)).toMatch(/^The weight of one movement follows once /);
    expect(line(4)).toMatch(/^The weights of 4 movements follow once /);
  });

  test.each([
    [1, '1 minute is too little for', '1 Minute ist zu wenig für'],
    [2, '2 minutes are too few for', '2 Minuten sind zu wenig für'],
  ])('counts %d minutes that are too few', (minutes, expected, other) => {
    const given = { notice: notice('nothing-fits', { minutes }, { session: 0 }), strength: onNone };
    expect(strengthNoticeLine(english, method, given)).toContain(`: ${expected} a movement`);
    expect(strengthNoticeLine(german, method, given)).toContain(`: ${other} eine Übung`);
  });

  test('names a session without a day by its number', () => {
    const given = { notice: notice('legs-spared', {}, { session: 1 }), strength: onNone };
    expect(strengthNoticeLine(english, method, given)).toMatch(/^Session 2: legs are spared/);
  });

  test('has a case above for every code', () => {
    const covered = new Set([...cases.map(([{ code }]) => code), 'no-weights']);
    expect(strengthNoticeCodes.filter((code) => !covered.has(code))).toEqual([]);
  });

  test('leaves no gap for any code, pattern, number or session in either language', () => {
    const values = {
      usual: 2,
      most: 3,
      least: 2,
      count: 1,
      landings: 240,
      age: 70,
      sessions: 1,
      minutes: 5,
      repetitions: 15,
    };
    for (const code of strengthNoticeCodes)
      for (const count of [0, 1, 2])
        for (const pattern of patternIds)
          for (const strength of [onDays, onNone])
            for (const [words, keys] of languages) {
              const about = { pattern, movement: 'plank', session: 1 };
              const given = { notice: notice(code, { ...values, count }, about), strength };
              expect(leaksIn(strengthNoticeLine(words, method, given), keys)).toEqual([]);
            }
  });
});
