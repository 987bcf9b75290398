import type { Exercise } from '../../plan/strength/document.js';
import { joined } from '../joined.js';
import type { Words } from '../words.js';

/**
 * Sets and repetitions of an exercise.
 *
 * @example '3 × 10 on each side'
 * @example '2 × 30 seconds'
 */
export function setsText(words: Words, { sets, repetitions, seconds, eachSide }: Exercise): string {
  const each =
    repetitions === null ? words.say('strength.seconds', { count: seconds ?? 0 }) : words.number(repetitions);
  return words.say(eachSide ? 'strength.sets.each-side' : 'strength.sets', { sets, each });
}

/**
 * How hard.
 *
 * @example 'effort 8 of 10, 2 repetitions in hand'
 */
export function howHard(words: Words, { effort, inHand }: Exercise): string {
  const feel = words.say('strength.effort', { effort });
  return joined(words, [feel, inHand === null ? '' : words.say('strength.in-hand', { count: inHand })], 'comma');
}

/** Sets and how heavy: "3 × 10, 30 kg". */
export const loadedSets = (words: Words, exercise: Exercise): string =>
  joined(words, [setsText(words, exercise), weightText(words, exercise)], 'comma');

/** How heavy: "30 kg"; empty where no set has told it. */
export const weightText = (words: Words, { kilograms }: Exercise): string =>
  kilograms === null ? '' : words.say('strength.kilograms', { kilograms });

/** How heavy where no set has told the weight; empty where none is put on. */
export const shareText = (words: Words, { share }: Exercise): string =>
  share === null ? '' : words.say('strength.share', { share: words.share(Math.round(share * 100) / 100) });

/** What to go on with when more is managed; empty where no weight is known. */
export const nextText = (words: Words, { next }: Exercise): string =>
  next ? words.say(next.least === next.most ? 'strength.next.one' : 'strength.next', { ...next }) : '';
