import type { EventId, PhaseId } from '../method/ids.js';
import { isoDate, isoWeek, knownDay, mondayOf } from './iso-date.js';
import type { HoursFrame } from './season-hours.js';

/** An event on a day of the season. */
export interface SeasonEvent {
  /** ISO date. */
  readonly date: string;
  readonly event: EventId;
}

/** A week of the calendar with its place in the season. */
export interface CalendarWeek {
  /** From 1. */
  readonly number: number;
  /** The Monday, an ISO date. */
  readonly start: string;
  /** The ISO week: 2026-W53. */
  readonly week: string;
  /** Weeks until that of the main event; 0 in its week, less after it. */
  readonly weeksToGo: number;
  readonly phase: PhaseId;
  readonly isEasier: boolean;
  readonly events: readonly (SeasonEvent & { readonly isMain: boolean })[];
}

/** What a season is laid out from. */
export interface SeasonOutline {
  /** Any day of the first week. */
  readonly start: string;
  readonly main: SeasonEvent;
  readonly others: readonly SeasonEvent[];
  /** The phases before the taper, each with its weeks. */
  readonly phases: readonly { readonly phase: PhaseId; readonly weeks: number }[];
  readonly taperWeeks: number;
  readonly recoveryWeeks: number;
  /** Every so many weeks one is easier; 0 for none. */
  readonly easierEvery: number;
}

/** Weeks in which nothing is eased off, for they are light anyway. */
const lightPhases: readonly PhaseId[] = ['taper', 'recovery'];

/** The whole weeks from the one that a day is in to that of another, both included. */
export function weeksFrom(start: string, end: string): number {
  return (mondayOf(knownDay(end)) - mondayOf(knownDay(start))) / 7 + 1;
}

/**
 * The weeks of a season on the calendar: phases to the main event, its taper, rest after it, and further weeks in `base`
 * up to the last event.
 */
export function seasonWeeks(outline: SeasonOutline): readonly CalendarWeek[] {
  const { start, main, others, easierEvery } = outline;
  const first = mondayOf(knownDay(start));
  const toMain = weeksFrom(start, main.date);
  const phases = phasesByWeek(outline, toMain);
  const events = [{ ...main, isMain: true }, ...others.map((each) => ({ ...each, isMain: false }))];
  const mondays = events.map(({ date }) => mondayOf(knownDay(date)));
  return phases.map((phase, index) => {
    const monday = first + 7 * index;
    const number = index + 1;
    return {
      number,
      start: isoDate(monday),
      week: isoWeek(monday),
      weeksToGo: toMain - number,
      phase,
      isEasier: easierEvery > 0 && number % easierEvery === 0 && !lightPhases.includes(phase),
      events: events.filter((_, each) => mondays[each] === monday),
    };
  });
}

function phasesByWeek({ start, others, phases, taperWeeks, recoveryWeeks }: SeasonOutline, toMain: number): PhaseId[] {
  const taper = Math.min(taperWeeks, toMain);
  const lastEvent = Math.max(toMain, ...others.map(({ date }) => weeksFrom(start, date)));
  const after = Math.max(0, lastEvent - toMain - recoveryWeeks);
  const of = (phase: PhaseId, weeks: number): PhaseId[] => Array.from({ length: weeks }, () => phase);
  return [
    ...phases.flatMap(({ phase, weeks }) => of(phase, weeks)),
    ...of('taper', taper),
    ...of('recovery', recoveryWeeks),
    ...of('base', after),
  ];
}

/** What the hours of a week follow from. */
export function hoursFrame(
  { phase, isEasier, events, weeksToGo }: CalendarWeek,
  { rising, byHand }: { readonly rising: readonly PhaseId[]; readonly byHand: number | null },
): HoursFrame {
  const isLight = phase === 'taper' || phase === 'recovery';
  return {
    course: isLight ? phase : rising.includes(phase) ? 'rises' : 'holds',
    taperLeft: Math.max(0, weeksToGo),
    isEasier,
    hasOtherEvent: events.some(({ isMain }) => !isMain),
    byHand,
  };
}
