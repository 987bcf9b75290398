import { describe, expect, test } from 'vitest';
import { easyParts } from '../../../../src/training/strength/easy-parts.js';
import { pairTime, repetitionsOf, singleTime, workSeconds } from '../../../../src/training/strength/session-time.js';

describe('the work of a set', () => {
  const dose = { repetitions: 8, seconds: 40 };
  const time = { seconds_a_repetition: 3 };

  test.each([
    ['counted', { held: false, each_side: false, loaded: true }, 24],
    ['counted on each side', { held: false, each_side: true, loaded: true }, 48],
    ['held', { held: true, each_side: false, loaded: false }, 40],
    ['held on each side', { held: true, each_side: true, loaded: false }, 80],
  ])('that is %s', (_, movement, seconds) => {
    expect(workSeconds(movement, dose, time)).toBe(seconds);
  });

  test.each([
    ['as many with a weight', { loaded: true }, { repetitions: 5, unweighted: 15 }, 5],
    ['more without one', { loaded: false }, { repetitions: 5, unweighted: 15 }, 15],
    ['as many where nothing else is said', { loaded: false }, { repetitions: 5 }, 5],
  ])('has %s', (_, movement, repetitions, count) => {
    expect(repetitionsOf(movement, repetitions)).toBe(count);
    const whole = { held: false, each_side: false, ...movement };
    expect(workSeconds(whole, { ...repetitions, seconds: 30 }, { seconds_a_repetition: 3 })).toBe(3 * count);
  });
});

describe('the time of a block', () => {
  test.each([
    [{ sets: 1, work: 30, rest: 90 }, 30],
    [{ sets: 2, work: 30, rest: 90 }, 150],
    [{ sets: 3, work: 30, rest: 0 }, 90],
  ])('of one movement has a rest between two sets only: %o takes %d seconds', (sets, seconds) => {
    expect(singleTime(sets)).toEqual({ rest: sets.rest, seconds });
  });

  test('of two movements is shorter than one after the other', () => {
    // 20, to the other 15, 40; 150 rest for the first are 15 + 40 + 95; then once more.
    const [heavy, light] = [
      { sets: 2, work: 20, rest: 150 },
      { sets: 2, work: 40, rest: 60 },
    ];
    expect(pairTime(heavy, light, 15)).toEqual({ rest: 95, seconds: 75 + 95 + 75 });
    expect(pairTime(light, heavy, 15)).toEqual({ rest: 95, seconds: 75 + 95 + 75 });
    expect(singleTime(heavy).seconds + singleTime(light).seconds).toBe(190 + 140);
  });

  test.each([
    // The other works for 45: 75 of rest are 15 + 45 + 15, and less is never there than the way back.
    [74, 15],
    [75, 15],
    // 76 would need 16: rests are in whole steps of five seconds.
    [76, 20],
    [80, 20],
    [81, 25],
  ])('with %d seconds of rest needed there are %d after a turn', (needed, rest) => {
    const block = pairTime({ sets: 2, work: 30, rest: needed }, { sets: 2, work: 45, rest: 0 }, 15);
    expect(block).toEqual({ rest, seconds: 90 + rest + 90 });
  });

  test.each([
    ['first', { sets: 4, work: 20, rest: 100 }, { sets: 2, work: 40, rest: 60 }, 100],
    ['second', { sets: 2, work: 40, rest: 60 }, { sets: 4, work: 20, rest: 100 }, 100],
  ])('goes on with the %s alone where it has sets left, after its own rest', (_, one, other, own) => {
    // Turns: 20 + 15 + 40, rest of 45 (100 − 40 − 15), again; then twice the rest and a set.
    expect(pairTime(one, other, 15)).toEqual({ rest: 45, seconds: 75 + 45 + 75 + 2 * (own + 20) });
  });

  test('of single sets has no rest at all', () => {
    expect(pairTime({ sets: 1, work: 30, rest: 90 }, { sets: 1, work: 20, rest: 90 }, 15).seconds).toBe(65);
  });
});

describe('warm-up and cool-down', () => {
  const time = { warm_up: { minutes: 5, most_share: 0.2 }, cool_down: { minutes: 3, most_share: 0.1 } };

  test.each([
    [1, { warmUp: 0, coolDown: 0, left: 1 }],
    [4, { warmUp: 0, coolDown: 0, left: 4 }],
    [5, { warmUp: 1, coolDown: 0, left: 4 }],
    [9, { warmUp: 1, coolDown: 0, left: 8 }],
    // Both would grow with the tenth minute, and leave 7: the cool-down waits for the eleventh.
    [10, { warmUp: 2, coolDown: 0, left: 8 }],
    [11, { warmUp: 2, coolDown: 1, left: 8 }],
    [19, { warmUp: 3, coolDown: 1, left: 15 }],
    [20, { warmUp: 4, coolDown: 1, left: 15 }],
    [21, { warmUp: 4, coolDown: 2, left: 15 }],
    [24, { warmUp: 4, coolDown: 2, left: 18 }],
    [25, { warmUp: 5, coolDown: 2, left: 18 }],
    [29, { warmUp: 5, coolDown: 2, left: 22 }],
    [30, { warmUp: 5, coolDown: 3, left: 22 }],
    [31, { warmUp: 5, coolDown: 3, left: 23 }],
    [180, { warmUp: 5, coolDown: 3, left: 172 }],
  ])('of %d minutes', (minutes, parts) => {
    expect(easyParts(minutes, time)).toEqual(parts);
  });

  test('are none where a method has none', () => {
    const none = { minutes: 0, most_share: 0.4 };
    expect(easyParts(40, { warm_up: none, cool_down: none })).toEqual({ warmUp: 0, coolDown: 0, left: 40 });
  });
});
