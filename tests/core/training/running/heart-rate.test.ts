import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../../src/training/method/built-in-running.js';
import { heartBands, heartSpan, highestAt } from '../../../../src/training/running/heart-rate.js';

const { bands, estimates } = builtInRunning.heart;
const rested = { highest: 190, resting: 50 };
const unknown = { highest: 190, resting: null };

describe('heartSpan(uptake, heart, bands)', () => {
  // By hand: 0.6 of uptake lies 14 of the 18 parts from 0.46 to 0.64, so 0.4 + 0.2 × 14 / 18 = 0.5556 of the reserve.
  test.each([
    [0.6, 0.74, 128, 150],
    [0.84, 0.89, 165, 173],
    [0.93, 1, 179, 190],
    // At the edges of bands: 0.3, 0.4, 0.6 and 0.9 of 140 beats.
    [0.37, 0.46, 92, 106],
    [0.64, 0.91, 134, 176],
    [0, 0, 50, 50],
  ])('%d to %d of 50 to 190 beats are %d to %d', (least, most, from, to) => {
    expect(heartSpan({ least, most }, rested, bands)).toEqual({ from, to });
  });

  // 0.64 + 0.13 × 14 / 18 = 0.7411 of the highest.
  test.each([
    [0.6, 0.74, 141, 160],
    [0.84, 0.89, 173, 180],
    [0.93, 1, 184, 190],
    // 0.57, 0.64, 0.77 and 0.96 of 190: 108.3, 121.6, 146.3, 182.4.
    [0.37, 0.46, 108, 122],
    [0.64, 0.91, 146, 182],
  ])('%d to %d are %d to %d of 190 beats where rest is not known', (least, most, from, to) => {
    expect(heartSpan({ least, most }, unknown, bands)).toEqual({ from, to });
  });

  // A method may have intervals at up to 1.3 of the greatest uptake; no heart beats faster for it than it can.
  test.each([1.001, 1.1, 1.3])('at %d of the greatest uptake the heart beats as fast as it can', (most) => {
    expect(heartSpan({ least: 1, most }, rested, bands)).toEqual({ from: 190, to: 190 });
    expect(heartSpan({ least: 1, most }, unknown, bands)).toEqual({ from: 190, to: 190 });
  });
});

describe('heartBands(heart, bands)', () => {
  test('begin at 0.3, 0.4, 0.6 and 0.9 of the reserve', () => {
    expect(heartBands(rested, bands)).toEqual([
      { id: 'light', from: 92, to: 105 },
      { id: 'moderate', from: 106, to: 133 },
      { id: 'vigorous', from: 134, to: 175 },
      { id: 'near-maximal', from: 176, to: 190 },
    ]);
  });

  test('begin at 0.57, 0.64, 0.77 and 0.96 of the highest where rest is not known', () => {
    expect(heartBands(unknown, bands)).toEqual([
      { id: 'light', from: 109, to: 121 },
      { id: 'moderate', from: 122, to: 146 },
      { id: 'vigorous', from: 147, to: 182 },
      { id: 'near-maximal', from: 183, to: 190 },
    ]);
  });

  test('begin with a whole beat that is their edge, whatever rounding errors say', () => {
    expect(heartBands({ highest: 200, resting: null }, bands).map(({ from }) => from)).toEqual([114, 128, 154, 192]);
    expect(heartBands({ highest: 180, resting: 80 }, bands).map(({ from }) => from)).toEqual([110, 120, 140, 170]);
    // 0.55 × 200 is a little more than 110 in floating point.
    const own = bands.map((band) => (band.id === 'light' ? { ...band, highest: 0.55 } : band));
    expect(0.55 * 200).toBeGreaterThan(110);
    expect(heartBands({ highest: 200, resting: null }, own)[0]).toEqual({ id: 'light', from: 110, to: 127 });
  });

  test('end with the highest rate, an estimated one rounded', () => {
    expect(heartBands({ highest: 180.3, resting: 60 }, bands).at(-1)).toEqual({
      id: 'near-maximal',
      from: 169,
      to: 180,
    });
    expect(heartBands({ highest: 180.5, resting: 60 }, bands).at(-1)?.to).toBe(181);
  });

  // Edges at 121.2, 121.6, 122.4 and 123.6: light would have to end before it begins, so there is none.
  test('never end before they begin, even where there are only four beats between rest and the highest', () => {
    expect(heartBands({ highest: 124, resting: 120 }, bands)).toEqual([
      { id: 'moderate', from: 122, to: 122 },
      { id: 'vigorous', from: 123, to: 123 },
      { id: 'near-maximal', from: 124, to: 124 },
    ]);
  });
});

test.each([
  [5, [204.5, 203.5]],
  [18, [195.4, 194.4]],
  [40, [180, 179]],
  [40.5, [179.65, 178.65]],
  [110, [131, 130]],
])('the highest rate at %d years is %j by the two equations', (age, rates) => {
  estimates.forEach((estimate, index) => expect(highestAt(age, estimate)).toBeCloseTo(rates[index] ?? NaN, 9));
});
