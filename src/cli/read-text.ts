import type { Outcome } from '../problem.js';
import type { Session } from './session.js';

const knownReasons: ReadonlySet<string> = new Set(['EACCES', 'EISDIR', 'ENOENT']);

/** The text of the file that an option names (`--roster -` is standard input); null where the option is not given. */
export async function readText(
  { options, io, speech }: Session,
  option: 'method' | 'roster',
): Promise<Outcome<string | null>> {
  const file = options[option];
  if (file === undefined) return { ok: true, value: null };
  try {
    return { ok: true, value: await (option === 'roster' && file === '-' ? io.readInput() : io.readFile(file)) };
  } catch (error) {
    const reason = errorCode(error);
    const status = knownReasons.has(reason) ? speech.texts.say(`unreadable.${reason}`) : reason;
    return { ok: false, problems: [{ path: `--${option}`, value: file, code: 'unreachable', allowed: { status } }] };
  }
}

/** Node names the reason in a code; an error without one is none of reading a file. */
function errorCode(error: unknown): string {
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code;
  throw error;
}
