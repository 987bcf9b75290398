import type { HandStage } from './chains.js';
import type { ByHand, Reading } from './derivation.js';
import type { Program } from './program.js';

/** Tells what a person's hand did to quantities. */
export interface HandExplainer {
  /** The registers that the explanation of a quantity shows; none where no hand touches it. */
  readonly registersOf: (quantity: string) => readonly number[];
  /** @param read gives the number in a register as people read it. */
  readonly explain: (quantity: string, read: (register: number) => number | null) => ByHand | null;
}

/** An explainer for the hands of a sheet. */
export function explainHands({ registers, reads }: Program, hands: ReadonlyMap<string, HandStage>): HandExplainer {
  const names = new Map([...registers].map(([name, register]) => [register, name]));
  const read = (quantity: string, { kind, before, to }: HandStage): readonly number[] => {
    const own = registers.get(before);
    const found = kind === 'override' ? (reads.get(quantity) ?? []) : to.map((id) => registers.get(id)!);
    return found.filter((register) => register !== own);
  };
  return {
    registersOf: (quantity) => {
      const stage = hands.get(quantity);
      return stage ? [registers.get(stage.before)!, ...read(quantity, stage)] : [];
    },
    explain: (quantity, number) => {
      const stage = hands.get(quantity);
      if (!stage) return null;
      const { kind, formula, before, to } = stage;
      const readings = read(quantity, stage).map((register): Reading => ({
        name: names.get(register) ?? '',
        value: number(register),
      }));
      return { kind, formula, readings, before: number(registers.get(before)!), to };
    },
  };
}
