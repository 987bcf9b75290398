/** A factor and the name of a variable. */
export type Term = readonly [factor: number, variable: string];
type Relation = '>=' | '<=' | '=';

/** A mixed integer programme, written down row by row, as text in the CPLEX LP format. */
export class LinearProgramme {
  readonly #rows: string[] = [];
  readonly #bounds: string[] = [];
  readonly #variables: string[] = [];

  /** Names a variable that is 0 or 1. */
  binary(name: string): string {
    return this.whole(name, 1);
  }

  /** Names a variable that is a whole number from 0 to `most`. */
  whole(name: string, most: number): string {
    this.#variables.push(name);
    this.#bounds.push(`0 <= ${name} <= ${most}`);
    return name;
  }

  /** Writes a row: the sum of the terms, at least, at most or exactly so much. */
  demand(terms: readonly Term[], relation: Relation, bound: number): void {
    this.#rows.push(`r${this.#rows.length}: ${sumOf(terms)} ${relation} ${bound}`);
  }

  /** The whole programme, with the sum that is to be as small as possible. */
  minimising(terms: readonly Term[]): string {
    return [
      ...['Minimize', `goal: ${sumOf(terms)}`],
      ...['Subject To', ...this.#rows],
      ...['Bounds', `${nothing} = 0`, ...this.#bounds],
      ...['General', ...this.#variables],
      'End',
    ].join('\n');
  }
}

/** A variable that is 0, for sums without terms. */
const nothing = 'nothing';

function sumOf(terms: readonly Term[]): string {
  const factors = new Map<string, number>();
  for (const [factor, variable] of terms) factors.set(variable, (factors.get(variable) ?? 0) + factor);
  const written = Array.from(
    factors,
    ([variable, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${variable}`,
  );
  return written.length > 0 ? written.join(' ') : `+ 1 ${nothing}`;
}
