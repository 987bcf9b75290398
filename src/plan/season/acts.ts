import { isoDate, knownDay, mondayDate, mondayOf } from '../../training/season/iso-date.js';
import { weeksFrom } from '../../training/season/season-weeks.js';
import type { PlanSeason, SeasonChange, SeasonWeek } from './document.js';
import type { ByHandReason, ByHandWeek, SeasonRequest, SeasonWishes } from './wishes.js';

/*
 * What can be done to a season: each function gives another request, and leaves the one it got. `wishes` are those that
 * the request stands for.
 */

/** Sets the weeks up to the event: the first day moves, or the event where only the first day was given. */
export function setSeasonWeeks(request: SeasonRequest, wishes: SeasonWishes, weeks: number): SeasonRequest {
  const { start: _, ...others } = request;
  return request.date === undefined ? { ...request, weeks } : { ...others, date: wishes.date, weeks };
}

/** Sets the day of the event; the first day stays, or the weeks where they were asked for. */
export function setSeasonDate(request: SeasonRequest, wishes: SeasonWishes, date: string): SeasonRequest {
  const { weeks, ...others } = request;
  if (request.date !== undefined && weeks !== undefined) return { ...request, date };
  return { ...others, start: request.start ?? wishes.start, date };
}

/** Sets the first day; the event stays. */
export function setSeasonStart(request: SeasonRequest, wishes: SeasonWishes, start: string): SeasonRequest {
  const { weeks: _, ...others } = request;
  return { ...others, start, date: wishes.date };
}

/** Moves the first week by whole weeks, to the same event. */
export function moveSeasonStart(request: SeasonRequest, wishes: SeasonWishes, weeks: number): SeasonRequest {
  return setSeasonStart(request, wishes, isoDate(mondayOf(knownDay(wishes.start)) + 7 * weeks));
}

/** Sets a week by hand; null lifts what is set of it. */
export function setSeasonWeek(
  request: SeasonRequest,
  start: string,
  change: Partial<Pick<ByHandWeek, 'hours' | 'reason' | 'sessions'>> | null,
): SeasonRequest {
  const { byHand = [] } = request;
  const monday = mondayDate(start);
  const isIt = (week: Pick<ByHandWeek, 'start'>): boolean => mondayDate(week.start) === monday;
  const found = byHand.find(isIt);
  const others = byHand.filter((week) => !isIt(week));
  if (change === null) return { ...request, byHand: others };
  const week = {
    hours: null,
    reason: 'other' as ByHandReason,
    sessions: {},
    ...found,
    ...change,
    start: monday,
  };
  const isNothing = week.hours === null && Object.keys(week.sessions).length === 0;
  return { ...request, byHand: isNothing ? others : [...others, week] };
}

/** Makes a change that helps. */
export function makeSeasonChange(request: SeasonRequest, wishes: SeasonWishes, change: SeasonChange): SeasonRequest {
  const { kind, amount, phase, start, category, sessions } = change;
  switch (kind) {
    case 'weeks':
      return moveSeasonStart(request, wishes, weeksFrom(wishes.start, wishes.date) - amount);
    case 'phase-weeks':
      return {
        ...request,
        phases: wishes.phases.map((each, index) => (index === phase ? { ...each, weeks: amount } : each)),
      };
    case 'taper-weeks':
      return { ...request, taperWeeks: amount };
    case 'most-hours':
      return { ...request, mostHours: amount };
    case 'rise':
      return { ...request, rise: amount };
    case 'week-hours':
      return start === null ? request : setSeasonWeek(request, start, { hours: amount });
    case 'week-sessions': {
      if (start === null || !category || !sessions) return request;
      const week = wishes.byHand.find((each) => each.start === start);
      return setSeasonWeek(request, start, { sessions: { ...week?.sessions, [category]: sessions } });
    }
  }
}

/** The durations that a week of a season has for reasons of the season: set by hand, or cut into shorter runs. */
export function pickedIn({ wishes }: PlanSeason, { start, sessions, notices }: SeasonWeek): ByHandWeek['sessions'] {
  const set = wishes.byHand.find((week) => week.start === start);
  const cut = notices.flatMap(({ code, category }) =>
    code === 'shorter-runs' && category ? [[category, sessions[category]] as const] : [],
  );
  return { ...set?.sessions, ...Object.fromEntries(cut) };
}
