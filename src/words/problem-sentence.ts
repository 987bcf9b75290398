import type { Problem } from '../problem.js';
import type { Values } from './phrases.js';
import { problemReason } from './problem-reason.js';
import type { Words } from './words.js';

/**
 * A problem as a sentence that names the field, the value given and what is allowed.
 *
 * @example problemSentence(words, { path: 'hours', value: 25, code: 'out-of-range', allowed: { least: 0.5, most: 20 } })
 *   // 'hours is 25; allowed: 0.5 to 20.'
 */
export function problemSentence(words: Words, problem: Problem): string {
  const field = problem.path === '' ? words.say('problem.document') : problem.path;
  const value = shown(words, problem.value);
  return words.say(problemKey(problem), { ...allowedValues(words, problem), field, value });
}

/** Some codes have several sentences, by what is known of the allowed. */
function problemKey({ code, allowed }: Problem): string {
  const key = `problem.${code}`;
  if (code === 'out-of-range' && allowed['most'] === undefined) return `${key}.least`;
  // A most that is a text is a day.
  if (code === 'out-of-range' && allowed['least'] === undefined)
    return typeof allowed['most'] === 'string' ? `${key}.until` : `${key}.most`;
  if (code === 'unknown-field' && allowed['fields'] !== undefined) return `${key}.fields`;
  if (code === 'unknown-name' && allowed['names'] !== undefined) return `${key}.names`;
  if (code === 'no-value' && overIn(allowed) !== null) return `${key}.nothing-left`;
  if ((code === 'not-json' || code === 'damaged') && allowed['line'] !== undefined) return `${key}.line`;
  if (code === 'not-json' && allowed['message'] === undefined) return `${key}.bare`;
  return key;
}

/** By how much too much is set by hand, where that is the cause. */
function overIn({ cause }: Problem['allowed']): number | null {
  if (typeof cause !== 'object' || cause === null || !('over' in cause)) return null;
  return typeof cause.over === 'number' ? cause.over : null;
}

function allowedValues(words: Words, problem: Problem): Values {
  const values = Object.entries(problem.allowed).map(
    ([name, value]) => [name, allowedText(words, name, value)] as const,
  );
  return { ...Object.fromEntries(values), over: overIn(problem.allowed) ?? 0, reason: problemReason(words, problem) };
}

function allowedText(words: Words, name: string, value: unknown): string {
  if (typeof value === 'number') return words.number(value, 4);
  if (Array.isArray(value)) return name === 'path' ? value.join(words.arrow) : words.alternatives(value.map(String));
  return name === 'expected' ? words.say(`problem.expected.${String(value)}`) : String(value);
}

const longestShown = 60;

/** What was given as its author wrote it, texts in quotes, long ones cut. */
function shown(words: Words, value: unknown): string {
  if (value === undefined) return words.say('problem.unnamed');
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
