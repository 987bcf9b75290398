import type { Span } from '../../training/running/span.js';
import type { Words } from '../words.js';

/** Kilocalories in tens: "430 to 510 kcal". */
export function energyText(words: Words, { from, to }: Span): string {
  const tens = (energy: number): string => words.number(Math.round(energy / 10) * 10);
  return words.say('running.energy', { energy: words.say('running.span', { from: tens(from), to: tens(to) }) });
}
