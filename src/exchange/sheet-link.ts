import type { ScenarioSheet } from '../plan/scenarios/document.js';
import { readScenarios } from '../plan/scenarios/read-scenarios.js';
import { writeScenarios } from '../plan/scenarios/write-scenarios.js';
import type { Outcome, Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { nestingOf } from './nesting.js';

/** Most characters of a sheet as text, and most objects and lists inside one another. */
export const sheetTextLimits = { characters: 64_000, depth: 8 } as const;

/** A what-if sheet as compact JSON, for a link or a file. */
export function writeSheetText(sheet: ScenarioSheet): string {
  return JSON.stringify(writeScenarios(sheet));
}

/**
 * Reads the text of a what-if sheet that comes from outside: `readSheetText(writeSheetText(sheet), method)` is the sheet.
 *
 * @param method the method in use; a sheet made with another is refused.
 * @returns the sheet, or what is wrong: too long, nested too deep, no JSON, or every fault of the document.
 */
export function readSheetText(text: string, method: Method): Outcome<ScenarioSheet> {
  const { characters, depth } = sheetTextLimits;
  if (text.length > characters) return fault(text, { code: 'too-long', allowed: { most: characters } });
  // Before JSON.parse sees it: deep nesting costs a parser its stack.
  if (nestingOf(text) > depth) return fault(text, { code: 'too-deep', allowed: { most: depth } });
  const parsed = parseJson(text);
  return parsed ? readScenarios(parsed.document, method) : fault(text, { code: 'not-json', allowed: {} });
}

function fault(text: string, problem: Pick<Problem, 'code' | 'allowed'>): Outcome<never> {
  return { ok: false, problems: [{ path: '', value: text.trim().slice(0, 40), ...problem }] };
}

function parseJson(text: string): { readonly document: unknown } | undefined {
  try {
    return { document: JSON.parse(text) };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return undefined;
  }
}
