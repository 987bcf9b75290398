import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../../src/training/method/built-in-running.js';
import type { RunningRules } from '../../../../src/training/method/running-rules.js';
import { equalTimes, type EqualTime } from '../../../../src/training/running/equal-times.js';

const rules = builtInRunning.equal_times;

function over(
  metres: number,
  [run, seconds]: readonly [number, number],
  own: Partial<RunningRules['equal_times']> = {},
) {
  const [found] = equalTimes({ metres: run, seconds }, { ...rules, ...own, distances: [metres] });
  if (!found) throw new Error(`nothing over ${metres} m`);
  return found;
}

type Row = readonly [
  race: readonly [number, number],
  over: number,
  from: number,
  to: number,
  widened: EqualTime['widened'],
  riegel: number,
  uptake: number,
];

// Both equations were worked out apart from the source, in Python from shared/checks/running.json; the range by hand.
const rows: readonly Row[] = [
  // Steps of 5 seconds below 20 minutes, 15 below an hour, 30 below two hours, then a minute.
  [[5000, 1200], 1500, 320, 335, null, 334.911, 324.841],
  [[5000, 1200], 10_000, 2475, 2505, null, 2501.918, 2487.854],
  [[5000, 1200], 15_000, 3810, 3870, null, 3845.296, 3826.416],
  [[5000, 1200], 21_097.5, 5490, 5550, null, 5520.239, 5509.676],
  [[10_000, 2400], 3000, 665, 670, null, 669.823, 669.884],
  [[10_000, 2400], 5000, 1150, 1160, null, 1151.117, 1157.594],
  [[1500, 300], 5000, 1070, 1115, null, 1074.912, 1111.645],
  // Just under and just over 20 minutes, an hour and two hours, at the later and at the earlier end.
  [[10_000, 1517], 8000, 1195, 1200, null, 1197.46, 1199.72],
  [[10_000, 1518], 8000, 1195, 1215, null, 1198.249, 1200.514],
  [[10_000, 1520], 8000, 1195, 1215, null, 1199.828, 1202.102],
  [[10_000, 1631.5], 21_097.5, 3585, 3600, null, 3599.747, 3588.405],
  [[10_000, 1632], 21_097.5, 3585, 3630, null, 3600.85, 3589.523],
  [[10_000, 1636.5], 21_097.5, 3585, 3630, null, 3610.779, 3599.591],
  [[10_000, 3247], 21_097.5, 7140, 7200, null, 7164.191, 7199.408],
  [[10_000, 2711], 25_000, 7140, 7260, null, 7160.543, 7200.64],
  [[10_000, 3263], 21_097.5, 7170, 7260, null, 7199.493, 7234.76],
  // Its two ends in steps of their own: 1156 and 1209 seconds.
  [[1000, 210], 5000, 1155, 1215, null, 1156.452, 1208.698],
  // Ten minutes after the law of endurance.
  [[5000, 1200], 42_195, 11_460, 12_120, 'marathon', 11_509.321, 11_477.188],
  [[21_097.5, 6300], 42_195, 13_020, 13_740, 'marathon', 13_135.069, 13_069.54],
  // A race of 210 seconds is inside, one of 209 outside, and so is one of more than 13,800.
  [[1000, 210], 1500, 320, 330, null, 322.757, 327.298],
  [[1000, 209], 1500, 320, 345, 'outside', 321.22, 325.718],
  [[40_000, 13_800], 21_097.5, 6990, 7080, null, 7004.552, 7056.413],
  [[40_000, 13_801], 21_097.5, 6990, 7440, 'outside', 7005.059, 7056.942],
  // Of ten minutes and 5 % the later counts: of 14,604 seconds 5 % are more, and the marathon is what is told.
  [[40_000, 13_800], 42_195, 14_520, 15_360, 'marathon', 14_604.011, 14_579.244],
  [[1000, 209], 42_195, 10_980, 12_120, 'marathon', 11_038.827, 11_506.409],
];

describe('equalTimes(race, rules)', () => {
  test.each(rows)('%j over %d m are %d to %d s', (race, metres, from, to, widened, riegel, uptake) => {
    const found = over(metres, race);
    expect(found).toMatchObject({ metres, from, to, widened });
    expect(found.riegel).toBeCloseTo(riegel, 2);
    expect(found.uptake).toBeCloseTo(uptake, 2);
  });

  test.each<[limits: Partial<RunningRules['equal_times']>, widened: EqualTime['widened']]>([
    [{ most_seconds: 2502 }, null],
    [{ most_seconds: 2501 }, 'outside'],
    [{ least_seconds: 1200 }, null],
    [{ least_seconds: 1201 }, 'outside'],
  ])('20 minutes over 5 km and 2502 seconds over 10 are within %j: %j', (limits, widened) => {
    expect(over(10_000, [5000, 1200], limits).widened).toBe(widened);
  });

  test('a time over the shorter distance can be outside too: 325 to 335 seconds', () => {
    expect(over(1500, [5000, 1200], { least_seconds: 324 }).widened).toBeNull();
    expect(over(1500, [5000, 1200], { least_seconds: 326 }).widened).toBe('outside');
  });

  test('a method may add nothing, an hour, or a part of its own', () => {
    expect(over(42_195, [5000, 1200], { marathon_minutes: 0 })).toMatchObject({ to: 11_520, widened: 'marathon' });
    expect(over(42_195, [5000, 1200], { marathon_minutes: 60 }).to).toBe(15_120);
    expect(over(10_000, [5000, 1200], { most_seconds: 2000, outside_share: 0 }).to).toBe(2505);
    // 2501.918 × 1.2 = 3002.3.
    expect(over(10_000, [5000, 1200], { most_seconds: 2000, outside_share: 0.2 }).to).toBe(3015);
  });

  test('longer distances than a marathon are widened as it is, from a shorter race only', () => {
    expect(over(50_000, [21_097.5, 6300]).widened).toBe('marathon');
    expect(over(50_000, [42_194, 13_000]).widened).toBe('marathon');
    expect(over(50_000, [42_195, 11_000]).widened).toBeNull();
    // 42.2 km, or 42.19, is a marathon; 42.15 is a shorter race.
    expect(over(42_195, [42_200, 11_000]).widened).toBeNull();
    expect(over(42_195, [42_190, 11_000]).widened).toBeNull();
    expect(over(42_195, [42_150, 11_000]).widened).toBe('marathon');
    expect(over(42_194, [21_097.5, 6300]).widened).toBeNull();
  });

  test('the race itself is as it was, also where it is outside', () => {
    for (const seconds of [120, 209, 13_801, 1199.5])
      expect(over(800, [800, seconds])).toEqual({
        ...{ metres: 800, riegel: seconds, uptake: seconds, from: seconds, to: seconds },
        widened: null,
      });
  });
});
