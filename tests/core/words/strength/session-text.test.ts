import { describe, expect, test } from 'vitest';
import type { PlanStrength, StrengthSession } from '../../../../src/plan/strength/document.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import {
  leftOutLines,
  roughMinutes,
  sessionTitle,
  stageName,
  strengthHeadline,
  timeLine,
} from '../../../../src/words/strength/session-text.js';
import { strengthOf } from '../../../reference/strength/strength-door.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const { sessions: made, ...rest } = strengthOf({}, { strength: [40], phase: 'build' });
const [first] = made;
if (!first) throw new Error('there is no session');

const session = (minutes: number, day: number | null): StrengthSession => ({ ...first, minutes, day });
const strength = (...sessions: readonly StrengthSession[]): PlanStrength => ({ ...rest, sessions });

describe('strengthHeadline(words, method, strength)', () => {
  test.each<[string, PlanStrength, string, string]>([
    [
      'two sessions on days',
      strength(session(35, 1), session(40, 4)),
      'Heavier: sessions of 35 minutes on Tuesday and 40 minutes on Friday.',
      'Schwerer: Einheiten von 35 Minuten am Dienstag und 40 Minuten am Freitag.',
    ],
    [
      'two sessions on no days',
      strength(session(35, null), session(40, null)),
      'Heavier: sessions of 35 minutes and 40 minutes.',
      'Schwerer: Einheiten von 35 Minuten und 40 Minuten.',
    ],
    [
      'one session',
      strength(session(30, 0)),
      'Heavier: one session of 30 minutes on Monday.',
      'Schwerer: eine Einheit von 30 Minuten am Montag.',
    ],
    ['none', strength(), 'No strength sessions in this week.', 'In dieser Woche gibt es kein Krafttraining.'],
  ])('of %s', (_, given, expected, other) => {
    expect(strengthHeadline(english, method, given)).toBe(expected);
    expect(strengthHeadline(german, method, given)).toBe(other);
  });

  test('has a name for every stage, and a coach’s own as it is', () => {
    for (const { id } of builtInStrength.stages)
      for (const [words, keys] of languages) {
        expect(leaksIn(stageName(words, method, id), keys)).toEqual([]);
        expect(stageName(words, method, id)).not.toBe(id);
      }
    const [stage] = builtInStrength.stages;
    const own = { ...builtInStrength, stages: stage ? [{ ...stage, id: 'club', name: 'Club nights' }] : [] };
    expect(stageName(german, { ...method, strength: own }, 'club')).toBe('Club nights');
  });
});

describe('sessionTitle(words, session, index)', () => {
  test('counts from one, with the day where there is one', () => {
    expect(sessionTitle(english, session(40, 1), 0)).toBe('Session 1, Tuesday');
    expect(sessionTitle(german, session(40, 6), 1)).toBe('Einheit 2, Sonntag');
    expect(sessionTitle(english, session(40, null), 2)).toBe('Session 3');
  });
});

describe('the times of a session', () => {
  test.each([
    [0, '0 minutes'],
    [60, '1 minute'],
    [74, '1 minute'],
    [75, '1.5 minutes'],
    [300, '5 minutes'],
    [314, '5 minutes'],
  ])('%s seconds are %s', (seconds, expected) => {
    expect(roughMinutes(english, seconds)).toBe(expected);
  });

  test('are what is used, all of it, and what is left', () => {
    const given = { ...first, minutes: 40, seconds: 2250, spare: 150 };
    expect(timeLine(english, given)).toBe('37.5 minutes of 40 minutes; 2.5 minutes to spare.');
    expect(timeLine(german, given)).toBe('37,5 Minuten von 40 Minuten; 2,5 Minuten bleiben übrig.');
  });
});

describe('leftOutLines(words, method, session)', () => {
  const exercise = first.blocks[0]?.exercises[0];
  if (!exercise) throw new Error('there is no exercise');
  const squat = { ...exercise, movement: 'goblet-squat', sets: 2, wishedSets: 2 };
  const block = { exercises: [squat], rest: 90, seconds: 300 };
  const leftOut = [
    { pattern: 'push', movement: 'push-up' },
    { pattern: 'pull', movement: 'band-row' },
  ] as const;

  test('has what did not fit, the most important first', () => {
    const given = { ...first, blocks: [block], leftOut };
    expect(leftOutLines(english, method, given)).toEqual(['Left out for want of time: Push-up and Row with a band.']);
    expect(leftOutLines(german, method, given)[0]).toMatch(/^Keine Zeit für: \S.* und Rudern mit Band\.$/);
  });

  test('has what would have more sets with more time', () => {
    const given = { ...first, blocks: [{ ...block, exercises: [{ ...squat, wishedSets: 3 }] }], leftOut: [] };
    expect(leftOutLines(english, method, given)).toEqual(['With more time, more sets of: Goblet squat.']);
    expect(leftOutLines(german, method, given)).toEqual([expect.stringMatching(/^Mit mehr Zeit mehr Sätze von: \S/)]);
  });

  test('is empty where all fits', () => {
    expect(leftOutLines(english, method, { ...first, blocks: [block], leftOut: [] })).toEqual([]);
  });
});
