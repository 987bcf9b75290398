import { taperShares } from './taper-shares.js';

/** Why a week has the hours that it has. */
export const hoursReasons = [
  'start',
  'rise',
  'most',
  'hold',
  'easier',
  'other-event',
  'taper',
  'recovery',
  'way-back',
  'by-hand',
] as const;
export type HoursReason = (typeof hoursReasons)[number];

/** What the hours of a week follow from. */
export interface HoursFrame {
  /** `holds` keeps the level, `rises` raises it, `taper` and `recovery` fall from it. */
  readonly course: 'holds' | 'rises' | 'taper' | 'recovery';
  /** Weeks of the taper after this one; 0 where there is no taper. */
  readonly taperLeft: number;
  readonly isEasier: boolean;
  /** True in the week of an event that is not the main one. */
  readonly hasOtherEvent: boolean;
  /** Minutes set by a person; null where they follow from the rest. */
  readonly byHand: number | null;
}

/** How fast and how far the hours may go. All amounts are minutes a week, all parts shares of 1. */
export interface Pace {
  /** Minutes a week before the season. */
  readonly start: number;
  /** Weeks without training just before the season. */
  readonly weeksOff: number;
  readonly most: number;
  /** Least minutes of a week with training. */
  readonly least: number;
  /** Planned weeks are whole multiples of this. */
  readonly step: number;
  /** Most that a week may have above the highest of the weeks before it. */
  readonly rise: number;
  readonly easierDrop: number;
  readonly taper: { readonly weeks: number; readonly drop: number };
  readonly recoveryShare: number;
  readonly wayBack: {
    /** A week set by hand to this share or less of the weeks before it is a week off. */
    readonly offShare: number;
    /** For so many weeks off or more: shares of the weeks before them that the first weeks back have. */
    readonly steps: readonly { readonly weeks: number; readonly shares: readonly number[] }[];
  };
}

export interface WeekHours {
  readonly minutes: number;
  readonly reason: HoursReason;
  /** What the week starts from: the highest of the four weeks before it, or before the taper, the rest or the break. */
  readonly base: number;
  /** The part of the base that the week has or, of a rise, that it adds; null where there is none. */
  readonly share: number | null;
  /** Weeks that rise, this one included; 0 where it does not rise. */
  readonly risesLeft: number;
  /** Most minutes that the ceiling of the rise allows. */
  readonly ceiling: number;
}

/** The weeks that a week is held against: 28 days, as near to the 30 of the published cohort as weeks come. */
const weeksBack = 4;

/** Where a season stands before a week. */
interface Course {
  /** What the last weeks count for, since the last break. */
  readonly counted: readonly number[];
  /** Weeks off in a row up to here, and the level before them. */
  readonly weeksOff: number;
  readonly before: number;
  /** What the next weeks may have of the level before, on the way back. */
  readonly wayBack: readonly number[];
  /** What a taper or a rest falls from, while it lasts. */
  readonly fallsFrom: number | null;
}

/**
 * The minutes of every week of a season, each from the weeks before it.
 *
 * A week that rises adds just so much that the rises left up to the next taper, all alike, end at the most, in whole steps upwards; never more
 * than `rise` above the highest of the four weeks before it. An easier week, the week of another event, a taper and a rest take their part off
 * that level. A week set by hand never raises it. After weeks off the first weeks have less, and what they have is the
 * level then.
 *
 * @param frames the weeks in their order.
 * @returns minutes in whole steps, but for the starting level and for weeks set by hand.
 */
export function seasonHours(frames: readonly HoursFrame[], pace: Pace): readonly WeekHours[] {
  const { start, weeksOff, taper } = pace;
  let course: Course = { counted: [start], weeksOff, before: start, wayBack: [], fallsFrom: null };
  const risesLeft = risesUpToTaper(frames);
  const taperParts = taperShares(taper.weeks, taper.drop);
  return frames.map((frame, index) => {
    course = setOut(course, frame, pace);
    const place = { course, isFirst: index === 0, risesLeft: risesLeft[index] ?? 0, taperParts };
    const week = weekHours(frame, place, pace);
    course = goOn(course, { frame, week, pace });
    return week;
  });
}

const rises = ({ course, isEasier, hasOtherEvent, byHand }: HoursFrame): boolean =>
  course === 'rises' && !isEasier && !hasOtherEvent && byHand === null;

/** For each week the weeks that rise from it on, up to the next taper: what comes after an event is another way up. */
function risesUpToTaper(frames: readonly HoursFrame[]): readonly number[] {
  const left: number[] = [];
  let count = 0;
  for (let index = frames.length - 1; index >= 0; index -= 1) {
    const frame = frames[index];
    if (frame?.course === 'taper') count = 0;
    else if (frame && rises(frame)) count += 1;
    left[index] = count;
  }
  return left;
}

