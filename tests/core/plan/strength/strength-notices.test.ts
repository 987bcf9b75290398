import { describe, expect, test } from 'vitest';
import { strengthNoticeCodes, type StrengthNotice } from '../../../../src/plan/strength/document.js';
import type { DaySession } from '../../../../src/plan/week/wishes.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { strengthOf, type MadeUpWeek } from '../../../reference/strength/strength-door.js';
import { movementOf } from '../../training/strength/movements.js';

const withRules = (changes: object) => ({ ...builtInMethod, strength: { ...builtInStrength, ...changes } });
const noticesOf = (code: StrengthNotice['code'], ...asked: Parameters<typeof strengthOf>): readonly StrengthNotice[] =>
  strengthOf(...asked).notices.filter((notice) => notice.code === code);
const strength = (minutes: number): readonly DaySession[] => [{ category: 'strength', minutes }];
const two: MadeUpWeek = { strength: [40, 40] };
const onDays: MadeUpWeek = { days: [strength(40), [], [], strength(40), [], [], []] };

const tried = new Set<string>();
const about = (code: StrengthNotice['code'], tell: () => void): void => {
  tried.add(code);
  describe(code, tell);
};

about('under-18', () => {
  const level = 'caution';
  test('is a caution for the young', () => {
    expect(noticesOf('under-18', { age: 17 }, two)).toEqual([{ code: 'under-18', level, values: { age: 17 } }]);
  });
  test.each([18, 64, null])('is not for %s years', (age) => {
    expect(noticesOf('under-18', { age }, two)).toEqual([]);
  });
});

about('from-65', () => {
  test('is a note from 65 years on', () => {
    const values = { age: 65, sessions: 2 };
    expect(noticesOf('from-65', { age: 65 }, two)).toEqual([{ code: 'from-65', level: 'note', values }]);
  });
  test.each([64, 17, null])('is not for %s years', (age) => {
    expect(noticesOf('from-65', { age }, two)).toEqual([]);
  });
});

about('one-session', () => {
  test('is a note where a week has just one', () => {
    const values = { usual: 2, most: 3 };
    expect(noticesOf('one-session', {}, { strength: [40] })).toEqual([{ code: 'one-session', level: 'note', values }]);
  });
  test('is not for two, nor in a taper, where one holds what is there', () => {
    expect(noticesOf('one-session', {}, two)).toEqual([]);
    expect(noticesOf('one-session', {}, { strength: [40], phase: 'taper' })).toEqual([]);
  });
  test('is not where a method has one', () => {
    const method = withRules({ dose: { ...builtInStrength.dose, sessions: { usual: 1, most: 3 } } });
    expect(noticesOf('one-session', {}, { strength: [40] }, method)).toEqual([]);
  });
});

about('many-sessions', () => {
  test('is a note from four on', () => {
    const values = { count: 4, most: 3 };
    const four = { strength: [40, 40, 40, 40] };
    expect(noticesOf('many-sessions', {}, four)).toEqual([{ code: 'many-sessions', level: 'note', values }]);
    expect(noticesOf('many-sessions', {}, { strength: [40, 40, 40] })).toEqual([]);
  });
});

about('no-days', () => {
  test('is a note while sessions are on no days', () => {
    expect(noticesOf('no-days', {}, two)).toEqual([{ code: 'no-days', level: 'note', values: {} }]);
    expect(noticesOf('no-days', {}, onDays)).toEqual([]);
  });
});

about('form-out-of-reach', () => {
  test('is a note for a wished form without its equipment', () => {
    const given = { equipment: ['band'], forms: { squat: 'barbell-squat', pull: 'band-row' } };
    expect(noticesOf('form-out-of-reach', given, two)).toEqual([
      { code: 'form-out-of-reach', level: 'note', movement: 'barbell-squat', pattern: 'squat', values: {} },
    ]);
    expect(noticesOf('form-out-of-reach', { ...given, equipment: ['band', 'barbell'] }, two)).toEqual([]);
  });
});

