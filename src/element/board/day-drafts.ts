import type { Problem } from '../../problem.js';
import { draftProblems } from '../parts/draft-problems.js';
import type { Draft } from '../view.js';

/** What people typed for days that is no number of minutes: kept as it is, with what is wrong. */
export class DayDrafts {
  readonly #drafts = new Map<number, Draft>();

  of(day: number): Draft | undefined {
    return this.#drafts.get(day);
  }

  keep(day: number, draft: Draft): void {
    this.#drafts.set(day, draft);
  }

  get problems(): readonly Problem[] {
    return draftProblems(this.#drafts);
  }

  clear(): void {
    this.#drafts.clear();
  }

  forget(day: number): void {
    this.#drafts.delete(day);
  }
}
