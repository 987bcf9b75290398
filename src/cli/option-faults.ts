import type { Problem } from '../problem.js';
import type { ArgumentFault } from './read-arguments.js';
import { problemLines } from './session.js';
import type { Speech } from './speech.js';

/** What is wrong with options: in words that every surface shares, and in those of the command. */
export interface OptionFaults {
  readonly problems: readonly Problem[];
  readonly faults: readonly ArgumentFault[];
}

/** The same as lines of text. */
export const faultLines = (speech: Speech, { problems, faults }: OptionFaults): readonly string[] => [
  ...problemLines(speech, problems),
  ...faults.map(({ key, values }) => speech.texts.say(key, values)),
];
