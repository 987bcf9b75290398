import { runLimit } from '../../training/season/single-run.js';
import type { SeasonChange, SeasonNotice } from './document.js';
import type { DraftSeason, DraftWeek, SeasonTools } from './draft-season.js';
import { seasonRules } from './season-ground.js';
import { seasonChange, seasonNotice } from './season-notice.js';
import { runIds, sessionsWithin } from './week-figures.js';

/** What there is to know of a week: what its method says of it, and how it stands to the weeks before it. */
export function weekNotices(draft: DraftSeason, index: number): readonly SeasonNotice[] {
  const week = draft.weeks[index];
  if (!week) return [];
  return [
    ...(week.figures.isWhole ? [] : [seasonNotice('week-failed', 'caution')]),
    ...steepWeek(draft, week),
    ...longerRun(draft.tools, week),
    ...week.figures.notices.map((notice) => ({ ...notice, waysOut: [] })),
  ];
}

/** Only a person's hand can pass the ceiling, or the most. */
function steepWeek({ tools: { method }, wishes }: DraftSeason, { calendar, hours, byHand }: DraftWeek): SeasonNotice[] {
  if (byHand?.hours == null) return [];
  const { start } = calendar;
  const [given, ceiling, base] = [byHand.hours, hours.ceiling / 60, hours.base / 60];
  const step = method.rounding.step / 60;
  const allowed = Math.floor(ceiling / step + 1e-9) * step;
  const steep = seasonNotice('steep-week', given > base * (1 + seasonRules(method).rise.look) ? 'caution' : 'note', {
    values: { hours: given, base, rise: base > 0 ? given / base - 1 : 0, allowed: wishes.rise },
    waysOut: [seasonChange('week-hours', { amount: Math.min(allowed, wishes.mostHours), start })],
  });
  const above = seasonNotice('above-most', 'note', {
    values: { hours: given, most: wishes.mostHours },
    waysOut: [
      seasonChange('week-hours', { amount: wishes.mostHours, start }),
      seasonChange('most-hours', { amount: given }),
    ],
  });
  return [...(given > ceiling + 1e-9 ? [steep] : []), ...(given > wishes.mostHours + 1e-9 ? [above] : [])];
}

/**
 * Runs are cut as short as they should be, but for one step of the rounding. What is said is that they were cut, and that a
 * run is longer all the same.
 */
function longerRun(tools: SeasonTools, week: DraftWeek): SeasonNotice[] {
  const { asked, figures, longestBefore: before } = week;
  const { longestRun: run, shortened, sessions } = figures;
  const { most } = seasonRules(tools.method).single_run;
  const limit = runLimit(before, most);
  const cut = shortened.map((category) => ({
    ...seasonNotice('shorter-runs', 'note', { values: { before, runs: sessions[category].length } }),
    category,
  }));
  if (before === 0 || run <= limit) return cut;
  const waysOut = [...shorterRuns(tools, week, limit), ...fewerHours(tools, week, limit)].slice(0, 2);
  const values = { run, before, limit, share: run / before, most: most - 1 };
  return [...cut, seasonNotice('longer-run', run > asked.runLimit ? 'caution' : 'note', { values, waysOut })];
}

/** The same minutes in shorter runs, where the method has such a way to cut them. */
function shorterRuns({ source }: SeasonTools, { calendar, asked, figures }: DraftWeek, limit: number): SeasonChange[] {
  const tooLong = runIds.filter((id) => figures.sessions[id].some((minutes) => minutes > limit));
  const [category] = tooLong;
  if (!category || tooLong.length > 1) return [];
  source.of(asked);
  const sessions = sessionsWithin(source.need(category), limit);
  return sessions ? [seasonChange('week-sessions', { start: calendar.start, category, sessions })] : [];
}

/** The most hours, below those of the week, at which no run is too long. */
function fewerHours(
  { method, source }: SeasonTools,
  { calendar, hours, asked }: DraftWeek,
  limit: number,
): SeasonChange[] {
  const { step } = method.rounding;
  const least = method.inputs.weekly_hours.least * 60;
  for (let minutes = Math.ceil(hours.minutes / step - 1) * step; minutes >= least; minutes -= step) {
    const tried = source.of({ ...asked, inputs: { ...asked.inputs, hours: minutes / 60 } });
    if (tried.longestRun <= limit) return [seasonChange('week-hours', { amount: minutes / 60, start: calendar.start })];
  }
  return [];
}
