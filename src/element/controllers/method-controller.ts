import type { ReactiveControllerHost } from 'lit';
import type { Planner } from '../../plan/planner.js';
import { builtInPlanner } from '../../plan/built-in-planner.js';
import type { Outcome, Problem } from '../../problem.js';
import type { MethodSource } from './method-source.js';

/** Where the page may put a coach's method: a property, else a script child, else an address of its own. */
export interface MethodPlaces {
  readonly method: unknown;
  readonly methodSrc: string | null | undefined;
}

/** Keeps the planner of the method in use; a faulty method is reported, and the last good one stays. */
export class MethodController {
  planner: Planner | null = null;
  problems: readonly Problem[] = [];
  /** True where the method in use is a coach's own: its rules may speak of any quantity. */
  isOwn = false;
  /** Settles when the method last asked for is in use or refused. */
  ready: Promise<void> = Promise.resolve();
  readonly #host: ReactiveControllerHost & Element;
  #latest = 0;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
  }

  /** Takes the method from its source; without one the built-in method is at hand at once. */
  use(places: MethodPlaces): void {
    const source = this.#sourceAmong(places);
    const turn = (this.#latest += 1);
    if (source) this.ready = this.#load(turn, source);
    else this.#settle({ ok: true, value: builtInPlanner() }, false);
  }

  #sourceAmong({ method, methodSrc }: MethodPlaces): MethodSource | null {
    const script = this.#host.querySelector(':scope > script[slot="method"]');
    if (method !== null && method !== undefined) return { kind: 'data', document: method };
    if (script) return { kind: 'script', text: script.textContent };
    return methodSrc ? { kind: 'address', address: methodSrc } : null;
  }

  async #load(turn: number, source: MethodSource): Promise<void> {
    const { planFrom } = await import('./method-source.js');
    const result = await planFrom(source);
    if (turn === this.#latest) this.#settle(result, true);
  }

  #settle(outcome: Outcome<Planner>, isOwn: boolean): void {
    if (outcome.ok) {
      this.planner = outcome.value;
      this.isOwn = isOwn;
    }
    this.planner ??= builtInPlanner();
    this.problems = outcome.ok ? [] : outcome.problems;
    this.#host.requestUpdate();
  }
}
