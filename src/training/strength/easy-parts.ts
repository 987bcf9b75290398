import { floorNear } from '../../sheet/numbers.js';
import type { StrengthRules } from '../method/strength-rules.js';

/** Whole minutes of warm-up and cool-down, and what they leave for the movements. */
export interface EasyParts {
  readonly warmUp: number;
  readonly coolDown: number;
  readonly left: number;
}

type Part = StrengthRules['time']['warm_up'];

/**
 * Warm-up and cool-down of a session: the usual minutes, but no more than their share of a short one. Where both would
 * grow with the same minute one of them waits, for a minute more must never leave less for the movements.
 *
 * @param minutes whole minutes of the session.
 */
export function easyParts(
  minutes: number,
  { warm_up, cool_down }: Pick<StrengthRules['time'], 'warm_up' | 'cool_down'>,
): EasyParts {
  const leftOf = (of: number): number => of - usual(warm_up, of) - usual(cool_down, of);
  const left = Math.max(...Array.from({ length: minutes + 1 }, (_, of) => leftOf(of)));
  const warmUp = Math.min(usual(warm_up, minutes), minutes - left);
  return { warmUp, coolDown: minutes - left - warmUp, left };
}

const usual = ({ minutes, most_share }: Part, of: number): number => Math.min(minutes, floorNear(most_share * of));
