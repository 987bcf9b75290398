/** No number, date or duration is longer; a longer cell is none, and costs no time to look at. */
const longest = 60;
const decimal = /^[-−+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[-+]?\d+)?$/i;

/** A cell without the space around it; empty where it is too long for a number, a date or a duration. */
export function shortCell(cell: string): string {
  const text = cell.trim();
  return text.length > longest ? '' : text;
}

/**
 * The number of a cell, with a decimal point or comma; no thousands separators, but an exponent, as spreadsheets write it.
 *
 * @returns the number, Infinity where it is too large for one, or null where the cell is none.
 * @example readDecimal('45,5') // 45.5
 */
export function readDecimal(cell: string): number | null {
  const text = shortCell(cell);
  return decimal.test(text) ? Number(text.replace(',', '.').replace('−', '-')) : null;
}
