import { compareLists, evenCuts } from './even-cuts.js';

/** Minutes of a category's shortest useful, typical and longest session. */
export interface SessionLimits {
  readonly shortest: number;
  readonly typical: number;
  readonly longest: number;
}

/** How minutes become sessions: the step of durations and how far a sum may be off, in minutes or as a share. */
export interface Rounding {
  readonly step: number;
  readonly tolerance_minutes: number;
  readonly tolerance_share: number;
}

/** A category's week: exact minutes, the same rounded, and what its sessions may be. */
export interface SessionNeed {
  readonly exact: number;
  readonly rounded: number;
  readonly limits: SessionLimits;
  readonly rounding: Rounding;
}

/** Ways listed for one sum and one number of sessions, and in all: enough to choose from, few enough to read. */
const listed = { perCut: 3, inAll: 12 } as const;

interface Ranked {
  readonly parts: number[];
  readonly total: number;
  readonly unevenness: number;
}

/** How many sessions a category's minutes would usually be: the minutes over a typical session's, at least one. */
export function wishedSessions(exactMinutes: number, typicalMinutes: number): number {
  return Math.max(1, Math.round(exactMinutes / typicalMinutes));
}

/**
 * The ways to cut a category's minutes into sessions, best first: nearest to the rounded minutes, then nearest to the
 * wished number of sessions, then most even, then nearest to the exact minutes. At most 3 for one sum and one number
 * of sessions, 12 in all.
 *
 * @returns ascending lists of minutes; none where the category has no minutes, exact or rounded, or no session fits them.
 * @example sessionOptions(strength72)[1] // [30, 45]
 */
export function sessionOptions(need: SessionNeed): number[][] {
  return bestOptions(need, listed);
}

/** The best way alone, at a fraction of the cost; empty where there is none. */
export function bestSessions(need: SessionNeed): readonly number[] {
  return bestOptions(need, { perCut: 1, inAll: 1 })[0] ?? [];
}

function bestOptions(need: SessionNeed, { perCut, inAll }: Readonly<Record<keyof typeof listed, number>>): number[][] {
  const { exact, rounded, limits, rounding } = need;
  if (exact <= 0 || rounded <= 0) return [];
  const wished = wishedSessions(exact, limits.typical);
  const most = Math.max(wished, (rounded + tolerance(need)) / limits.shortest);
  const options: number[][] = [];
  for (let distance = 0; distance <= rounded + tolerance(need) && options.length < inAll; distance += rounding.step) {
    const totals = totalsAt(distance, need);
    if (totals.length === 0 && distance > rounding.step + tolerance(need)) break;
    for (let off = 0; off <= most && options.length < inAll; off += 1) {
      const counts = off === 0 ? [wished] : [wished - off, wished + off];
      const candidates: Ranked[] = [];
      for (const total of totals)
        for (const count of counts) candidates.push(...cutsOf({ total, count, most: perCut }, need));
      for (const { parts } of ranked(candidates, exact)) options.push(parts);
    }
  }
  return options.slice(0, inAll);
}

/** Sums that are this far from the rounded minutes, and near enough to the exact ones. */
function totalsAt(distance: number, need: SessionNeed): number[] {
  const totals = distance === 0 ? [need.rounded] : [need.rounded - distance, need.rounded + distance];
  return totals.filter((total) => total > 0 && isCloseEnough(total, need));
}

/** True where the durations are a session option: whole steps within the limits, with a sum near enough to the minutes. */
export function isSessionOption(durations: readonly number[], need: SessionNeed): boolean {
  const { limits, rounding } = need;
  const total = durations.reduce((sum, duration) => sum + duration, 0);
  const fits = (duration: number): boolean =>
    duration % rounding.step === 0 && duration >= limits.shortest && duration <= limits.longest;
  return durations.length > 0 && durations.every(fits) && isCloseEnough(total, need);
}

/** The least and the most steps that the sessions of an option may add up to. */
export function optionSteps(need: SessionNeed): { readonly least: number; readonly most: number } {
  const { exact, rounding } = need;
  const near = Math.round(exact / rounding.step);
  const reach = Math.ceil(tolerance(need) / rounding.step) + 1;
  const steps = Array.from({ length: 2 * reach + 1 }, (_, index) => near - reach + index);
  const close = steps.filter((count) => count > 0 && isCloseEnough(count * rounding.step, need));
  return { least: close.at(0) ?? 0, most: close.at(-1) ?? 0 };
}

function tolerance({ exact, rounding }: SessionNeed): number {
  return Math.max(rounding.tolerance_minutes, rounding.tolerance_share * exact);
}

function isCloseEnough(total: number, need: SessionNeed): boolean {
  // A hair's breadth is given for rounding errors: 0.1 of 180 minutes is 18.000000000000004.
  return Math.abs(total - need.exact) <= tolerance(need) + 1e-9;
}

/** The most even ways to cut `total` minutes into `count` sessions. */
function cutsOf(
  { total, count, most }: { readonly total: number; readonly count: number; readonly most: number },
  { limits, rounding: { step } }: SessionNeed,
): Ranked[] {
  const units = { total: total / step, count, least: limits.shortest / step, most: limits.longest / step };
  return evenCuts(units, most).map((cut) => {
    const parts = cut.map((unit) => unit * step);
    const squares = parts.reduce((sum, part) => sum + part * part, 0);
    return { parts, total, unevenness: (count * squares - total * total) / count };
  });
}

function ranked(candidates: Ranked[], exact: number): Ranked[] {
  return candidates.sort(
    (left, right) =>
      left.unevenness - right.unevenness ||
      Math.abs(left.total - exact) - Math.abs(right.total - exact) ||
      left.total - right.total ||
      compareLists(left.parts, right.parts),
  );
}
