import type { Citation } from './citation.js';
import { evidence } from './evidence.js';

/** The citations of ids in shared/evidence; an id that is not there (a coach's own) is shown as it is. */
export function citations(ids: readonly string[]): readonly Citation[] {
  const found = ids.map((id) => evidence.find((entry) => entry.id === id) ?? { id, cite: id, doi: null });
  // Several findings may come from one work.
  return found.filter(({ cite }, place) => found.findIndex((each) => each.cite === cite) === place);
}
