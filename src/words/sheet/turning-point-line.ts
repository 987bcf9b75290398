import type { TurningPoint } from '../../sheet/explore/turning-points.js';
import type { Method } from '../../training/method/document.js';
import { quantityValue } from '../quantity-value.js';
import type { Words } from '../words.js';
import { switchName } from './switch-name.js';

/**
 * A turning point in a sentence.
 *
 * @example 'Above 6 hours 40 minutes: “Strength cap” begins'
 */
export function turningPointLine(
  words: Words,
  method: Method,
  { input, point }: { readonly input: string; readonly point: TurningPoint },
): string {
  const key = `sheet.turn.${point.includes ? 'from' : 'above'}-${point.starts ? 'starts' : 'stops'}`;
  return words.say(key, {
    at: quantityValue(words, method, { id: input, value: point.at }),
    name: switchName(words, method, point.id),
  });
}
