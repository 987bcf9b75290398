/** Session options: lists of durations in minutes, ascending. */
export type Lists = readonly (readonly number[])[];

/** What is to be cut into sessions: parts are whole numbers (see week-reference.ts), everything else is minutes. */
export interface CuttingQuestion {
  readonly parts: number;
  readonly partsPerMinute: number;
  /** The category's minutes in the rounded week. */
  readonly rounded: number;
  readonly shortest: number;
  readonly typical: number;
  readonly longest: number;
}

/** The ways to cut a category's minutes into sessions, best first, found by trying every multiset of durations. */
export function optionsByBruteForce(question: CuttingQuestion): Lists {
  if (question.parts === 0 || question.rounded === 0) return [];
  return best(everyMultiset(question), question);
}

/** Every ascending list of allowed durations with an allowed sum. */
export function everyMultiset(question: CuttingQuestion): Lists {
  const most = highestSum(question);
  const found: (readonly number[])[] = [];
  const extend = (list: readonly number[], sum: number): void => {
    if (list.length > 0 && isSumAllowed(sum, question)) found.push(list);
    for (let next = list.at(-1) ?? question.shortest; next <= question.longest && sum + next <= most; next += 5) {
      extend([...list, next], sum + next);
    }
  };
  extend([], 0);
  return found;
}

/** Of each pair of sum and number of sessions the three most even; of these the first twelve in rank. */
function best(lists: Lists, question: CuttingQuestion): Lists {
  const groups = new Map<string, Lists>();
  for (const list of lists) {
    const key = `${String(sumOf(list))} in ${String(list.length)}`;
    groups.set(key, [...(groups.get(key) ?? []), list].sort(byEvenness).slice(0, 3));
  }
  return firstTwelve([...groups.values()].flat(), question);
}

/** The first twelve in rank. */
export function firstTwelve(lists: Lists, question: CuttingQuestion): Lists {
  const claims = lists.map((list) => claimOf(list, question));
  return claims
    .sort(byRank)
    .slice(0, 12)
    .map(({ list }) => list);
}

/** Within ten minutes of the exact amount, or a tenth of it, whichever is more. */
export function isSumAllowed(sum: number, { parts, partsPerMinute }: CuttingQuestion): boolean {
  return 10 * Math.abs(sum * partsPerMinute - parts) <= Math.max(100 * partsPerMinute, parts);
}

/** The largest multiple of 5 that is an allowed sum. */
export function highestSum(question: CuttingQuestion): number {
  let sum = 5 * Math.ceil(question.parts / question.partsPerMinute / 5);
  while (isSumAllowed(sum + 5, question)) sum += 5;
  return sum;
}

/** Minutes over a typical session's, to the nearest whole number, halves up, at least one. */
function wishedCount({ parts, partsPerMinute, typical }: CuttingQuestion): number {
  return Math.max(1, Math.floor((2 * parts + typical * partsPerMinute) / (2 * typical * partsPerMinute)));
}

/** What an option is ranked by. */
interface Claim {
  readonly list: readonly number[];
  readonly sum: number;
  /** Distances from the rounded minutes, the wished number and the exact parts. */
  readonly missed: number;
  readonly odd: number;
  readonly inexact: number;
  /** How much the sum of squares exceeds that of equal sessions, times their number (which keeps it whole). */
  readonly unevenness: number;
}

function claimOf(list: readonly number[], question: CuttingQuestion): Claim {
  const sum = sumOf(list);
  return {
    list,
    sum,
    missed: Math.abs(sum - question.rounded),
    odd: Math.abs(list.length - wishedCount(question)),
    inexact: Math.abs(sum * question.partsPerMinute - question.parts),
    unevenness: list.length * squaresOf(list) - sum ** 2,
  };
}

/** Order of rank: negative when `one` is the better option. */
function byRank(one: Claim, other: Claim): number {
  return (
    one.missed - other.missed ||
    one.odd - other.odd ||
    one.unevenness * other.list.length - other.unevenness * one.list.length ||
    one.inexact - other.inexact ||
    one.sum - other.sum ||
    byMinutes(one.list, other.list)
  );
}

/** Less sum of squares first, then the smaller durations. */
export function byEvenness(one: readonly number[], other: readonly number[]): number {
  return squaresOf(one) - squaresOf(other) || byMinutes(one, other);
}

function byMinutes(one: readonly number[], other: readonly number[]): number {
  const index = one.findIndex((minutes, place) => minutes !== other[place]);
  return index < 0 ? one.length - other.length : (one[index] ?? 0) - (other[index] ?? 0);
}

const sumOf = (list: readonly number[]): number => list.reduce((sum, minutes) => sum + minutes, 0);
const squaresOf = (list: readonly number[]): number => list.reduce((sum, minutes) => sum + minutes * minutes, 0);
