import type { StrengthMaximum } from '../../plan/strength/document.js';
import type { Words } from '../words.js';

/** The heaviest weight that can be lifted once, by both equations. */
export function maximumLine(words: Words, { epley, brzycki }: StrengthMaximum): string {
  const [from, to] = [Math.min(epley, brzycki), Math.max(epley, brzycki)].map((each) => words.number(each, 1));
  return from === to
    ? words.say('strength.lifted.maximum.one', { to: to ?? '' })
    : words.say('strength.lifted.maximum', { from: from ?? '', to: to ?? '' });
}
