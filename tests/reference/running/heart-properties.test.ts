import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../src/training/method/built-in-running.js';
import {
  bandOfReserve,
  heartAtReserve,
  heartBands,
  heartSpan,
  reserveAt,
  type Heart,
} from '../../../src/training/running/heart-rate.js';
import { patience, runs } from '../runs.js';
import { amount } from './random-runners.js';

const usual = runs(1000, 100_000);
const { bands } = builtInRunning.heart;
const measured = fc
  .record({ highest: amount(100, 240), resting: amount(25, 120) })
  .filter(({ highest, resting }) => resting < highest);
const hearts: fc.Arbitrary<Heart> = fc.oneof(
  measured,
  amount(100, 240).map((highest) => ({ highest, resting: null })),
);
/** Shares of the greatest uptake, as far as the schema of a method goes. */
const shares = amount(0.3, 1.3);

describe('heart rates', { timeout: patience }, () => {
  test('of a share of the reserve have that share', () => {
    fc.assert(
      fc.property(measured, amount(0, 1), (heart, share) => {
        const found = reserveAt(heartAtReserve(share, heart), heart);
        // A reserve of one beat in two hundred has fewer digits left.
        expect(Math.abs(found - share) * (heart.highest - heart.resting)).toBeLessThan(1e-9);
      }),
      usual,
    );
  });

  test('rise with the uptake', () => {
    fc.assert(
      fc.property(hearts, shares, shares, (heart, one, other) => {
        const [least, most] = [Math.min(one, other), Math.max(one, other)];
        const { from, to } = heartSpan({ least, most }, heart, bands);
        expect(to).toBeGreaterThanOrEqual(from);
        expect([from, to].every(Number.isInteger)).toBe(true);
      }),
      usual,
    );
  });

  test('are never below rest nor above the highest', () => {
    fc.assert(
      fc.property(hearts, amount(0.3, 1), (heart, share) => {
        const { from } = heartSpan({ least: share, most: share }, heart, bands);
        expect(from).toBeLessThanOrEqual(Math.round(heart.highest));
        expect(from).toBeGreaterThanOrEqual(Math.round(heart.resting ?? 0));
      }),
      usual,
    );
  });

  // A coach may have intervals run faster than at the greatest uptake; no heart beats faster for it than it can.
  test('are the highest at and above the greatest uptake, which a method may ask for up to 1.3', () => {
    fc.assert(
      fc.property(hearts, amount(1, 1.3), (heart, share) => {
        const span = heartSpan({ least: 1, most: share }, heart, bands);
        expect(span).toEqual({ from: Math.round(heart.highest), to: Math.round(heart.highest) });
      }),
      usual,
    );
  });

  test('of a band are those whose share of the reserve is in it', () => {
    fc.assert(
      fc.property(
        fc
          .record({ highest: fc.integer({ min: 100, max: 240 }), resting: fc.integer({ min: 25, max: 120 }) })
          .filter(({ highest, resting }) => highest > resting),
        (heart) => {
          const found = heartBands(heart, bands);
          for (let beats = heart.resting; beats <= heart.highest; beats += 1) {
            const id = bandOfReserve(reserveAt(beats, heart) + 1e-9, bands);
            const within = found.filter(({ from, to }) => beats >= from && beats <= to).map((band) => band.id);
            expect(within).toEqual(id === 'very-light' ? [] : [id]);
          }
        },
      ),
      runs(300, 30_000),
    );
  });

  test('of bands never end before they begin', () => {
    fc.assert(
      fc.property(hearts, (heart) => {
        for (const { from, to } of heartBands(heart, bands)) expect(to).toBeGreaterThanOrEqual(from);
      }),
      usual,
    );
  });
});
