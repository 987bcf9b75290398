import { ceilNear, floorNear, withoutNoise } from '../../sheet/numbers.js';

/** The heaviest weight in whole steps that is not above `kilograms`: `roundedDown(83, 2.5)` is 82.5. */
export function roundedDown(kilograms: number, step: number): number {
  return withoutNoise(floorNear(kilograms / step) * step);
}

/**
 * The weights to go on with: `least` to `most` of a weight more, as parts of 1, in whole steps, and one step more at
 * the least, however small the weight.
 *
 * @example nextWeights(80, { least: 0.02, most: 0.1 }, 2.5) // { least: 82.5, most: 87.5 }
 */
export function nextWeights(
  kilograms: number,
  more: { readonly least: number; readonly most: number },
  step: number,
): { readonly least: number; readonly most: number } {
  const oneStep = kilograms + step;
  const least = Math.max(oneStep, ceilNear((kilograms * (1 + more.least)) / step) * step);
  const most = Math.max(least, roundedDown(kilograms * (1 + more.most), step));
  return { least: withoutNoise(least), most: withoutNoise(most) };
}
