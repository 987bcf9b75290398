import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../../src/training/method/built-in-running.js';
import type { RunningId, RunningKind } from '../../../../src/training/method/running-rules.js';
import { metresOf, speedOf } from '../../../../src/training/running/distance.js';
import { runParts } from '../../../../src/training/running/run-session.js';

function kindOf(id: RunningId): RunningKind {
  const kind = builtInRunning.kinds.find((each) => each.id === id);
  if (!kind) throw new Error(`no ${id}`);
  return kind;
}

/** As people write it: `10, 4 × 3.5 (2), 5`. */
function inShort(minutes: number, kind: RunningKind): string {
  const parts = runParts(minutes, kind);
  const rest = parts.find((part) => part.kind === 'rest');
  return parts
    .filter((part) => part.kind !== 'rest')
    .map((part) => {
      const text = part.kind === 'work' ? `${part.times} × ${part.minutes}` : `${part.minutes}`;
      return part.kind === 'work' && rest ? `${text} (${rest.minutes})` : text;
    })
    .join(', ');
}

describe('runParts(minutes, kind) of the built-in method', () => {
  // Worked out by hand. Warm-up: whole minutes, 15 or 30 % of the session; cool-down: 10 or 15 %.
  test.each<[minutes: number, id: RunningId, parts: string]>([
    [10, 'slow', '1 × 10'],
    [180, 'slow', '1 × 180'],
    // 3 and 1 leave 6: (6 + 2) / 5 bouts are 2, of (6 − 2) / 2 minutes.
    [10, 'intervals', '3, 2 × 2 (2), 1'],
    // 6 and 3 leave 11: 13 / 5 are 3, of 7 / 3 minutes: 2, and one more to cool down.
    [20, 'intervals', '6, 3 × 2 (2), 4'],
    [35, 'intervals', '10, 4 × 3.5 (2), 5'],
    // 15 and 9 leave 36: 38 / 5 are 8, of 22 / 8 = 2.75 minutes: 2.5, and two more to cool down.
    [60, 'intervals', '15, 8 × 2.5 (2), 11'],
    // 15 and 10 leave 65: 67 / 5 are 13, of 41 / 13 = 3.15 minutes: 3, and two more.
    [90, 'intervals', '15, 13 × 3 (2), 12'],
    [10, 'tempo', '3, 1 × 6, 1'],
    // 13 and 6 leave 26: 28 / 22 is 1.
    [45, 'tempo', '13, 1 × 26, 6'],
    // 30 minutes are left alone, 31 are cut in two: 33 / 22 is one and a half.
    [52, 'tempo', '15, 1 × 30, 7'],
    [53, 'tempo', '15, 2 × 14.5 (2), 7'],
    [60, 'tempo', '15, 2 × 17 (2), 9'],
    [90, 'tempo', '15, 3 × 20 (2), 11'],
  ])('%d minutes of %s are %s', (minutes, id, parts) => {
    expect(inShort(minutes, kindOf(id))).toBe(parts);
  });

  // 14.7 and 15 minutes of warm-up, 9.9 and 10.05 of cool-down.
  test.each([
    [49, 14, 7],
    [50, 15, 7],
    [66, 15, 9],
    [67, 15, 10],
    [68, 15, 10],
  ])(
    '%d minutes have %d to warm up and %d or up to half a minute a bout more to cool down',
    (minutes, before, after) => {
      const parts = runParts(minutes, kindOf('tempo'));
      const [first, last] = [parts[0], parts.at(-1)];
      expect(first).toEqual({ kind: 'warm-up', minutes: before, times: 1 });
      expect(last?.kind).toBe('cool-down');
      expect(last?.minutes).toBeGreaterThanOrEqual(after);
      expect(last?.minutes).toBeLessThan(after + 1.5);
    },
  );

  test('a share that is a whole number but for a rounding error is that number', () => {
    // 0.35 × 20 is 7 on paper; so are 0.29 × 100 = 29 and 0.07 × 100.
    for (const [most_share, minutes, whole] of [
      [0.35, 20, 7],
      [0.29, 100, 29],
      [0.07, 100, 7],
    ] as const) {
      const [first] = runParts(minutes, { ...kindOf('slow'), warm_up: { minutes: 60, most_share } });
      expect(first).toEqual({ kind: 'warm-up', minutes: whole, times: 1 });
    }
  });
});

describe('runParts(minutes, kind) of a coach’s own', () => {
  const own: RunningKind = { ...kindOf('slow'), bouts: { work: 5, rest: 0 } };

  test.each<[what: string, kind: RunningKind, minutes: number, parts: string]>([
    ['no rests', own, 30, '6 × 5'],
    ['rests of twice the work', { ...own, bouts: { work: 5, rest: 10 } }, 50, '4 × 5 (10)'],
    // 11 / 1.5 bouts are 7, of 4 / 7 = 0.571 minutes: a half, and another half to cool down.
    ['half a minute of work', { ...own, bouts: { work: 0.5, rest: 1 } }, 10, '7 × 0.5 (1), 0.5'],
    ['a warm-up alone', { ...kindOf('slow'), warm_up: { minutes: 5, most_share: 0.4 } }, 30, '5, 1 × 25'],
    ['no minutes of warm-up', { ...kindOf('slow'), warm_up: { minutes: 0, most_share: 0.4 } }, 30, '1 × 30'],
    ['no share of cool-down', { ...kindOf('slow'), cool_down: { minutes: 20, most_share: 0 } }, 30, '1 × 30'],
    [
      'the most of both',
      { ...own, warm_up: { minutes: 60, most_share: 0.4 }, cool_down: { minutes: 60, most_share: 0.4 } },
      ...([50, '20, 2 × 5, 20'] as const),
    ],
  ])('%s', (_, kind, minutes, parts) => {
    expect(inShort(minutes, kind)).toBe(parts);
  });

  // (20 + 0.1) / 0.6 bouts are 34, of 16.7 / 34 minutes: nothing is left to cool down.
  test('bouts that are shorter than half a minute leave nothing over', () => {
    const kinds = runParts(20, { ...own, bouts: { work: 0.5, rest: 0.1 } }).map(({ kind }) => kind);
    expect(kinds).toEqual(['work', 'rest']);
  });
});

describe('metres', () => {
  test('are minutes times speed: 14 of work and 21 easy ones', () => {
    const speeds = { work: { from: 250, to: 270 }, easy: { from: 170, to: 200 } };
    expect(metresOf(runParts(35, kindOf('intervals')), speeds)).toEqual({ from: 7070, to: 7980 });
    expect(metresOf([], speeds)).toEqual({ from: 0, to: 0 });
  });

  test.each([
    [240, 250],
    [250, 240],
    [300, 200],
    [60_000, 1],
  ])('a pace of %d seconds a kilometre is %d metres a minute', (pace, speed) => {
    expect(speedOf(pace)).toBe(speed);
    expect(speedOf(speed)).toBe(pace);
  });
});
