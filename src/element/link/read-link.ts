import { readPlanFileText } from '../../exchange/plan-file.js';
import { readSheetText } from '../../exchange/sheet-link.js';
import type { PlanFile } from '../../plan/file/document.js';
import { fileOfSheet } from '../../plan/file/read-plan-file.js';
import type { Outcome } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { contentIn, type LinkPlace } from './page-link.js';

/**
 * The plan in an address; of a link of the first version, a what-if sheet alone.
 *
 * @param method the method in use; a plan made with another is refused.
 * @returns the plan, null where there is none under the key of the place, or what is wrong with the link or with the plan.
 */
export async function readLink(place: LinkPlace, method: Method): Promise<Outcome<PlanFile> | null> {
  const content = await contentIn(place);
  if (!content.ok) return content;
  if (content.value === null) return null;
  const { version, text } = content.value;
  if (version === 2) return readPlanFileText(text, method);
  const sheet = readSheetText(text, method);
  return sheet.ok ? { ok: true, value: fileOfSheet(sheet.value) } : sheet;
}
