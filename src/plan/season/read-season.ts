import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { dateRange, isoDate, knownDay, mondayDate, mondayOf } from '../../training/season/iso-date.js';
import type { SeasonRules } from '../../training/method/season-rules.js';
import { checkSeason } from './check-season.js';
import { seasonDates } from './season-dates.js';
import { seasonRules, type SeasonGround } from './season-ground.js';
import { readSeasonShape, type SeasonShape } from './season-shape.js';
import type { SeasonWishes } from './wishes.js';

/**
 * Reads what a request says of the season, and fills in what the method usually has.
 *
 * @returns the wishes, or every problem with its path (`season.events[0].date`), the value given and what is allowed.
 */
export function readSeason(given: unknown, ground: SeasonGround): Outcome<SeasonWishes> {
  const shape = readSeasonShape(given);
  if (!shape.ok) return { ok: false, problems: shape.problems.map(inSeason) };
  const rules = seasonRules(ground.method);
  const dates = seasonDates(shape.value, rules.weeks);
  const problems = [...(dates.ok ? [] : dates.problems), ...checkSeason(shape.value, ground)];
  if (!dates.ok || problems.length > 0) return { ok: false, problems: problems.map(inSeason) };
  const wishes = { ...filledIn(shape.value, rules, ground), ...dates.value };
  const late = endsTooLate(wishes);
  return late ? { ok: false, problems: [inSeason(late)] } : { ok: true, value: wishes };
}

function filledIn(
  shape: SeasonShape,
  rules: SeasonRules,
  { method, inputs }: SeasonGround,
): Omit<SeasonWishes, 'start' | 'date'> {
  const { weekly_hours } = method.inputs;
  const hours = shape.hours ?? inputs.hours;
  return {
    hours,
    mostHours: shape.mostHours ?? mostHours(hours * rules.rise.most, hours, weekly_hours),
    rise: shape.rise ?? rules.rise.share,
    easierEvery: shape.easierEvery ?? rules.easier.every_weeks,
    easierDrop: shape.easierDrop ?? rules.easier.drop,
    taperWeeks: shape.taperWeeks ?? rules.taper.weeks,
    taperDrop: shape.taperDrop ?? rules.taper.drop,
    upkeepFrom: shape.upkeepFrom ?? rules.upkeep.from,
    upkeepSessions: shape.upkeepSessions ?? rules.upkeep.sessions,
    recoveryWeeks: shape.recoveryWeeks ?? rules.recovery.weeks,
    phases: shape.phases ?? rules.phases.map(({ phase }) => ({ phase, weeks: null })),
    events: shape.events ?? [],
    byHand: (shape.byHand ?? []).map((week) => ({ ...week, start: mondayDate(week.start) })),
    weeksOff: shape.weeksOff ?? 0,
    longestRun: shape.longestRun ?? null,
  };
}

/** The weeks of rest after the event, and that of the last event, have to end within the days that there are. */
function endsTooLate({ date, recoveryWeeks, events }: SeasonWishes): Problem | undefined {
  const end = knownDay(dateRange.most);
  const last = (day: string, weeks: number): boolean => mondayOf(knownDay(day)) + 6 + 7 * weeks > end;
  const index = events.findIndex((each) => last(each.date, 0));
  const latest = (weeks: number): string => isoDate(mondayOf(end - 6) - 7 * weeks + 6);
  if (last(date, recoveryWeeks))
    return { path: 'date', value: date, code: 'out-of-range', allowed: { most: latest(recoveryWeeks) } };
  const event = events[index];
  return (
    event && { path: `events[${index}].date`, value: event.date, code: 'out-of-range', allowed: { most: latest(0) } }
  );
}

/** The usual most: a whole step of the slider, within the method's range. */
function mostHours(usual: number, hours: number, { step, most }: Method['inputs']['weekly_hours']): number {
  return Math.max(hours, Math.min(most, Math.floor(usual / step + 1e-9) * step));
}

const inSeason = (problem: Problem): Problem => ({
  ...problem,
  path: problem.path === '' ? 'season' : `season.${problem.path}`,
});
