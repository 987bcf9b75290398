import type { LitElement } from 'lit';
import type { Problem } from '../../problem.js';
import type { Draft, NumberField } from '../view.js';

/** Keeps what was typed into a number field and is no value of it, with what is wrong. */
export class DraftsController {
  all: Partial<Record<NumberField, Draft>> = {};
  readonly #host: LitElement;
  readonly #tell: (problem: Problem) => void;

  /** @param tell says to a listener what is wrong. */
  constructor(host: LitElement, tell: (problem: Problem) => void) {
    this.#host = host;
    this.#tell = tell;
  }

  get isEmpty(): boolean {
    return Object.keys(this.all).length === 0;
  }

  get problems(): readonly Problem[] {
    return Object.values(this.all).map(({ problem }) => problem);
  }

  refuse(field: NumberField, draft: Draft): void {
    this.all = { ...this.all, [field]: draft };
    this.#host.requestUpdate();
    this.#tell(draft.problem);
  }

  /** These fields have values again. */
  forget(fields: readonly string[]): void {
    this.all = Object.fromEntries(Object.entries(this.all).filter(([field]) => !fields.includes(field)));
  }
}
