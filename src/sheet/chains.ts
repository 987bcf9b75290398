import type { SheetModel, SheetRule } from './model.js';

/** What one rule makes of one quantity: the cell before it, the cell after it, and the cell that says whether it holds. */
export interface Stage {
  readonly rule: string;
  readonly role: 'on' | 'to';
  readonly when: string;
  readonly before: string;
  readonly after: string;
}

/** What a person's hand makes of one quantity, after all rules: an override, or giving way to the overrides `to`. */
export interface HandStage {
  readonly kind: 'override' | 'gives-way';
  readonly before: string;
  readonly formula: string | null;
  readonly to: readonly string[];
}

/** The cells of a rule: its condition, what it finds in its quantities, what it leaves there. */
export interface RuleNames {
  readonly when: string;
  readonly value: string;
  readonly other: string;
  readonly after: string;
  /** Null where nothing gets or gives the difference. */
  readonly given: string | null;
}

/** The chains of a sheet's quantities, for those that have one. */
export interface Chained {
  readonly stages: ReadonlyMap<string, readonly Stage[]>;
  readonly hands: ReadonlyMap<string, HandStage>;
}

/** The chains of a model over whose quantities nobody has put anything, and the names of all its cells as linking lays them. */
export function ruledChains(model: SheetModel): Chained & { readonly names: readonly string[] } {
  const chains = new Chains(model);
  const base = model.formulas.map(({ id }) => chains.first(id));
  const ruled = model.rules.flatMap((rule) => {
    const { when, after, given } = chains.pass(rule);
    return given === null ? [when, after] : [when, after, given];
  });
  const { stages, hands } = chains;
  return { stages, hands, names: [...base, ...ruled, ...model.blocks.flatMap(({ writes }) => writes)] };
}

/**
 * Names the cells of each quantity's chain: what it is at first, after each rule on it, and after a person's hand. The
 * last cell has the quantity's own name, so that other formulas see it with all of that; the ones before, a number
 * behind it.
 */
export class Chains implements Chained {
  readonly stages = new Map<string, Stage[]>();
  readonly hands = new Map<string, HandStage>();
  readonly #lengths = new Map<string, number>();

  constructor({ rules }: SheetModel, touched: Iterable<string> = []) {
    const links = rules.flatMap(({ on, to }) => (to === undefined ? [on] : [on, to]));
    for (const id of [...links, ...touched]) this.#lengths.set(id, (this.#lengths.get(id) ?? 0) + 1);
  }

  first(id: string): string {
    return this.#name(id, 0);
  }

  now(id: string): string {
    return this.#name(id, this.stages.get(id)?.length ?? 0);
  }

  /** Goes through one more rule. */
  pass({ id: rule, on, to }: SheetRule): RuleNames {
    const [when, value, other] = [`${rule}.when`, this.now(on), this.now(to ?? on)];
    const after = this.#advance(on, { rule, role: 'on', when });
    const given = to === undefined ? null : this.#advance(to, { rule, role: 'to', when });
    return { when, value, other, after, given };
  }

  #advance(id: string, stage: Pick<Stage, 'rule' | 'role' | 'when'>): string {
    const stages = this.stages.get(id) ?? [];
    const before = this.now(id);
    const after = this.#name(id, stages.length + 1);
    this.stages.set(id, [...stages, { ...stage, before, after }]);
    return after;
  }

  /** Ends the chain of a quantity that was announced as touched by hand; gives the cell before the hand. */
  finish(id: string, stage: Omit<HandStage, 'before'>): string {
    const before = this.now(id);
    this.hands.set(id, { ...stage, before });
    return before;
  }

  #name(id: string, index: number): string {
    return index === (this.#lengths.get(id) ?? 0) ? id : `${id}.${index}`;
  }
}

/** The quantity whose chain a cell belongs to: `slow_minutes.1` is a stage of `slow_minutes`. */
export function quantityOf(cellId: string): string {
  return cellId.replace(/\.\w+$/, '');
}

/** True for the cells of a sharing: what its members have together, and what is left for them. */
export function isOfSharing(cellId: string): boolean {
  return /\.(?:free|spare)$/.test(cellId);
}
