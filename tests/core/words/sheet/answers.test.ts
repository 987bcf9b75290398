import { describe, expect, it } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { workWeekBackwards } from '../../../../src/plan/scenarios/questions.js';
import type { Because, Nearest } from '../../../../src/sheet/explore/nearest.js';
import type { Solution } from '../../../../src/sheet/explore/solutions.js';
import type { WorkedBack } from '../../../../src/sheet/explore/work-backwards.js';
import { builtInMethod as method } from '../../../../src/training/method/built-in.js';
import { backwardsLines } from '../../../../src/words/sheet/backwards-lines.js';
import { placeText } from '../../../../src/words/sheet/place-text.js';
import { turningPointLine } from '../../../../src/words/sheet/turning-point-line.js';
import { english, german, languages, leaksIn } from './languages.js';

const hours = { id: 'weekly_hours' };
const stretch = (from: number, to: number, ends: Partial<Solution> = {}): Solution => ({
  from,
  to,
  includesFrom: true,
  includesTo: true,
  ...ends,
});

describe('placeText(words, method, place)', () => {
  it.each<[Solution, string, string]>([
    [stretch(5, 5), '5 hours', '5 Stunden'],
    [stretch(4.875, 5), '4 hours 52.5 minutes to 5 hours', '4 Stunden 52,5 Minuten bis 5 Stunden'],
    [stretch(4, 5, { includesTo: false }), '4 hours to just under 5 hours', '4 Stunden bis knapp unter 5 Stunden'],
    [stretch(6, 20, { includesFrom: false }), 'just over 6 hours to 20 hours', 'knapp über 6 Stunden bis 20 Stunden'],
    [
      stretch(4, 5, { includesFrom: false, includesTo: false }),
      'between 4 hours and 5 hours',
      'zwischen 4 Stunden und 5 Stunden',
    ],
  ])('%o', (solution, inEnglish, inGerman) => {
    expect(placeText(english, method, { input: hours, solution })).toBe(inEnglish);
    expect(placeText(german, method, { input: hours, solution })).toBe(inGerman);
  });

  it('names a choice', () => {
    const place = { input: { id: 'season_phase' }, solution: stretch(4, 4) };
    expect(placeText(english, method, place)).toBe('taper');
  });
});

describe('turningPointLine(words, method, { input, point })', () => {
  it.each([
    [
      { id: 'strength-cap', at: 20 / 3, starts: true, includes: false },
      'Above 6 hours 40 minutes: “Strength cap” begins',
    ],
    [{ id: 'few-hours', at: 3, starts: false, includes: true }, 'From 3 hours: “Few hours” ends'],
    [{ id: 'many-hours', at: 6, starts: true, includes: true }, 'From 6 hours: “Many hours” begins'],
    [{ id: 'many-hours', at: 6, starts: false, includes: false }, 'Above 6 hours: “Many hours” ends'],
  ])('%o', (point, line) => {
    expect(turningPointLine(english, method, { input: 'weekly_hours', point })).toBe(line);
  });

  it('is German in German, and knows splits and choices', () => {
    const cap = { id: 'strength-cap', at: 20 / 3, starts: true, includes: false };
    expect(turningPointLine(german, method, { input: 'weekly_hours', point: cap })).toBe(
      'Über 6 Stunden 40 Minuten: „Obergrenze Kraft“ beginnt',
    );
    const taper = { id: 'split_taper', at: 4, starts: true, includes: true };
    expect(turningPointLine(english, method, { input: 'season_phase', point: taper })).toMatch(
      /^From taper: .*taper.* begins$/,
    );
  });

  it('leaves no key, placeholder or NaN', () => {
    for (const [words, keys] of languages)
      for (const starts of [true, false])
        for (const includes of [true, false]) {
          const point = { id: 'split_recovery', at: NaN, starts, includes };
          expect(leaksIn(turningPointLine(words, method, { input: 'weekly_hours', point }), keys)).toEqual([]);
        }
  });
});

