import type { HoursFrame, HoursReason, Pace } from '../../../src/training/season/season-hours.js';

/** What the reference says of a week, in minutes. */
export interface ReferenceHours {
  readonly minutes: number;
  readonly reason: HoursReason;
  readonly base: number;
  readonly share: number | null;
}

/** A week that is settled. `counts`: what it counts for; `isOff`: a week off; `step`: the share of a way back it took. */
interface Settled extends ReferenceHours {
  readonly counts: number;
  readonly isOff: boolean;
  readonly level: number;
}

/**
 * The hours of a season, worked out a second time. Nothing is carried along: every week looks back over those before it
 * and finds out for itself which of them count, whether a break ends with it, and what its taper falls from.
 */
export function referenceHours(frames: readonly HoursFrame[], pace: Pace): readonly ReferenceHours[] {
  const settled: Settled[] = [];
  frames.forEach((_, week) => settled.push(settle({ frames, pace, settled, week })));
  return settled.map(({ minutes, reason, base, share }) => ({ minutes, reason, base, share }));
}

interface View {
  readonly frames: readonly HoursFrame[];
  readonly pace: Pace;
  readonly settled: readonly Settled[];
  readonly week: number;
}

const isByHand = ({ frames }: View, week: number): boolean => frames[week]?.byHand != null;

/** The weeks off that a week comes after, with the level before them: those of the weeks by hand just before it. */
function breakBefore(view: View, week: number): { readonly weeks: number; readonly level: number } {
  let first = week;
  while (first > 0 && isByHand(view, first - 1)) first -= 1;
  const off = view.settled.slice(first, week).filter(({ isOff }) => isOff);
  const before = first === 0 ? view.pace.weeksOff : 0;
  return { weeks: before + off.length, level: before > 0 ? view.pace.start : (off[0]?.level ?? 0) };
}

/** The last planned week, up to this one, that came after weeks off; with the shares of its way back. */
function lastReturn(view: View) {
  for (let week = view.week; week >= 0; week -= 1) {
    if (isByHand(view, week)) continue;
    const { weeks, level } = breakBefore(view, week);
    if (weeks > 0) return { week, level, shares: sharesAfter(weeks, view.pace) };
  }
  return null;
}

function sharesAfter(weeks: number, { wayBack: { steps } }: Pace): readonly number[] {
  const fitting = steps.filter((step) => weeks >= step.weeks).sort((one, other) => other.weeks - one.weeks);
  return fitting[0]?.shares ?? [];
}

/** The shares of a way back that are still to come, from this week on. */
function stepsLeft(view: View): readonly number[] {
  const back = lastReturn(view);
  if (!back || breakSince(view, back.week)) return [];
  const taken = view.frames.slice(back.week, view.week).filter(({ byHand }) => byHand === null).length;
  return back.shares.slice(taken);
}

const breakSince = (view: View, week: number): boolean => view.settled.slice(week + 1).some(({ isOff }) => isOff);

/** The level of a week: what was before the break, while one lasts and on the way back; else the most of four weeks. */
function levelOf(view: View): number {
  const pending = breakBefore(view, view.week);
  if (pending.weeks > 0) return pending.level;
  const back = lastReturn(view);
  if (back && stepsLeft(view).length > 0) return back.level;
  const known = back ? (back.shares.length > 0 ? [] : [back.level]) : [view.pace.start];
  const counted = view.settled.slice(back?.week ?? 0).map(({ counts }) => counts);
  return Math.max(...[...known, ...counted].slice(-4));
}

const isLight = (frame: HoursFrame | undefined): boolean => frame?.course === 'taper' || frame?.course === 'recovery';

/** What a light week falls from: the level of the first week of those in a row. */
function fallsFrom(view: View): number {
  let first = view.week;
  while (first > 0 && isLight(view.frames[first - 1])) first -= 1;
  return levelOf({ ...view, week: first, settled: view.settled.slice(0, first) });
}

