import { countDays, dayBit, daysOf, type DaySet } from './day-sets.js';

/** Which slow session is the long run: the only one of `length` steps, all others being shorter; or none. */
export type LongChoice =
  | { readonly day: number; readonly length: number }
  /** Two sessions of the same length, and no longer one: then none is the long run. */
  | { readonly pair: readonly [number, number]; readonly length: number };

/** Every way in which the long run could be on a day of a set, or (null) nowhere, the shortest first. */
export function longChoices(
  days: DaySet,
  day: number | null,
  { least, most }: { least: number; most: number },
): LongChoice[] {
  const lengths = Array.from({ length: Math.max(0, most - least + 1) }, (_, index) => least + index);
  if (day !== null) return lengths.map((length) => ({ day, length }));
  const all = daysOf(days);
  const pairs = all.flatMap((one, index) => all.slice(index + 1).map((other) => [one, other] as const));
  return lengths.flatMap((length) => pairs.map((pair) => ({ pair, length })));
}

/** The least and most steps of a slow session under such a choice; `least` above `most` where it cannot be. */
export function longBounds(
  choice: LongChoice,
  day: number,
  { least, most }: { least: number; most: number },
): { least: number; most: number } {
  const { length } = choice;
  const isAtLength = 'day' in choice ? choice.day === day : choice.pair.includes(day);
  if (isAtLength) return { least: Math.max(least, length), most: Math.min(most, length) };
  return { least, most: Math.min(most, 'day' in choice ? length - 1 : length) };
}

/** The days that could have the long run among a set's, and null for none where two sessions can be equally long. */
export function longDays(days: DaySet, wanted: number | null): (number | null)[] {
  if (wanted !== null) return [wanted];
  return countDays(days) < 2 ? daysOf(days) : [null, ...daysOf(days)];
}

export const longSet = (day: number | null): DaySet => (day === null ? 0 : dayBit(day));
