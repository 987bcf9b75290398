// The hours of a season as one would write them for just this: a year to the event, a holiday and another event on the way.

export interface SeasonOptions {
  /** Minutes a week before the season, and at most. */
  readonly start: number;
  readonly most: number;
  readonly rise: number;
  readonly easierEvery: number;
  readonly easierDrop: number;
  readonly taperDrop: number;
}

export type SeasonPhase = 'base' | 'build' | 'peak' | 'taper' | 'recovery';

/** 52 weeks and two of rest: half of the 50 before the taper in base, three tenths in build, a fifth in peak. */
export const weekCount = 54;
const [firstOfBuild, firstOfPeak, firstOfTaper, firstOfRest] = [25, 40, 50, 52];
/** The weeks from Monday 19 October 2026 and from 1 March 2027 of a season from 13 April 2026. */
export const [holiday, otherEvent] = [27, 46];

export function phaseOf(week: number): SeasonPhase {
  if (week < firstOfBuild) return 'base';
  if (week < firstOfPeak) return 'build';
  if (week < firstOfTaper) return 'peak';
  return week < firstOfRest ? 'taper' : 'recovery';
}

const down = (minutes: number): number => Math.max(30, Math.floor(minutes / 5 + 1e-9) * 5);
const up = (minutes: number): number => Math.ceil(minutes / 5 - 1e-9) * 5;
const nearest = (minutes: number): number => Math.max(30, Math.round(minutes / 5 + 1e-9) * 5);

/** Minutes of each week. */
export function handWrittenHours(options: SeasonOptions): readonly number[] {
  const { start, easierEvery, easierDrop } = options;
  const isLess = (week: number): boolean =>
    week === otherEvent || (easierEvery > 0 && (week + 1) % easierEvery === 0 && week < firstOfTaper);
  let risesLeft = 0;
  for (let week = 0; week < firstOfPeak; week += 1) if (!isLess(week) && week !== holiday) risesLeft += 1;
  const ratio = (Math.sqrt(1 + 8 * (1 - options.taperDrop)) - 1) / 2;
  const all: number[] = [];
  let counted = [start];
  let level = start;
  let before = 0;
  for (let week = 0; week < weekCount; week += 1) {
    if (week === holiday) {
      all.push(0);
      continue;
    }
    const isBack = week === holiday + 1;
    const base = week > firstOfTaper ? before : level;
    if (week === firstOfTaper) before = level;
    let minutes = base;
    if (week >= firstOfRest) minutes = nearest(base * 0.5);
    else if (week >= firstOfTaper) minutes = nearest(base * ratio ** (week - firstOfTaper + 1));
    else if (isLess(week)) minutes = nearest(base * (1 - easierDrop));
    else if (week > 0 && week < firstOfPeak) minutes = risen(base, risesLeft, options);
    if (week < firstOfPeak && !isLess(week)) risesLeft -= 1;
    const counts = isBack ? down(base * 0.8) : minutes;
    counted = isBack ? [counts] : [...counted.slice(-3), counts];
    level = Math.max(...counted);
    all.push(Math.min(minutes, counts));
  }
  return all;
}

function risen(base: number, risesLeft: number, { most, rise }: SeasonOptions): number {
  if (base >= down(most)) return base;
  const share = Math.min(rise, (most / base) ** (1 / risesLeft) - 1);
  return Math.max(base, Math.min(up(base * (1 + share)), down(base * (1 + rise)), down(most)));
}
