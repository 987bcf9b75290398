import type { Problem } from '../problem.js';
import { problemSentence } from '../words/problem-sentence.js';
import type { CliIo } from './io.js';
import type { Arguments } from './read-arguments.js';
import { printable } from './printable.js';
import type { Speech } from './speech.js';

/** One run of the command: what was asked, in which language to answer, and where to. */
export interface Session {
  readonly options: Arguments['options'];
  readonly speech: Speech;
  readonly io: CliIo;
}

/** Exit codes, as the help explains them. */
export const exitCodes = { done: 0, faultyLines: 1, refused: 2 } as const;

/** Says what stands in the way, a line each, and ends the run. */
export function refuse({ io }: Pick<Session, 'io'>, lines: readonly string[]): number {
  io.writeError(printable(`${lines.join('\n')}\n`));
  return exitCodes.refused;
}

/** Problems as lines of text; `fieldName` says what a field is called where the person met it. */
export function problemLines(
  { words }: Speech,
  problems: readonly Problem[],
  fieldName: (path: string) => string = (path) => path,
): string[] {
  return problems.map((problem) => problemSentence(words, { ...problem, path: fieldName(problem.path) }));
}
