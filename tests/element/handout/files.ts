// Files that somebody brings to a planner.
import type { HandoutPage } from './handout-page.js';
import { savedFile, type SavedFile } from './saving.js';

/** Chooses a file in the box for it. */
export async function choosesFile(page: HandoutPage, text: BlobPart, name = 'plan.json'): Promise<HandoutPage> {
  await page.opensBox('open');
  const input = page.find<HTMLInputElement>('.handout-open input[type="file"]');
  const before = page.message;
  input.files = carrying(text, name).files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
  return answered(page, before);
}

/** Drops a file on a part of the planner. */
export async function dropsFile(
  page: HandoutPage,
  text: BlobPart,
  { name = 'plan.json', on = '[part="planner"]' } = {},
): Promise<HandoutPage> {
  const before = page.message;
  drag(page, ['dragenter', 'dragover', 'drop'], carrying(text, name), on);
  return answered(page, before);
}

/** Drags something over a part of the planner; gives whether the browser is kept from leaving the page for it. */
export function drag(
  page: HandoutPage,
  types: readonly string[],
  dataTransfer: DataTransfer,
  on = '[part="planner"]',
): boolean[] {
  const options = { bubbles: true, composed: true, cancelable: true, dataTransfer };
  return types.map((type) => !page.find(on).dispatchEvent(new DragEvent(type, options)));
}

export function carrying(text: BlobPart, name: string): DataTransfer {
  const carried = new DataTransfer();
  carried.items.add(new File([text], name, { type: 'application/json' }));
  return carried;
}

/** Until the panel has said what came of it; the same may be said twice. */
async function answered(page: HandoutPage, before: string): Promise<HandoutPage> {
  await Promise.race([
    page.until(() => page.message !== before, 'something is said'),
    new Promise((resolve) => setTimeout(resolve, 1500)),
  ]);
  return page.answered().then(() => page);
}

export const savesPlan = (page: HandoutPage): Promise<SavedFile> => savedFile(() => page.acts('Save the plan'));

/** A plan file as it is published in shared/schema/file.schema.json, with these parts. */
export const fileText = (parts: object = {}, scenario: object = {}): string =>
  JSON.stringify({
    format: 'weekwright-file',
    version: 1,
    sheet: {
      format: 'weekwright-sheet',
      version: 1,
      method: 'weekwright',
      scenarios: [
        {
          id: 'a',
          inputs: { hours: 7, phase: 'peak', level: 'trained', event: '10k', strengthCap: 100 },
          ...scenario,
        },
      ],
    },
    ...parts,
  });