/** Before a week: it may be the first after weeks off, and the first of a taper or a rest. */
function setOut(course: Course, { course: kind, byHand }: HoursFrame, { wayBack }: Pace): Course {
  const isBack = byHand === null && course.weeksOff > 0;
  const next = isBack ? { ...course, ...firstBack(course, wayBack.steps), weeksOff: 0 } : course;
  const falls = kind === 'taper' || kind === 'recovery';
  return { ...next, fallsFrom: falls ? (course.fallsFrom ?? levelOf(next)) : null };
}

function firstBack({ weeksOff, before }: Course, steps: Pace['wayBack']['steps']): Pick<Course, 'wayBack' | 'counted'> {
  const fitting = steps.filter(({ weeks }) => weeks <= weeksOff);
  const { shares } = fitting.reduce((best, each) => (each.weeks > best.weeks ? each : best), {
    weeks: 0,
    shares: noShares,
  });
  return { wayBack: shares, counted: shares.length > 0 ? [] : [before] };
}

const noShares: readonly number[] = [];

function levelOf({ counted, weeksOff, before, wayBack }: Course): number {
  return weeksOff > 0 || wayBack.length > 0 ? before : Math.max(...counted);
}

interface Place {
  readonly course: Course;
  readonly isFirst: boolean;
  /** Weeks that rise, from this one on, up to the next taper. */
  readonly risesLeft: number;
  readonly taperParts: readonly number[];
}

function weekHours(frame: HoursFrame, place: Place, pace: Pace): WeekHours {
  const { course } = place;
  const level = levelOf(course);
  const ordinary = frame.byHand === null ? ordinaryWeek(frame, place, pace) : byHandWeek(frame.byHand, level, pace);
  const [share] = course.wayBack;
  if (frame.byHand !== null || share === undefined) return ordinary;
  const minutes = down(level * share, pace);
  return ordinary.minutes <= minutes ? ordinary : { ...plain(level, pace), share, minutes, reason: 'way-back' };
}

const plain = (base: number, { rise }: Pace): Pick<WeekHours, 'base' | 'share' | 'risesLeft' | 'ceiling'> => ({
  base,
  share: null,
  risesLeft: 0,
  ceiling: base * (1 + rise),
});

const byHandWeek = (minutes: number, level: number, pace: Pace): WeekHours => ({
  ...plain(level, pace),
  minutes,
  reason: 'by-hand',
});

function ordinaryWeek(frame: HoursFrame, { course, isFirst, risesLeft, taperParts }: Place, pace: Pace): WeekHours {
  const base = course.fallsFrom ?? levelOf(course);
  const part = (share: number, reason: HoursReason): WeekHours => ({
    ...plain(base, pace),
    share,
    reason,
    minutes: Math.min(base, nearest(base * share, pace)),
  });
  if (frame.course === 'taper') return part(taperParts[taperParts.length - 1 - frame.taperLeft] ?? 1, 'taper');
  if (frame.course === 'recovery') return part(pace.recoveryShare, 'recovery');
  if (frame.hasOtherEvent) return part(1 - pace.easierDrop, 'other-event');
  if (frame.isEasier) return part(1 - pace.easierDrop, 'easier');
  if (isFirst) return { ...plain(base, pace), minutes: base, reason: 'start' };
  if (frame.course === 'holds') return { ...plain(base, pace), minutes: base, reason: 'hold' };
  if (base >= down(pace.most, pace)) return { ...plain(base, pace), minutes: base, reason: 'most' };
  const share = Math.min(pace.rise, (pace.most / base) ** (1 / risesLeft) - 1);
  // Up to the next step where the ceiling allows it: else the rises left would have to be steeper.
  const highest = Math.min(down(base * (1 + pace.rise), pace), down(pace.most, pace));
  const minutes = Math.max(base, Math.min(up(base * (1 + share), pace), highest));
  return { ...plain(base, pace), share, risesLeft, minutes, reason: 'rise' };
}

/** After a week: what it counts for, and whether it was a week off. */
function goOn(
  course: Course,
  { frame: { byHand }, week, pace }: { readonly frame: HoursFrame; readonly week: WeekHours; readonly pace: Pace },
): Course {
  const level = levelOf(course);
  const counts = (minutes: number): readonly number[] => [...course.counted.slice(1 - weeksBack), minutes];
  const [share = 0, ...wayBack] = course.wayBack;
  // An easier week on the way back does not lower what the way back allows.
  const allowed = share > 0 ? down(level * share, pace) : 0;
  if (byHand === null) return { ...course, counted: counts(Math.max(week.minutes, allowed)), wayBack };
  const counted = counts(Math.min(byHand, level));
  if (byHand > level * pace.wayBack.offShare) return { ...course, counted };
  return { ...course, counted, weeksOff: course.weeksOff + 1, before: level, wayBack: [] };
}

/** Rounded down, so that no ceiling is passed; a hair's breadth is given for rounding errors. */
const down = (minutes: number, { step, least }: Pace): number =>
  Math.max(least, Math.floor(minutes / step + 1e-9) * step);

const up = (minutes: number, { step }: Pace): number => Math.ceil(minutes / step - 1e-9) * step;

const nearest = (minutes: number, { step, least }: Pace): number =>
  Math.max(least, Math.round(minutes / step + 1e-9) * step);