describe('backwardsLines(words, method, answer)', () => {
  const ask = (quantity: string, target: number) => ({
    input: hours,
    quantity,
    target,
    result: workWeekBackwards(builtInPlanner(), hours.id, { quantity, value: target }),
  });
  const none: WorkedBack = { solutions: [], nearest: null, failsSomewhere: false };
  const near = (because: Because, more: Partial<Nearest> = {}): WorkedBack => ({
    ...none,
    nearest: { at: 6.5, value: 117, isReached: true, because, ...more },
  });
  const answer = (result: WorkedBack) => ({ input: hours, quantity: 'strength_minutes', target: 130, result });

  it('says where the goal is reached', () => {
    expect(backwardsLines(english, method, ask('strength_minutes', 90))).toEqual([
      'Minutes of strength: 90 minutes at 5 hours.',
    ]);
    expect(backwardsLines(german, method, ask('strength_minutes', 90))).toEqual([
      'Minuten Krafttraining: 90 Minuten bei 5 Stunden.',
    ]);
    const several = {
      ...none,
      solutions: [stretch(4, 4), stretch(6, 20, { includesFrom: false })],
      failsSomewhere: true,
    };
    expect(backwardsLines(english, method, answer(several))).toEqual([
      'Minutes of strength: 130 minutes at 4 hours or just over 6 hours to 20 hours.',
      'On part of the range it has no value.',
    ]);
  });

  it('says what comes nearest, and which rule holds it', () => {
    expect(backwardsLines(english, method, ask('strength_minutes', 150))).toEqual([
      'Minutes of strength: 150 minutes is not reached. The nearest is 120 minutes, at 6 hours 40 minutes.',
      'There it is held: “Strength cap”.',
    ]);
    expect(backwardsLines(german, method, ask('strength_minutes', 150))[1]).toBe(
      'Dort wird es gehalten: „Obergrenze Kraft“.',
    );
  });

  const jump: Because = { kind: 'jump', at: 6, before: 144, after: 120, switches: [] };
  it.each<[Because, string]>([
    [{ kind: 'end', end: 'most' }, 'There the range of hours a week ends.'],
    [jump, 'There it jumps from 144 minutes to 120 minutes.'],
    [
      { ...jump, switches: ['strength-cap', 'many-hours'] },
      'There it jumps from 144 minutes to 120 minutes: “Strength cap” and “Many hours”.',
    ],
    [{ kind: 'extremum', switches: [] }, 'There it turns back or stays as it is.'],
    [{ kind: 'extremum', switches: ['strength-cap'] }, 'There it is held: “Strength cap”.'],
    [{ kind: 'failure' }, 'Right beside it there is no value.'],
    [{ kind: 'choice' }, 'No other choice comes nearer.'],
    [{ kind: 'constant' }, 'It does not depend on hours a week here.'],
  ])('says why nothing comes nearer: %o', (because, line) => {
    expect(backwardsLines(english, method, answer(near(because)))).toEqual([
      'Minutes of strength: 130 minutes is not reached. The nearest is 117 minutes, at 6 hours 30 minutes.',
      line,
    ]);
    for (const [words, keys] of languages)
      expect(backwardsLines(words, method, answer(near(because))).flatMap((text) => leaksIn(text, keys))).toEqual([]);
    expect(backwardsLines(german, method, answer(near(because)))[1]).not.toBe(line);
  });

  it('says that the nearest is only right beside, and that there is a gap', () => {
    const beside = { ...near({ kind: 'failure' }, { isReached: false }), failsSomewhere: true };
    expect(backwardsLines(english, method, answer(beside))).toEqual([
      'Minutes of strength: 130 minutes is not reached. It comes nearest right beside 6 hours 30 minutes: 117 minutes.',
      'Right beside it there is no value.',
      'On part of the range it has no value.',
    ]);
  });

  it('says that there is no value anywhere', () => {
    expect(backwardsLines(english, method, answer({ ...none, failsSomewhere: true }))).toEqual([
      'Minutes of strength has no value anywhere on the range of hours a week.',
    ]);
  });
});
