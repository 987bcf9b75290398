import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../src/training/method/built-in-running.js';
import { runPartKinds, runParts, type RunPart } from '../../../src/training/running/run-session.js';
import { patience, runs } from '../runs.js';
import { kinds } from './random-runners.js';

const lengths = fc.integer({ min: 10, max: 180 });
const usual = runs(3000, 300_000);
const partOf = (parts: readonly RunPart[], kind: RunPart['kind']): RunPart | undefined =>
  parts.find((part) => part.kind === kind);
const sum = (parts: readonly RunPart[]): number => parts.reduce((all, { minutes, times }) => all + minutes * times, 0);

describe('what a run is made of', { timeout: patience }, () => {
  test('adds up to the session, for every kind that the schema allows', () => {
    fc.assert(
      fc.property(lengths, kinds, (minutes, kind) => {
        expect(Math.abs(sum(runParts(minutes, kind)) - minutes)).toBeLessThan(1e-9);
      }),
      usual,
    );
  });

  test('has no part without minutes, and each kind of part once, in the order in which it is run', () => {
    fc.assert(
      fc.property(lengths, kinds, (minutes, kind) => {
        const parts = runParts(minutes, kind);
        for (const part of parts) {
          // What floating point leaves over is no part; a coach’s rests may be as short as they like.
          expect(part.minutes).toBeGreaterThan(part.kind === 'rest' ? 0 : 1e-9);
          expect(Number.isInteger(part.times) && part.times >= 1).toBe(true);
        }
        const order = parts.map((part) => runPartKinds.indexOf(part.kind));
        expect(order).toEqual([...new Set(order)].sort((one, other) => one - other));
        expect(partOf(parts, 'work')).toBeDefined();
      }),
      usual,
    );
  });

  test('has a rest between each two bouts and none elsewhere', () => {
    fc.assert(
      fc.property(lengths, kinds, (minutes, kind) => {
        const parts = runParts(minutes, kind);
        const bouts = partOf(parts, 'work')?.times ?? 0;
        const rest = partOf(parts, 'rest');
        if (!kind.bouts) expect(bouts).toBe(1);
        expect(rest?.times ?? 0).toBe(kind.bouts?.rest === 0 ? 0 : bouts - 1);
        if (rest) expect(rest.minutes).toBe(kind.bouts?.rest);
      }),
      usual,
    );
  });

  test('has a warm-up of whole minutes, its usual ones or its share of a short session', () => {
    fc.assert(
      fc.property(lengths, kinds, (minutes, kind) => {
        const before = partOf(runParts(minutes, kind), 'warm-up')?.minutes ?? 0;
        const most = Math.min(kind.warm_up?.minutes ?? 0, minutes * (kind.warm_up?.most_share ?? 0));
        expect(Number.isInteger(before)).toBe(true);
        expect(before).toBeLessThanOrEqual(most + 1e-9);
        expect(before).toBeGreaterThan(most - 1 - 1e-9);
      }),
      usual,
    );
  });

  test('has bouts of half minutes, the longest that fit, but for bouts shorter than that', () => {
    fc.assert(
      fc.property(lengths, kinds, (minutes, kind) => {
        if (!kind.bouts) return;
        const parts = runParts(minutes, kind);
        const { minutes: work = 0, times = 0 } = partOf(parts, 'work') ?? {};
        if (work >= 0.5) expect(work * 2).toBe(Math.round(work * 2));
        const easy = Math.floor(
          Math.min(kind.cool_down?.minutes ?? 0, minutes * (kind.cool_down?.most_share ?? 0)) + 1e-9,
        );
        const left = (partOf(parts, 'cool-down')?.minutes ?? 0) - easy;
        expect(left).toBeGreaterThan(-1e-9);
        expect(left).toBeLessThan(0.5 * times + 1e-9);
      }),
      usual,
    );
  });

  test('adds up for every kind of the built-in method and every minute from 10 to 180', () => {
    for (const kind of builtInRunning.kinds)
      for (let minutes = 10; minutes <= 180; minutes += 1) expect(sum(runParts(minutes, kind))).toBe(minutes);
  });

  test('has the usual bouts of the built-in method, none more than half as long again', () => {
    for (const kind of builtInRunning.kinds)
      for (let minutes = 10; minutes <= 180; minutes += 1) {
        if (!kind.bouts) continue;
        const { minutes: work = NaN, times = NaN } = partOf(runParts(minutes, kind), 'work') ?? {};
        expect(work).toBeLessThanOrEqual(kind.bouts.work * 1.5);
        // Of several bouts none is much shorter either: with one more of them they would be further from the usual.
        if (times > 1) expect(work).toBeGreaterThan(kind.bouts.work * 0.6);
      }
  });
});
