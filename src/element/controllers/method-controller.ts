import type { ReactiveControllerHost } from 'lit';
import { builtInPlanner, createPlanner, type Planner } from '../../plan.js';
import type { Outcome, Problem } from '../../problem.js';

/** Where the page may put a coach's method: a property, else a script child, else an address of its own. */
export interface MethodSources {
  readonly method: unknown;
  readonly methodSrc: string | null | undefined;
}

/** Keeps the planner of the method in use; a faulty method is reported, and the last good one stays. */
export class MethodController {
  planner: Planner | null = null;
  problems: readonly Problem[] = [];
  /** Settles when the method last asked for is in use or refused. */
  ready: Promise<void> = Promise.resolve();
  readonly #host: ReactiveControllerHost & Element;
  #latest = 0;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
  }

  /** Takes the method from its source; without one the built-in method is at hand at once. */
  use({ method, methodSrc }: MethodSources): void {
    const script = this.#host.querySelector(':scope > script[slot="method"]');
    const turn = (this.#latest += 1);
    if (method !== null && method !== undefined) this.ready = this.#load(turn, createPlanner(method));
    else if (script) this.ready = this.#load(turn, parsed('script', script.textContent));
    else if (methodSrc) this.ready = this.#load(turn, fetched(methodSrc));
    else this.#settle({ ok: true, value: builtInPlanner() });
  }

  async #load(turn: number, outcome: Promise<Outcome<Planner>>): Promise<void> {
    const result = await outcome;
    if (turn === this.#latest) this.#settle(result);
  }

  #settle(outcome: Outcome<Planner>): void {
    if (outcome.ok) this.planner = outcome.value;
    this.planner ??= builtInPlanner();
    this.problems = outcome.ok ? [] : outcome.problems;
    this.#host.requestUpdate();
  }
}

const fault = (problem: Problem): Outcome<Planner> => ({ ok: false, problems: [problem] });

async function parsed(path: string, text: string | null): Promise<Outcome<Planner>> {
  try {
    return await createPlanner(JSON.parse(text ?? ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return fault({
      path,
      value: (text ?? '').trim().slice(0, 40),
      code: 'not-json',
      allowed: { message: error.message },
    });
  }
}

/** Only addresses of the page's own origin are read: a page cannot be made to tell another site that it was opened. */
async function fetched(source: string): Promise<Outcome<Planner>> {
  const path = 'method-src';
  const url = URL.canParse(source, document.baseURI) ? new URL(source, document.baseURI) : null;
  if (url?.origin !== location.origin)
    return fault({ path, value: source, code: 'other-origin', allowed: { origin: location.origin } });
  const response = await fetch(url, { redirect: 'error' }).catch(() => null);
  if (!response?.ok)
    return fault({ path, value: source, code: 'unreachable', allowed: { status: response?.status ?? 0 } });
  return parsed(path, await response.text());
}
