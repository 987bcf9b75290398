import { describe, expect, test } from 'vitest';
import type { StrengthSession } from '../../../../src/plan/strength/document.js';
import type { DaySession } from '../../../../src/plan/week/wishes.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { strengthOf, type MadeUpWeek } from '../../../reference/strength/strength-door.js';
import { movementOf } from '../../training/strength/movements.js';

const day = (category: DaySession['category'], minutes = 40): DaySession => ({ category, minutes });
/** Intervals on Wednesday, the long run on Sunday; strength on Monday and Thursday. */
const week = [[day('strength')], [], [day('intervals')], [day('strength')], [day('slow', 30)], [], [day('slow', 90)]];
/** 'squat 3' for three sets of a movement. */
const movements = ({ blocks }: StrengthSession): readonly string[] =>
  blocks.map(({ exercises }) => exercises.map(({ movement, sets }) => `${movement} ${sets}`).join(' + '));
const only = (given: unknown, made: MadeUpWeek): StrengthSession => {
  const [first] = strengthOf(given, made).sessions;
  if (!first) throw new Error('no session');
  return first;
};

describe('a session of strength', () => {
  // Counted by hand, with 3 seconds a repetition, 45 from block to block and 15 within a pair.
  test('of newcomers without equipment is light, with turns and without jumps', () => {
    const { blocks, ...session } = only({ equipment: [] }, { strength: [35], level: 'new', phase: 'build' });
    expect(movements({ blocks, ...session })).toEqual([
      'squat 2 + step-calf-raise 2',
      'split-squat 2 + bent-knee-calf-raise 2',
      'plank 2 + hip-lift 2',
      'face-down-arm-raise 2',
      'wall-push-up 2',
    ]);
    // 36 + 15 + 36, 15 of rest (60 − 36 − 15 = 9 is less than the way back), 87 again, and 45 to the next.
    expect(blocks[0]).toMatchObject({ rest: 15, seconds: 87 + 15 + 87 + 45 });
    // On each side: 72 + 15 + 36.
    expect(blocks[1]).toMatchObject({ rest: 15, seconds: 123 + 15 + 123 + 45 });
    // Held for 20 seconds; 72 on both sides.
    expect(blocks[2]).toMatchObject({ rest: 15, seconds: 107 + 15 + 107 + 45 });
    expect(blocks[3]).toMatchObject({ rest: 45, seconds: 36 + 45 + 36 + 45 });
    expect(blocks[4]).toMatchObject({ rest: 45, seconds: 36 + 45 + 36 });
    const seconds = 300 + 234 + 306 + 274 + 162 + 117 + 180;
    expect(session).toMatchObject({
      warmUp: 300,
      coolDown: 180,
      seconds,
      spare: 35 * 60 - seconds,
      landings: 0,
      leftOut: [],
    });
    expect(blocks[0]?.exercises[0]).toEqual({
      ...{ movement: 'squat', pattern: 'squat', role: 'main', sets: 2, wishedSets: 2, repetitions: 12, seconds: null },
      ...{ eachSide: false, effort: 5, inHand: 3, rest: 60, share: null, kilograms: null, next: null },
    });
    expect(blocks[2]?.exercises[0]).toMatchObject({ repetitions: null, seconds: 20, inHand: null });
  });

  test('with twenty minutes there leaves out what is least important, and names it', () => {
    const made = { strength: [40], phase: 'build', level: 'trained' } as const;
    const whole = only({}, made);
    const short = only({ minutes: 20 }, made);
    expect(whole.leftOut).toEqual([]);
    expect(short).toMatchObject({ minutes: 20, plannedMinutes: 40, warmUp: 240, coolDown: 60 });
    // Squats 2 (15 + 15 + 48) + 90 + 45 = 291, in turns with calves, where a rest of 150 leaves 87 after the other’s set, in
    // whole steps 90; single legs 2 (30 + 15 + 90) + 45 + 45 = 360, for calves without a weight take 15 on each side; jumps
    // 15 + 90 + 15 + 45, the plank 80: 896 of 900 seconds.
    expect(movements(short)).toEqual([
      'squat-jump 2',
      'goblet-squat 2 + dumbbell-calf-raise 2',
      'raised-split-squat 2 + single-leg-bent-knee-calf-raise 2',
      'side-plank 1',
    ]);
    expect(short.seconds).toBe(240 + 165 + 291 + 360 + 80 + 60);
    expect(short.leftOut).toEqual([
      { pattern: 'hip-abduction', movement: 'band-side-steps' },
      { pattern: 'pull', movement: 'dumbbell-row' },
      { pattern: 'push', movement: 'dumbbell-press' },
    ]);
  });

  test('counts every landing, on each side', () => {
    const made = { strength: [60], phase: 'peak', level: 'trained' } as const;
    // Four sets of six.
    expect(only({}, made).landings).toBe(24);
    expect(only({ forms: { jump: 'single-leg-hops' } }, made).landings).toBe(48);
  });

  test('takes wished forms, and other equipment', () => {
    const made = { strength: [60], phase: 'build', level: 'trained' } as const;
    expect(movements(only({ equipment: ['barbell'] }, made))).toContainEqual(expect.stringContaining('barbell-squat'));
    expect(movements(only({ forms: { squat: 'chair-squat' } }, made))).toContainEqual(
      expect.stringContaining('chair-squat'),
    );
  });
});