about('no-movement', () => {
  const pulls = ['face-down-arm-raise', 'band-row', 'dumbbell-row'];
  const barbellOnly = pulls.map((id) => movementOf(id, 'pull', { equipment: ['barbell'] }));
  const jumps = ['ankle-hops', 'squat-jump', 'single-leg-hops', 'bounds'];
  const barbellJumps = jumps.map((id) => movementOf(id, 'jump', { equipment: ['barbell'] }));

  test('is a note for a pattern without any form at hand', () => {
    const method = withRules({ movements: barbellOnly });
    expect(noticesOf('no-movement', {}, two, method)).toEqual([
      { code: 'no-movement', level: 'note', pattern: 'pull', values: {} },
    ]);
    expect(noticesOf('no-movement', { equipment: ['barbell'] }, two, method)).toEqual([]);
  });
  test('is not for a pattern that the stage has not', () => {
    const method = withRules({ movements: barbellJumps });
    expect(noticesOf('no-movement', {}, { ...two, level: 'trained' }, method)).toHaveLength(1);
    expect(noticesOf('no-movement', {}, { ...two, level: 'new' }, method)).toEqual([]);
  });
});

about('no-weights', () => {
  const lifted = (...movements: readonly string[]) => ({
    lifted: movements.map((movement) => ({ movement, kilograms: 20, repetitions: 8 })),
  });
  const all = ['goblet-squat', 'dumbbell-split-squat', 'dumbbell-hinge', 'dumbbell-row'];

  test('is a note with the number of movements that no set tells of', () => {
    expect(noticesOf('no-weights', {}, two)).toEqual([{ code: 'no-weights', level: 'note', values: { count: 4 } }]);
    expect(noticesOf('no-weights', lifted(...all.slice(1)), two)).toEqual([
      { code: 'no-weights', level: 'note', values: { count: 1 } },
    ]);
    expect(noticesOf('no-weights', lifted(...all), two)).toEqual([]);
  });
  test('is not without equipment', () => {
    expect(noticesOf('no-weights', { equipment: [] }, two)).toEqual([]);
  });
});

about('not-heavy', () => {
  const told = [{ code: 'not-heavy', level: 'note', values: { repetitions: 15 } }];
  const heavy = { ...two, phase: 'build' } as const;

  test('is a note where a heavy stage has no weight for its main lifts, once for the week', () => {
    expect(noticesOf('not-heavy', { equipment: [] }, heavy)).toEqual(told);
    expect(noticesOf('not-heavy', { forms: { squat: 'squat' } }, heavy)).toEqual(told);
  });
  test('is not with weights for all of them, nor in a stage that is not heavy', () => {
    expect(noticesOf('not-heavy', {}, heavy)).toEqual([]);
    expect(noticesOf('not-heavy', { equipment: [] }, { ...two, phase: 'base' })).toEqual([]);
  });
});

about('legs-spared', () => {
  test('is a note for the session before a hard run', () => {
    const days = [strength(40), [{ category: 'tempo', minutes: 30 } as const], [], strength(40), [], [], []];
    expect(noticesOf('legs-spared', {}, { days })).toEqual([
      { code: 'legs-spared', level: 'note', session: 0, values: {} },
    ]);
    expect(noticesOf('legs-spared', {}, onDays)).toEqual([]);
  });
});

about('few-main', () => {
  test('is a note for a session with less than two main lifts', () => {
    expect(noticesOf('few-main', { minutes: 5 }, two)).toEqual([
      { code: 'few-main', level: 'note', session: 0, values: { count: 1, least: 2 } },
      { code: 'few-main', level: 'note', session: 1, values: { count: 1, least: 2 } },
    ]);
    expect(noticesOf('few-main', {}, two)).toEqual([]);
  });
});

about('many-landings', () => {
  const withMost = (landings: number) => withRules({ dose: { ...builtInStrength.dose, landings } });

  test('is a caution above the most', () => {
    // Two sets of eight in general preparation.
    expect(noticesOf('many-landings', {}, { strength: [40] }, withMost(15))).toEqual([
      { code: 'many-landings', level: 'caution', session: 0, values: { landings: 16, most: 15 } },
    ]);
    expect(noticesOf('many-landings', {}, { strength: [40] }, withMost(16))).toEqual([]);
  });
});

about('nothing-fits', () => {
  test('is a note where not even the first movement fits, and then there is no warm-up', () => {
    const made = { strength: [2, 40] };
    expect(noticesOf('nothing-fits', {}, made)).toEqual([
      { code: 'nothing-fits', level: 'note', session: 0, values: { minutes: 2 } },
    ]);
    expect(noticesOf('few-main', {}, made)).toEqual([]);
    expect(strengthOf({}, made).sessions[0]).toMatchObject({ blocks: [], seconds: 0, spare: 120 });
  });
});

test('every notice there is has been tried', () => {
  expect([...tried].sort()).toEqual([...strengthNoticeCodes].sort());
});
