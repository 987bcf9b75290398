import type { Deriver } from '../sheet/derive.js';
import type { Derivation } from '../sheet/derivation.js';
import type { Method } from '../training/method/document.js';
import { provenanceOf } from '../training/method/provenance.js';
import type { Plan, PlanDerivation } from './document.js';

interface Made {
  readonly splitId: string;
  readonly plain: Derivation;
  readonly founded: PlanDerivation;
}

/** The derivations of a whole plan, each with how well it is founded; those that did not change are handed out again. */
export class PlanDerivations {
  readonly #method: Method;
  readonly #deriver: Deriver;
  readonly #made = new Map<string, Made>();

  constructor(method: Method, deriver: Deriver) {
    this.#method = method;
    this.#deriver = deriver;
  }

  /** Derivations by quantity id while the split `splitId` is in use. */
  all(splitId: string): Plan['derivations'] {
    const derivations: Record<string, PlanDerivation> = {};
    for (const id of this.#deriver.quantities) derivations[id] = this.#one(id, splitId);
    return derivations;
  }

  #one(id: string, splitId: string): PlanDerivation {
    const plain = this.#deriver.derive(id);
    const last = this.#made.get(id);
    if (last?.splitId === splitId && last.plain === plain) return last.founded;
    const { quantity, kind, value, formula, readings, rules, byHand, error } = plain;
    const { status, sources, reason } = provenanceOf(this.#method, id, splitId);
    // Field by field: two spreads take ten times as long, and every event makes dozens of these.
    const founded = { quantity, kind, value, formula, readings, rules, byHand, error, status, sources, reason };
    this.#made.set(id, { splitId, plain, founded });
    return founded;
  }
}
