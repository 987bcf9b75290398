import type { StrengthRules } from '../method/strength-rules.js';

/**
 * The share of the heaviest single with which so many repetitions can be done: linear between the rows of a method's
 * table, null outside them.
 *
 * @example shareOfMaximum(7, table) // 0.83 in the built-in method
 */
export function shareOfMaximum(repetitions: number, table: StrengthRules['maximum']['table']): number | null {
  const next = table.findIndex((row) => row.repetitions >= repetitions);
  const above = table[next];
  if (!above) return null;
  if (above.repetitions === repetitions) return above.share;
  const below = table[next - 1];
  if (!below) return null;
  const part = (repetitions - below.repetitions) / (above.repetitions - below.repetitions);
  return below.share + part * (above.share - below.share);
}