const whole = (steps: number): number => Math.trunc(steps + 1e-9);
const floored = (minutes: number, { step, least }: Pace): number => Math.max(least, whole(minutes / step) * step);
const rounded = (minutes: number, { step, least }: Pace): number => Math.max(least, whole(minutes / step + 0.5) * step);

function settle(view: View): Settled {
  const { frames, pace, week } = view;
  const level = levelOf(view);
  const given = frames[week]?.byHand ?? null;
  if (given !== null)
    return {
      ...{ minutes: given, reason: 'by-hand', base: level, share: null, level },
      ...{ counts: Math.min(given, level), isOff: given <= level * pace.wayBack.offShare },
    };
  const planned = plannedWeek(view, level);
  const [share] = stepsLeft(view);
  if (share === undefined) return { ...planned, level, counts: planned.minutes, isOff: false };
  const allowed = floored(level * share, pace);
  // What the way back allows counts, though the week may be an easier one.
  const held: ReferenceHours = { minutes: allowed, reason: 'way-back', base: level, share };
  return { ...(planned.minutes > allowed ? held : planned), level, counts: allowed, isOff: false };
}

function plannedWeek(view: View, level: number): ReferenceHours {
  const { frames, pace, week } = view;
  const frame = frames[week];
  if (!frame) throw new RangeError(`there is no week ${week}`);
  const base = isLight(frame) ? fallsFrom(view) : level;
  const less = (share: number, reason: HoursReason): ReferenceHours => ({
    ...{ base, share, reason },
    // Rounding up must not make a week that should be easier a harder one.
    minutes: Math.min(rounded(base * share, pace), Math.max(base, pace.least)),
  });
  if (frame.course === 'taper') return less(taperShare(pace.taper, frame.taperLeft), 'taper');
  if (frame.course === 'recovery') return less(pace.recoveryShare, 'recovery');
  if (frame.hasOtherEvent) return less(1 - pace.easierDrop, 'other-event');
  if (frame.isEasier) return less(1 - pace.easierDrop, 'easier');
  const same = (reason: HoursReason): ReferenceHours => ({ minutes: base, reason, base, share: null });
  if (week === 0) return same('start');
  if (frame.course === 'holds') return same('hold');
  if (base >= floored(pace.most, pace)) return same('most');
  const ahead = frames.slice(week);
  const taper = ahead.findIndex((each) => each.course === 'taper');
  const rises = ahead.slice(0, taper < 0 ? ahead.length : taper).filter((each) => isRise(each)).length;
  const share = Math.min(pace.rise, Math.exp(Math.log(pace.most / base) / rises) - 1);
  // The next whole step, unless that is above the ceiling or above the most.
  const next = Math.ceil((base + base * share) / pace.step - 1e-9) * pace.step;
  const minutes = Math.min(next, floored(base * (1 + pace.rise), pace), floored(pace.most, pace));
  return { minutes: Math.max(base, minutes), reason: 'rise', base, share };
}

const isRise = ({ course, isEasier, hasOtherEvent, byHand }: HoursFrame): boolean =>
  course === 'rises' && !isEasier && !hasOtherEvent && byHand === null;

/**
 * What a week of a taper keeps: a power of a ratio r, with the mean of all weeks 1 − drop. For one week that is 1 − drop
 * itself, for two the root of r + r² = 2(1 − drop), for three that of r + r² + r³ = 3(1 − drop), by Newton's method.
 */
export function taperShare({ weeks, drop }: Pace['taper'], left: number): number {
  return ratioOf(weeks, 1 - drop) ** (weeks - left);
}

function ratioOf(weeks: number, mean: number): number {
  if (weeks <= 1) return mean;
  if (weeks === 2) return (Math.sqrt(1 + 8 * mean) - 1) / 2;
  let ratio = mean;
  for (let turn = 0; turn < 100; turn += 1)
    ratio -= (ratio + ratio ** 2 + ratio ** 3 - 3 * mean) / (1 + 2 * ratio + 3 * ratio ** 2);
  return ratio;
}
