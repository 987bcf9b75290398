import type { FormulaCell } from './formula-cell.js';
import type { Chains } from './chains.js';
import type { CompiledFormula } from './formula/compiled-formula.js';
import type { Block, SheetModel, Sharing } from './model.js';

/** What a person's overrides touch: the overridden quantities, and those that give way to them. */
export interface Touched {
  readonly overridden: ReadonlySet<string>;
  readonly givers: ReadonlyMap<Sharing, readonly string[]>;
  /** Blocks that have to be worked out again around what is overridden. */
  readonly blocks: ReadonlySet<Block>;
}

/** Finds out whom the overrides of a model touch, directly or by giving way. */
export function touchedIn({ overrides, sharings, blocks }: SheetModel): Touched {
  const overridden = new Set(overrides.map(({ on }) => on));
  const isHeld = (id: string): boolean => overridden.has(id);
  const givers = sharings
    .filter(({ members }) => members.some(isHeld))
    .map((sharing) => {
      const [free, wished] = [sharing.members, sharing.givesWay].map((ids) => ids.filter((id) => !isHeld(id)));
      return [sharing, wished && wished.length > 0 ? wished : (free ?? [])] as const;
    });
  return {
    overridden,
    givers: new Map(givers),
    blocks: new Set(blocks.filter(({ writes }) => writes.some(isHeld))),
  };
}

/** The quantities whose chains a person's hand makes longer. */
export function touchedIds({ overridden, givers, blocks }: Touched): string[] {
  const given = [...givers.values()].flat();
  const written = [...blocks].flatMap(({ writes }) => writes.filter((id) => !overridden.has(id)));
  return [...overridden, ...given, ...written];
}

/** The cells in which overrides act, after every rule: what is overridden keeps what it replaces as `value`. */
export function overrideCells(
  { overrides }: SheetModel,
  chains: Chains,
  lookUp: (text: string) => CompiledFormula,
): FormulaCell[] {
  return overrides.map(({ on, formula }) => {
    const value = chains.finish(on, { kind: 'override', formula, to: [] });
    return { id: on, code: lookUp(formula), locals: { value } };
  });
}

/**
 * The cells in which the members of sharings give way: together they keep the sum, each its part of what is left; where
 * they have nothing, what is left is shared evenly. Less than nothing left is an error.
 */
export function givingCells({ overridden, givers }: Touched, chains: Chains): FormulaCell[] {
  return [...givers].flatMap(([{ members }, ids], index) => {
    if (ids.length === 0) return [];
    const held = members.filter((id) => overridden.has(id));
    const before = (id: string): string => chains.hands.get(id)?.before ?? chains.now(id);
    const [free, spare] = [`sharing_${index}.free`, `sharing_${index}.spare`];
    const cells = ids.map((id): FormulaCell => {
      const value = chains.finish(id, { kind: 'gives-way', formula: null, to: held });
      const code = [free, 0, '==', spare, ids.length, '/', value, spare, '*', free, '/', 'if()'];
      return { id, code, locals: {} };
    });
    const left = [free, ...sum(held.map(before)), ...sum(held), 'hand()', 'spare()'];
    return [{ id: free, code: sum(ids.map(before)), locals: {} }, { id: spare, code: left, locals: {} }, ...cells];
  });
}

/** A block with overridden results is worked out twice: as it would be, and around what is held. */
export function blocksAround({ overridden, blocks }: Touched, block: Block, chains: Chains): Block[] {
  if (!blocks.has(block)) return [block];
  const held = block.writes.filter((id) => overridden.has(id));
  const free = block.writes.filter((id) => !overridden.has(id));
  for (const id of free) chains.finish(id, { kind: 'gives-way', formula: null, to: held });
  const around: Block = {
    id: block.id,
    reads: [...block.reads, ...held],
    writes: free,
    compute: (values) => {
      const kept = block.writes.map((id) =>
        overridden.has(id) ? values[block.reads.length + held.indexOf(id)] : undefined,
      );
      const results = block.compute(values.slice(0, block.reads.length), kept);
      return free.map((id) => results[block.writes.indexOf(id)] ?? Number.NaN);
    },
  };
  return [{ ...block, writes: block.writes.map((id) => chains.first(id)) }, around];
}

const sum = (ids: readonly string[]): string[] => ids.flatMap((id, index) => (index === 0 ? [id] : [id, '+']));
