import type { Method } from '../../training/method/document.js';
import { byCategory, categoryIds, type ByCategory } from '../../training/method/ids.js';
import type { DueSession } from '../../training/record/match-sessions.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { lay } from '../../training/week/lay.js';
import type { Plan } from '../document.js';
import type { SeasonWeek } from '../season/document.js';
import { sessionsOf } from '../sessions-of.js';
import { createWeekMaker } from '../week/create-week-maker.js';
import type { PlanWeek } from '../week/document.js';
import type { WeekSolver } from '../week/week-solver.js';
import type { WeekWishes } from '../week/wishes.js';

/** A week of the calendar as it is planned. */
export interface PlannedWeek {
  /** The Monday, an ISO date. */
  readonly start: string;
  /** The week of the season; null where the season has none here, or there is no season. */
  readonly season: SeasonWeek | null;
  /** The plan of the week: that on show, or one made of the week of the season, without derivations and notices. */
  readonly plan: Plan;
  /** In the order of the days; kind after kind where they are for any day. */
  readonly sessions: readonly DueSession[];
}

/** Gives the weeks of a plan on the calendar. */
export type WeekPlanner = (start: string) => PlannedWeek;

/**
 * The weeks of a plan, from their Mondays: as the season has them where it reaches, else as the week on show; a week
 * of the season that is on show is as it is shown. A week of
 * the season is laid on the days that the plan has, by the same search as the week on show; where nothing fits, or no days
 * are given, its sessions are for any day. Each is worked out once.
 */
export function weekPlanner(method: Method, plan: Plan): WeekPlanner {
  const maker = createWeekMaker(layIfItFits);
  const laid = (week: SeasonWeek): PlanWeek | null =>
    plan.week && maker.lay(method, plan, { picks: {}, week: wishesFor(plan.week.wishes, week.sessions) }).week;
  const make = (start: string): PlannedWeek => {
    const season = plan.season?.weeks.find((week) => week.start === start) ?? null;
    const isOnShow = !season || isShownBy(plan, season);
    const planned = isOnShow ? plan : planOf(plan, season, laid(season));
    return { start, season, plan: planned, sessions: onDates(planned, start) };
  };
  const known = new Map<string, PlannedWeek>();
  return (start) => {
    const week = known.get(start) ?? make(start);
    known.set(start, week);
    return week;
  };
}

/** Nobody asks why a week of the season does not fit. */
const layIfItFits: WeekSolver = (problem) => {
  const laid = lay(problem);
  return laid ? { state: 'laid', laid } : { state: 'nothing-fits', conflict: null };
};

/** True where the planner has this week: what of its minutes was cut otherwise, by the days or by hand, is the same week. */
const isShownBy = ({ inputs, sessions }: Plan, week: SeasonWeek): boolean =>
  inputs.phase === week.phase && (inputs.hours === week.hours || isSameSessions(sessions, week.sessions));

const isSameSessions = (one: ByCategory<readonly number[]>, other: ByCategory<readonly number[]>): boolean =>
  categoryIds.every((id) => inOrder(one[id]) === inOrder(other[id]));

const inOrder = (lengths: readonly number[]): string => [...lengths].sort((one, other) => one - other).join();

/**
 * What is wished of the week on show, for another: what was done or is over there says nothing here. Runs cut evenly have no
 * long one that could be on its day.
 */
function wishesFor(wishes: WeekWishes, sessions: ByCategory<readonly number[]>): WeekWishes {
  const longRun = hasLongest(sessions.slow) ? wishes.longRun : null;
  return { ...wishes, sessions, longRun, pinned: pinnedOf(wishes, sessions), done: [], passed: 0, before: null };
}

function hasLongest(lengths: readonly number[]): boolean {
  const longest = Math.max(...lengths);
  return lengths.filter((each) => each === longest).length === 1;
}

/** As many as the week has sessions as long. */
function pinnedOf({ pinned }: WeekWishes, sessions: ByCategory<readonly number[]>): WeekWishes['pinned'] {
  const left = byCategory((id) => [...sessions[id]]);
  return pinned.filter(({ category, minutes }) => {
    const index = left[category].indexOf(minutes);
    if (index >= 0) left[category].splice(index, 1);
    return index >= 0;
  });
}

function planOf(plan: Plan, { hours, phase, minutes, rounded, sessions }: SeasonWeek, week: PlanWeek | null): Plan {
  return {
    ...plan,
    inputs: { ...plan.inputs, hours, phase },
    minutes,
    rounded,
    sessions,
    week: week?.days ? week : null,
    rules: [],
    notices: [],
    derivations: {},
    running: null,
    strength: null,
    load: null,
    checks: [],
  };
}

const onDates = (plan: Plan, start: string): DueSession[] =>
  sessionsOf(plan, categoryIds).map(({ category, minutes, day }) => ({
    category,
    minutes,
    date: day === null ? null : isoDate(knownDay(start) + day),
  }));
