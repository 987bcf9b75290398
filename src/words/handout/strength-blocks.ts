import type { Exercise, StrengthBlock, StrengthSession } from '../../plan/strength/document.js';
import type { Method } from '../../training/method/document.js';
import { joined } from '../joined.js';
import { loadedSets } from '../strength/exercise-line.js';
import { movementName } from '../strength/movement-text.js';
import { roughMinutes } from '../strength/session-text.js';
import type { Words } from '../words.js';

/** A movement with its sets. */
export interface ExerciseText {
  /** "Goblet squat" */
  readonly name: string;
  /** "3 × 8, 12 kg" */
  readonly sets: string;
  /** "effort 7 of 10"; empty for what is easy. */
  readonly effort: string;
}

/** One movement, or several in turn; warm-up and cool-down have no sets. */
export interface BlockText {
  readonly exercises: readonly ExerciseText[];
  /** "90 seconds of rest"; empty where there is none. */
  readonly rest: string;
}

/** A strength session so that it can be followed without the planner. */
export function strengthBlocks(words: Words, method: Method, session: StrengthSession): readonly BlockText[] {
  return [
    ...easy(words, 'warm-up', session.warmUp),
    ...session.blocks.map((block) => blockText(words, method, block)),
    ...easy(words, 'cool-down', session.coolDown),
  ];
}

/**
 * The same as lines of text.
 *
 * @example ['Warm-up 5 minutes', 'Goblet squat 3 × 8, effort 7 of 10; 90 seconds of rest', …]
 */
export const strengthLines = (words: Words, blocks: readonly BlockText[]): readonly string[] =>
  blocks.map(({ exercises, rest }) => {
    const lines = exercises.map(({ name, sets, effort }) => joined(words, [`${name} ${sets}`, effort], 'comma'));
    return joined(words, [lines.join(' + '), rest], 'semicolon');
  });

const easy = (words: Words, part: 'warm-up' | 'cool-down', seconds: number): BlockText[] =>
  seconds === 0
    ? []
    : [
        {
          exercises: [{ name: words.say(`strength.${part}`), sets: roughMinutes(words, seconds), effort: '' }],
          rest: '',
        },
      ];

function blockText(words: Words, method: Method, { exercises, rest }: StrengthBlock): BlockText {
  const pause = words.say('strength.seconds', { count: rest });
  return {
    exercises: exercises.map((exercise) => exerciseText(words, method, exercise)),
    rest: words.say(exercises.length > 1 ? 'strength.in-turn' : 'strength.rest', { rest: pause }),
  };
}

function exerciseText(words: Words, method: Method, exercise: Exercise): ExerciseText {
  const { movement, effort } = exercise;
  return {
    name: movementName(words, method, movement),
    sets: loadedSets(words, exercise),
    effort: words.say('strength.effort', { effort }),
  };
}
