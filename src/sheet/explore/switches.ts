import type { Column } from '../column.js';
import { withoutNoise } from '../numbers.js';
import type { Sheet } from '../sheet.js';

/** Something that is on or off in a column: a rule that acts, a split in use, a notice that is due. */
export interface Switch {
  readonly id: string;
  readonly isOn: (column: Column) => boolean;
}

/** A switch that is on where a cell is a number other than zero. Throws for a name that the sheet does not have. */
export function cellSwitch({ program }: Sheet, id: string, cell = id): Switch {
  const register = program.registers.get(cell);
  if (register === undefined) throw new Error(`the sheet has no quantity ${cell}`);
  return {
    id,
    isOn: ({ registers }) => {
      const value = registers[register]!;
      return value !== 0 && !Number.isNaN(value);
    },
  };
}

/** A switch for each rule of a sheet, in the order of the rules: on where the rule changes its quantity. */
export function ruleSwitches({ model, cells, program }: Sheet): Switch[] {
  const stages = new Map([...cells.stages.values()].flat().map((stage) => [`${stage.rule} ${stage.role}`, stage]));
  return model.rules.flatMap(({ id }) => {
    const stage = stages.get(`${id} on`);
    if (!stage) return [];
    const [before, after] = [program.registers.get(stage.before)!, program.registers.get(stage.after)!];
    return [{ id, isOn: ({ registers }) => isChange(registers[before]!, registers[after]!) }];
  });
}

/** Rounding errors are no change, and neither is a failure. */
function isChange(before: number, after: number): boolean {
  return Number.isFinite(after - before) && before !== after && withoutNoise(before) !== withoutNoise(after);
}