describe('two sessions of a week', () => {
  test('differ, and the heaviest legs come where most days follow before a hard run', () => {
    const { sessions } = strengthOf({}, { days: week });
    // Monday has two days before Wednesday, Thursday three before Sunday.
    expect(sessions.map((each) => [each.day, each.legs])).toEqual([
      [0, 'full'],
      [3, 'full'],
    ]);
    expect(sessions.map((each) => movements(each)[1]?.split(' ')[0])).toEqual(['dumbbell-hinge', 'goblet-squat']);
  });

  test('spare legs where a hard run follows: no jumps, and the least sets of the main lifts', () => {
    const tired = [[], [day('strength', 60)], ...week.slice(2)];
    const [first, second] = strengthOf({}, { days: tired }).sessions;
    expect([first?.legs, second?.legs]).toEqual(['spared', 'full']);
    expect(first?.landings).toBe(0);
    expect(first?.leftOut).toEqual([]);
    const main = first?.blocks.flatMap(({ exercises }) => exercises).filter(({ role }) => role === 'main');
    expect(main?.map(({ sets, wishedSets }) => [sets, wishedSets])).toEqual([
      [2, 2],
      [2, 2],
    ]);
  });

  test('go by the long run only where one is longer than every other', () => {
    const twins = week.map((sessions) => sessions.map((each) => (each.category === 'slow' ? day('slow', 60) : each)));
    const saturday = (days: typeof week) => days.map((sessions, index) => (index === 5 ? [day('strength')] : sessions));
    const legs = (days: typeof week) => strengthOf({}, { days: saturday(days) }).sessions.at(-1)?.legs;
    expect([legs(week), legs(twins)]).toEqual(['spared', 'full']);
  });

  test('that are not on days yet take the lists in turn; after the last the first comes again', () => {
    const { sessions } = strengthOf({}, { strength: [60, 60, 60, 60] });
    const first = sessions.map(
      (each) => each.blocks.flatMap(({ exercises }) => exercises).find(({ role }) => role === 'main')?.pattern,
    );
    expect(first).toEqual(['squat', 'hinge', 'single-leg', 'squat']);
    expect(sessions.every((each) => each.day === null && each.legs === 'full')).toBe(true);
  });

  test('are none where none is planned', () => {
    expect(strengthOf({}, {})).toMatchObject({ sessions: [], notices: [] });
  });
});

