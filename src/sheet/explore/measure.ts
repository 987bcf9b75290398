import type { Column } from '../column.js';

/** What a question is about: a quantity by its name, or any number that can be read off a column. */
export type Measure = string | ((column: Column) => number);

/** The measure as a function. Throws for a name that the sheet does not have. */
export function measureOn(column: Column, measure: Measure): (column: Column) => number {
  if (typeof measure === 'function') return measure;
  const register = column.registerOf(measure);
  return ({ registers }) => registers[register]!;
}
