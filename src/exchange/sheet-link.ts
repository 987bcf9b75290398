import type { ScenarioSheet } from '../plan/scenarios/document.js';
import { readScenarios } from '../plan/scenarios/read-scenarios.js';
import { writeScenarios } from '../plan/scenarios/write-scenarios.js';
import type { Outcome } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { parseDocument } from './parse-document.js';

/** Most characters of a sheet as text, and most objects and lists inside one another. */
export const sheetTextLimits = { characters: 64_000, depth: 8 } as const;

/** A what-if sheet as compact JSON, for a link. */
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
  const parsed = parseDocument(text, sheetTextLimits);
  return parsed.ok ? readScenarios(parsed.value, method) : parsed;
}
