import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ringParts, type RingPart, type RingSize } from '../../../src/element/ring/ring-geometry.js';
import { runs } from '../../reference/runs.js';

const size: RingSize = { radius: 70, labelRadius: 92, labelGap: 44, labelReach: 94 };
const names = ['a', 'b', 'c', 'd', 'e'];
const weightsOf = (...weights: number[]) => weights.map((weight, index) => [names[index] ?? '', weight] as const);
const anyWeights = fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 300 })), { minLength: 1, maxLength: 5 });
const sides = ['left', 'right'] as const;
const onSide = (parts: readonly RingPart<string>[], side: (typeof sides)[number]) =>
  parts.filter(({ label }) => label.side === side).sort((one, other) => one.label.y - other.label.y);

describe('ringParts(weights, size)', () => {
  test('gives a part its share of the ring, one after the other from the top', () => {
    const parts = ringParts(weightsOf(30, 10, 40, 20), size);
    expect(parts.map(({ of, start, share }) => [of, start, share])).toEqual([
      ['a', 0, 0.3],
      ['b', expect.closeTo(0.3, 12), 0.1],
      ['c', expect.closeTo(0.4, 12), 0.4],
      ['d', expect.closeTo(0.8, 12), 0.2],
    ]);
  });

  test('leaves out what has no weight', () => {
    expect(ringParts(weightsOf(1, 0, 1), size).map(({ of }) => of)).toEqual(['a', 'c']);
    expect(ringParts(weightsOf(0, 0), size)).toEqual([]);
    expect(ringParts([], size)).toEqual([]);
  });

  test('puts a label outside the middle of its part, and a line leaves the ring there', () => {
    // Quarters: their middles lie half past one, four, seven and ten on a clock.
    const parts = ringParts(weightsOf(1, 1, 1, 1), size);
    const far = Math.SQRT1_2;
    expect(parts.map(({ edge }) => [edge.x / 70, edge.y / 70].map((each) => Math.round(each * 1e6) / 1e6))).toEqual(
      [
        [far, -far],
        [far, far],
        [-far, far],
        [-far, -far],
      ].map((point) => point.map((each) => Math.round(each * 1e6) / 1e6)),
    );
    expect(parts.map(({ label }) => label.side)).toEqual(['right', 'right', 'left', 'left']);
  });

  test('lets one part alone be the whole ring', () => {
    expect(ringParts(weightsOf(0, 5), size)).toMatchObject([{ of: 'b', start: 0, share: 1 }]);
  });

  test('keeps labels off the ring, on their sides, also those that were moved', () => {
    fc.assert(
      fc.property(anyWeights, (weights) => {
        for (const { label } of ringParts(weightsOf(...weights), size)) {
          expect(Math.hypot(label.x, label.y)).toBeGreaterThanOrEqual(size.labelRadius - 1e-9);
          if (Math.abs(label.x) > 1e-9) expect(label.x < 0 ? 'left' : 'right').toBe(label.side);
        }
      }),
      runs(500, 50_000),
    );
  });

  test('keeps order and shares, whatever the weights', () => {
    fc.assert(
      fc.property(anyWeights, (weights) => {
        const parts = ringParts(weightsOf(...weights), size);
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        expect(parts.map(({ of }) => of)).toEqual(names.filter((_, index) => (weights[index] ?? 0) > 0));
        parts.forEach(({ start, share }, index) => {
          expect(share).toBeCloseTo((weights[names.indexOf(parts[index]?.of ?? '')] ?? 0) / total, 12);
          const before = parts.slice(0, index).reduce((sum, part) => sum + part.share, 0);
          expect(start).toBeCloseTo(before, 12);
        });
      }),
      runs(500, 50_000),
    );
  });

  test('keeps labels of one side apart, in the order of their parts, and within reach where they fit', () => {
    fc.assert(
      fc.property(anyWeights, (weights) => {
        const parts = ringParts(weightsOf(...weights), size);
        for (const side of sides) {
          const labels = onSide(parts, side);
          labels.slice(1).forEach(({ label }, index) => {
            expect(label.y - (labels[index]?.label.y ?? 0)).toBeGreaterThanOrEqual(size.labelGap - 1e-9);
          });
          // Clockwise is downwards on the right and upwards on the left.
          const inOrder = labels.map(({ start }) => start);
          expect(side === 'right' ? inOrder : inOrder.reverse()).toEqual(
            [...inOrder].sort((one, other) => one - other),
          );
          const fits = (labels.length - 1) * size.labelGap <= 2 * size.labelReach;
          if (fits)
            for (const { label } of labels) expect(Math.abs(label.y)).toBeLessThanOrEqual(size.labelReach + 1e-9);
        }
      }),
      runs(1000, 50_000),
    );
  });

  test('moves no label that touches none', () => {
    const parts = ringParts(weightsOf(1, 1), size);
    for (const { start, share, label } of parts) {
      const angle = 2 * Math.PI * (start + share / 2);
      expect(label.x).toBeCloseTo(92 * Math.sin(angle), 9);
      expect(label.y).toBeCloseTo(-92 * Math.cos(angle), 9);
    }
  });
});
