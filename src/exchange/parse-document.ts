import type { Outcome, Problem } from '../problem.js';
import { jsonFaultLine } from './json-line.js';
import { nestingOf } from './nesting.js';

/** Most characters of a text, and most objects and lists inside one another. */
export interface TextLimits {
  readonly characters: number;
  readonly depth: number;
}

/**
 * Parses JSON that comes from outside.
 *
 * @returns the document, or what is wrong with the text: too long, nested too deep, no JSON from a line on.
 */
export function parseDocument(text: string, { characters, depth }: TextLimits): Outcome<unknown> {
  if (text.length > characters) return fault(text, { code: 'too-long', allowed: { most: characters } });
  // Before JSON.parse sees it: deep nesting costs a parser its stack.
  if (nestingOf(text) > depth) return fault(text, { code: 'too-deep', allowed: { most: depth } });
  try {
    const value: unknown = JSON.parse(text);
    return { ok: true, value };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return fault(text, { code: 'not-json', allowed: { line: jsonFaultLine(text) } });
  }
}

function fault(text: string, problem: Pick<Problem, 'code' | 'allowed'>): Outcome<never> {
  return { ok: false, problems: [{ path: '', value: text.trim().slice(0, 40), ...problem }] };
}
