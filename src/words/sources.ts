import type { Citation } from './citation.js';
import { evidence } from './evidence.js';

/** The citations of ids in shared/evidence; an id that is not there (a coach's own) is shown as it is. */
export function citations(ids: readonly string[]): readonly Citation[] {
  return ids.map((id) => evidence.find((entry) => entry.id === id) ?? { id, cite: id, doi: null });
}
