import { withoutNoise } from '../../sheet/numbers.js';
import { brzycki, epley } from '../../training/strength/one-repetition-maximum.js';
import type { StrengthMaximum } from './document.js';
import type { LiftedSet } from './wishes.js';

/** The heaviest weight that each set tells of; the lower of the two equations is the one to work with. */
export function maximaOf(lifted: readonly LiftedSet[]): readonly StrengthMaximum[] {
  return lifted.map(({ movement, kilograms, repetitions }) => {
    const both = {
      epley: withoutNoise(epley(kilograms, repetitions)),
      brzycki: withoutNoise(brzycki(kilograms, repetitions)),
    };
    return { movement, ...both, used: Math.min(both.epley, both.brzycki) };
  });
}