describe('weights', () => {
  const lifted = [{ movement: 'goblet-squat', kilograms: 24, repetitions: 10 }];
  const squat = (given: object, phase: 'base' | 'build') =>
    only({ lifted, ...given }, { strength: [60], phase, level: 'trained' })
      .blocks.flatMap(({ exercises }) => exercises)
      .find(({ pattern }) => pattern === 'squat');

  test('come from a set of the same movement, by the table, in whole steps', () => {
    // 24 kg ten times is 32 once. Five and two in hand: 83 %, 26.56 kg.
    expect(squat({}, 'build')).toMatchObject({ share: 0.83, kilograms: 25, next: { least: 27.5, most: 27.5 } });
    // Ten and three in hand: between 70 % for twelve and 65 % for fifteen, 21.87 kg.
    const general = squat({}, 'base');
    expect(general?.share).toBeCloseTo(0.7 - 0.05 / 3, 12);
    expect(general).toMatchObject({ kilograms: 20, next: { least: 22.5, most: 22.5 } });
  });

  test('of other movements are not guessed', () => {
    expect(squat({ equipment: ['barbell'] }, 'build')).toMatchObject({
      ...{ movement: 'barbell-squat', share: 0.83, kilograms: null, next: null },
    });
  });

  test('are worked out from the lower of the two equations', () => {
    // 100 kg five times: 116.67 by Epley, 112.5 by Brzycki.
    const { maxima } = strengthOf({ lifted: [{ movement: 'barbell-squat', kilograms: 100, repetitions: 5 }] }, {});
    expect(maxima[0]?.epley).toBeCloseTo(116.6666667, 6);
    expect(maxima[0]).toMatchObject({ movement: 'barbell-squat', brzycki: 112.5, used: 112.5 });
  });
});

describe('a coach’s own', () => {
  const withRules = (changes: object) => ({ ...builtInMethod, strength: { ...builtInStrength, ...changes } });
  const sled = movementOf('sled', 'squat', { name: 'Sled push', grade: 3 });

  test('movement is one to choose from, and to wish for', () => {
    const method = withRules({ movements: [sled] });
    const { sessions } = strengthOf({ equipment: [] }, { strength: [60] }, method);
    expect(sessions.flatMap(movements)).toContainEqual(expect.stringContaining('sled'));
    expect(strengthOf({ forms: { squat: 'sled' } }, {}, method).wishes.forms).toEqual({ squat: 'sled' });
  });

  test('movement takes the place of the one in the library with its id', () => {
    const method = withRules({ movements: [movementOf('goblet-squat', 'squat', { name: 'Mine', grade: 1 })] });
    const { sessions } = strengthOf({ equipment: [] }, { strength: [60] }, method);
    // Hers is the easiest and needs nothing; the hardest that needs nothing is still the plain squat.
    expect(sessions.flatMap(movements).join()).toContain('squat 3');
    const wished = strengthOf({ equipment: [], forms: { squat: 'goblet-squat' } }, { strength: [60] }, method);
    expect(wished.sessions.flatMap(movements).join()).toContain('goblet-squat 3');
    expect(wished.notices.map(({ code }) => code)).not.toContain('form-out-of-reach');
  });

  test('repetitions that tell a maximum may be fewer', () => {
    const method = withRules({ maximum: { ...builtInStrength.maximum, most_repetitions: 5 } });
    const given = { lifted: [{ movement: 'goblet-squat', kilograms: 20, repetitions: 5 }] };
    expect(strengthOf(given, {}, method).maxima).toHaveLength(1);
    const six = { lifted: [{ movement: 'goblet-squat', kilograms: 20, repetitions: 6 }] };
    expect(() => strengthOf(six, {}, method)).toThrow('"allowed":{"least":1,"most":5}');
  });

  test('table without a row for a set gives no weight', () => {
    const method = withRules({ maximum: { ...builtInStrength.maximum, table: [{ repetitions: 5, share: 0.87 }] } });
    const given = { lifted: [{ movement: 'goblet-squat', kilograms: 20, repetitions: 5 }] };
    const { sessions, notices } = strengthOf(given, { strength: [60] }, method);
    const squat = sessions[0]?.blocks.flatMap(({ exercises }) => exercises).find(({ pattern }) => pattern === 'squat');
    expect(squat).toMatchObject({ movement: 'goblet-squat', share: null, kilograms: null, next: null });
    expect(notices.map(({ code }) => code)).not.toContain('no-weights');
  });
});
