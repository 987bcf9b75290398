import type { PlanFile } from '../plan/file/document.js';
import { readPlanFile } from '../plan/file/read-plan-file.js';
import { writePlanFile } from '../plan/file/write-plan-file.js';
import type { Outcome } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { parseDocument } from './parse-document.js';

/** Most characters of a plan file, and most objects and lists inside one another. */
export const planFileLimits = { characters: 1_000_000, depth: 10 } as const;

/** A plan as the text of a file that people may look into. */
export const writePlanFileText = (file: PlanFile): string => `${JSON.stringify(writePlanFile(file), null, 2)}\n`;

/** The same for a link: as short as it gets. */
export const writePlanLinkText = (file: PlanFile): string => JSON.stringify(writePlanFile(file));

/**
 * Reads a plan from the text of a file or a link: `readPlanFileText(writePlanFileText(file), method)` is the file. A byte
 * order mark in front is what some editors leave.
 *
 * @param method the method in use; a plan made with another is refused.
 * @returns the plan, or what is wrong: too long, nested too deep, no JSON (with the line where it ends to be some), or every
 *   fault of the document.
 */
export function readPlanFileText(text: string, method: Method): Outcome<PlanFile> {
  const parsed = parseDocument(text.replace(/^\uFEFF/, ''), planFileLimits);
  return parsed.ok ? readPlanFile(parsed.value, method) : parsed;
}
