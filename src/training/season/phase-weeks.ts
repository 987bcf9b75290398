/** A phase that a season is to have: so many weeks, or a share of what the others leave. */
export interface AskedPhase {
  /** Null for a share of the weeks that are left. */
  readonly weeks: number | null;
  readonly share: number;
  /** Least weeks of a phase that takes a share. */
  readonly least: number;
}

/** How long each phase is. */
export interface PhaseLengths {
  /** In the order asked for; 0 for a phase that found no room. */
  readonly weeks: readonly number[];
  /** Weeks that the phases ask for and the season does not have. */
  readonly missing: number;
  /** Weeks that no phase asked for; the first one has them. */
  readonly spare: number;
}

/**
 * Shares the weeks before the taper among phases. Settled lengths are kept; the others share the rest by Sainte-Laguë's
 * method, each with its least first. Where there are too few weeks, the phases next to the event are kept whole and the
 * first ones are cut.
 *
 * @param room whole weeks.
 * @example phaseWeeks([{ weeks: null, share: 0.5, least: 2 }, { weeks: 3, share: 0, least: 1 }], 8).weeks // [5, 3]
 */
export function phaseWeeks(phases: readonly AskedPhase[], room: number): PhaseLengths {
  const wanted = phases.map(({ weeks, least }) => weeks ?? least);
  const left = room - sum(wanted);
  if (left < 0) return { weeks: keptFromTheEnd(wanted, room), missing: -left, spare: 0 };
  const shares = phases.map(({ weeks, share }) => (weeks === null ? share : 0));
  if (left === 0 || shares.some((share) => share > 0))
    return { weeks: shareOut(wanted, shares, left), missing: 0, spare: 0 };
  return { weeks: wanted.map((weeks, index) => (index === 0 ? weeks + left : weeks)), missing: 0, spare: left };
}

function keptFromTheEnd(wanted: readonly number[], room: number): number[] {
  let left = room;
  return wanted.reduceRight<number[]>((kept, weeks) => {
    const own = Math.min(weeks, left);
    left -= own;
    return [own, ...kept];
  }, []);
}

/** A week at a time goes to the phase with the largest share for each half week that it would then have. */
function shareOut(least: readonly number[], shares: readonly number[], left: number): number[] {
  const weeks = [...least];
  for (let given = 0; given < left; given += 1) {
    const claims = shares.map((share, index) => share / (2 * (weeks[index] ?? 0) + 1));
    const largest = claims.indexOf(Math.max(...claims));
    weeks[largest] = (weeks[largest] ?? 0) + 1;
  }
  return weeks;
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);
