/** Every way in which the text of a formula can be refused. */
export const formulaErrorCodes = [
  'empty',
  'syntax',
  'too-long',
  'too-deep',
  'unknown-name',
  'unknown-function',
  'wrong-arguments',
  'not-allowed',
  'not-finite',
] as const;
export type FormulaErrorCode = (typeof formulaErrorCodes)[number];

/** Why the text of a formula is refused, and where: `position` counts characters from 0. */
export interface FormulaError {
  readonly code: FormulaErrorCode;
  readonly position: number;
  /** The offending piece of text, a name or a sign; `implicit multiplication` where a sign is missing. */
  readonly found: string;
  /** Limits and counts that the words for the code need: `most`, `least`, `given`. */
  readonly values: Readonly<Record<string, number>>;
}

/** Makes a formula error; see the fields of `FormulaError`. */
export function formulaError(
  code: FormulaErrorCode,
  position: number,
  ...[found = '', values = {}]: [found?: string, values?: Readonly<Record<string, number>>]
): FormulaError {
  return { code, position, found, values };
}
