import type { Problem } from '../../problem.js';

/** Whether people may keep plans on their device: where they ask for it, or not at all on this page. */
export const storages = ['ask', 'none'] as const;

/** What is wrong with what a page says of it. */
export function storageProblems(storage: string | null | undefined): readonly Problem[] {
  if (storage == null || storages.some((each) => each === storage)) return [];
  return [{ path: 'storage', value: storage, code: 'not-one-of', allowed: { choices: storages } }];
}
