import type { CliIo } from '../../../src/cli/io.js';
import { run } from '../../../src/cli/run.js';

/** What a run of the command left behind. */
export interface Ran {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

/** The world around a run: files by their paths, what stands on standard input, the day and the instant it is. */
export interface World {
  readonly files?: Readonly<Record<string, string>>;
  readonly input?: string;
  readonly today?: string;
  readonly now?: string;
}

/** Runs the command without a process. */
export async function ran(
  argv: readonly string[],
  { files = {}, input = '', today = '2027-04-11', now = '20270411T093000Z' }: World = {},
): Promise<Ran> {
  const written = { output: '', errors: '' };
  const io: CliIo = {
    readFile: (path) => {
      const content = files[path];
      const missing = Object.assign(new Error('no such file'), { code: 'ENOENT' });
      return content === undefined ? Promise.reject(missing) : Promise.resolve(content);
    },
    readInput: () => Promise.resolve(input),
    today: () => today,
    now: () => now,
    version: () => Promise.resolve('1.2.3'),
    write: (text) => (written.output += text),
    writeError: (text) => (written.errors += text),
  };
  const code = await run(argv, io);
  return { code, ...written };
}

/** Lines of a text, without the empty one behind the last line end. */
export const linesOf = (text: string): string[] => text.split('\n').slice(0, -1);
