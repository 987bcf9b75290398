import { evidence } from './evidence.js';

/** A published source as it is cited: the text, and where it can be read. */
export interface Citation {
  readonly id: string;
  readonly cite: string;
  readonly doi: string | null;
}

/** The citations of ids in shared/evidence; an id that is not there (a coach's own) is shown as it is. */
export function citations(ids: readonly string[]): readonly Citation[] {
  return ids.map((id) => evidence.find((entry) => entry.id === id) ?? { id, cite: id, doi: null });
}
