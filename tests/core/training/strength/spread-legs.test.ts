import { describe, expect, test } from 'vitest';
import { spreadLegs } from '../../../../src/training/strength/spread-legs.js';

const [monday, tuesday, wednesday, thursday, friday, saturday, sunday] = [0, 1, 2, 3, 4, 5, 6];
const legs = (days: readonly (number | null)[], hard: readonly number[], before = 1) =>
  spreadLegs(days, hard, before).map((each) => `${each.legs} ${each.list}`);

describe('heavy legs', () => {
  test.each([
    ['two days before a hard run are full', [monday], [wednesday], ['full 0']],
    ['the day before are spared', [tuesday], [wednesday], ['spared 0']],
    ['on the day are spared, though the run comes first', [wednesday], [wednesday], ['spared 0']],
    ['the day after are full', [thursday], [wednesday], ['full 0']],
    ['on Sunday before a hard Monday are spared: the week is a circle', [sunday], [monday], ['spared 0']],
    ['without hard runs are full, the first day first', [tuesday, friday], [], ['full 0', 'full 1']],
    [
      'go to the session with most days before the next hard run',
      [monday, thursday],
      [wednesday],
      ['full 1', 'full 0'],
    ],
    [
      'stay in the order of days where both have as many',
      [monday, thursday],
      [wednesday, saturday],
      ['full 0', 'full 1'],
    ],
    ['are ranked over three sessions', [monday, tuesday, friday], [wednesday], ['full 1', 'spared 2', 'full 0']],
  ])('%s', (_, days, hard, spread) => {
    expect(legs(days, hard)).toEqual(spread);
  });

  test.each([
    [0, ['full 1', 'full 0']],
    [1, ['spared 1', 'full 0']],
    [2, ['spared 1', 'spared 0']],
  ])('are spared %d days before a hard run', (before, spread) => {
    expect(legs([tuesday, monday], [wednesday], before)).toEqual(spread);
  });

  test('on the day itself are spared even where no day before is', () => {
    expect(legs([wednesday], [wednesday], 0)).toEqual(['spared 0']);
  });

  test('on no day yet are full, in the order given', () => {
    expect(legs([null, null, null], [monday, sunday])).toEqual(['full 0', 'full 1', 'full 2']);
  });

  test('of no session are nothing', () => {
    expect(legs([], [monday])).toEqual([]);
  });
});
