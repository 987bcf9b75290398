import type { Column } from '../column.js';

/** One input moved over some values, and what became of the quantities watched. */
export interface Sweep {
  readonly input: string;
  readonly values: readonly number[];
  /** For each quantity watched a number for each value, NaN where it failed. */
  readonly series: ReadonlyMap<string, Float64Array>;
}

/**
 * Moves one input or constant over the values given, in their order, and records the cells named; the column itself
 * stays as it is.
 *
 * Throws for a name that the sheet does not have or that cannot be set.
 *
 * @example sweep(column, { input: 'weekly_hours', values: [4, 5], cells: ['weekly_minutes'] })
 *   // series.get('weekly_minutes') is [240, 300]
 */
export function sweep(
  column: Column,
  { input, values, cells }: Pick<Sweep, 'input' | 'values'> & { readonly cells: readonly string[] },
): Sweep {
  const scratch = column.copy();
  const move = scratch.mover(input);
  const watched = cells.map((id) => ({ register: scratch.registerOf(id), numbers: new Float64Array(values.length) }));
  values.forEach((value, index) => {
    move(value);
    for (const { register, numbers } of watched) numbers[index] = scratch.registers[register]!;
  });
  return { input, values, series: new Map(cells.map((id, index) => [id, watched[index]!.numbers])) };
}
