import type { Method } from '../../training/method/document.js';
import { phaseWeeks, type PhaseLengths } from '../../training/season/phase-weeks.js';
import { seasonHours, type HoursFrame, type WeekHours } from '../../training/season/season-hours.js';
import { longestBefore, runLimit } from '../../training/season/single-run.js';
import { hoursFrame, seasonWeeks, weeksFrom, type CalendarWeek } from '../../training/season/season-weeks.js';
import type { PlanInputs } from '../document.js';
import type { HoursDerivation, PlanSeason, SeasonWeek } from './document.js';
import type { DraftSeason, DraftWeek, SeasonTools } from './draft-season.js';
import { isWithinReach } from './is-within-reach.js';
import { paceOf } from './pace-of.js';
import { seasonNotices } from './season-notices.js';
import { seasonRules } from './season-ground.js';
import { upkeepMinutes } from './upkeep.js';
import { weekNotices } from './week-notices.js';
import { weekOff } from './week-figures.js';
import type { SeasonWishes } from './wishes.js';

/** Every week of a season: its place on the calendar, its hours, and what the method makes of them. */
export function carrySeason(tools: SeasonTools, inputs: PlanInputs, wishes: SeasonWishes): PlanSeason {
  const lengths = phaseLengths(tools.method, wishes);
  const phases = wishes.phases.map(({ phase }, index) => ({ phase, weeks: lengths.weeks[index] ?? 0 }));
  const calendar = seasonWeeks({
    start: wishes.start,
    main: { date: wishes.date, event: inputs.event },
    others: wishes.events.filter(({ date }) => isWithinReach(wishes, date)),
    phases,
    taperWeeks: wishes.taperWeeks,
    recoveryWeeks: wishes.recoveryWeeks,
    easierEvery: wishes.easierEvery,
  });
  const frames = framesOf(tools.method, wishes, calendar);
  const weeks = draftWeeks(tools, { inputs, wishes, calendar, frames });
  const draft: DraftSeason = { tools, wishes, lengths, frames, weeks };
  return {
    wishes,
    phases,
    weeks: weeks.map((_, index) => weekOf(draft, index)),
    notices: seasonNotices(draft),
  };
}

/** Field by field: spreads take many times as long, and a slider makes hundreds of these. */
function weekOf(draft: DraftSeason, index: number): SeasonWeek {
  const drafted = draft.weeks[index];
  if (!drafted) throw new RangeError(`there is no week ${index}`);
  const { calendar, hours, figures } = drafted;
  return {
    number: calendar.number,
    start: calendar.start,
    week: calendar.week,
    weeksToGo: calendar.weeksToGo,
    phase: calendar.phase,
    isEasier: calendar.isEasier,
    events: calendar.events,
    hours: hours.minutes / 60,
    why: derivationOf(hours),
    minutes: figures.minutes,
    rounded: figures.rounded,
    sessions: figures.sessions,
    load: figures.load,
    longestRun: figures.longestRun,
    notices: weekNotices(draft, index),
  };
}

function phaseLengths(method: Method, { start, date, taperWeeks, phases }: SeasonWishes): PhaseLengths {
  const usual = seasonRules(method).phases;
  const asked = phases.map(({ phase, weeks }) => {
    const { share = 1, least = 1 } = usual.find((each) => each.phase === phase) ?? {};
    return { weeks, share, least };
  });
  return phaseWeeks(asked, Math.max(0, weeksFrom(start, date) - taperWeeks));
}

interface WeeksAsked {
  readonly inputs: PlanInputs;
  readonly wishes: SeasonWishes;
  readonly calendar: readonly CalendarWeek[];
  readonly frames: readonly HoursFrame[];
}

function framesOf(method: Method, wishes: SeasonWishes, calendar: readonly CalendarWeek[]): readonly HoursFrame[] {
  const rising = seasonRules(method).rises;
  const hands = new Map(wishes.byHand.map(({ start, hours }) => [start, hours]));
  return calendar.map((week) => {
    const hours = hands.get(week.start) ?? null;
    return hoursFrame(week, { rising, byHand: hours === null ? null : hours * 60 });
  });
}

function draftWeeks({ method, source }: SeasonTools, { inputs, wishes, calendar, frames }: WeeksAsked): DraftWeek[] {
  const hands = new Map(wishes.byHand.map((week) => [week.start, week]));
  const hours = seasonHours(frames, paceOf(method, wishes));
  const { most, weeks: back } = seasonRules(method).single_run;
  const drafts: DraftWeek[] = [];
  const longest: number[] = [];
  hours.forEach((of, index) => {
    const week = calendar[index];
    if (!week) return;
    const byHand = hands.get(week.start) ?? null;
    const before = longestBefore(longest, wishes.longestRun, { week: index, weeks: back });
    const asked = {
      inputs: { ...inputs, hours: of.minutes / 60, phase: week.phase },
      upkeep: upkeepMinutes(method, wishes, week.phase),
      picks: byHand?.sessions ?? {},
      // Runs come in whole steps: one step more must be possible, or short runs would never grow.
      runLimit: before > 0 ? Math.max(runLimit(before, most), before + method.rounding.step) : Infinity,
    };
    const figures = of.minutes === 0 ? weekOff : source.of(asked);
    longest.push(figures.longestRun);
    drafts.push({ calendar: week, hours: of, byHand, longestBefore: before, asked, figures });
  });
  return drafts;
}

function derivationOf({ reason, base, share, ceiling, risesLeft }: WeekHours): HoursDerivation {
  return { reason, base: base / 60, share, ceiling: ceiling / 60, risesLeft };
}
