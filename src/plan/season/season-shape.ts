import type { Outcome, Problem } from '../../problem.js';
import { categoryIds, eventIds, type ByCategory } from '../../training/method/ids.js';
import { seasonLimits, seasonPhaseIds, upkeepIds } from '../../training/method/season-rules.js';
import { sessionMinutes } from '../../training/method/session-minutes.js';
import { between, list, number, object, oneOf, orNull, readAs, text, whole, type Reader } from '../fields.js';
import { byHandReasons, type ByHandWeek, type OtherEvent, type SeasonWishes, type WishedPhase } from './wishes.js';

/** A season from outside whose fields are right, each by itself. */
export type SeasonShape = { readonly [K in keyof SeasonWishes]: SeasonWishes[K] | undefined } & {
  readonly weeks: number | undefined;
};

/** What a season may have beyond `seasonLimits`. */
export const seasonFieldLimits = {
  /** More than this would leave nothing of a week. */
  drop: 0.95,
  share: 1,
  /** Minutes of a week. */
  longestRun: 7 * 24 * 60,
  /** A session on every day, and more than once. */
  sessions: 100,
} as const;

const drop = between(0, seasonFieldLimits.drop);
const share = between(0, seasonFieldLimits.share);

const phase: Reader<WishedPhase | undefined> = object(({ take, need }) => {
  const id = need('phase', oneOf(seasonPhaseIds));
  const weeks = take('weeks', orNull(whole(0, seasonLimits.weeks))) ?? null;
  return id && { phase: id, weeks };
});

const event: Reader<OtherEvent | undefined> = object(({ need }) => {
  const date = need('date', text);
  const id = need('event', oneOf(eventIds));
  return date !== undefined && id ? { date, event: id } : undefined;
});

const durations = list(whole(sessionMinutes.least, sessionMinutes.most), seasonFieldLimits.sessions);
const sessions: Reader<Partial<ByCategory<readonly number[]>>> = object(({ take }) =>
  Object.fromEntries(
    categoryIds.flatMap((id) => {
      const picked = take(id, durations);
      return picked ? [[id, picked]] : [];
    }),
  ),
);

const byHand: Reader<ByHandWeek | undefined> = object(({ take, need }) => {
  const start = need('start', text);
  const hours = take('hours', orNull(number)) ?? null;
  const reason = take('reason', oneOf(byHandReasons)) ?? 'other';
  const picked = take('sessions', sessions) ?? {};
  return start === undefined ? undefined : { start, hours, reason, sessions: picked };
});

const season: Reader<SeasonShape> = object(({ take }) => ({
  start: take('start', text),
  date: take('date', text),
  weeks: take('weeks', whole(1, seasonLimits.weeks)),
  hours: take('hours', number),
  mostHours: take('mostHours', number),
  rise: take('rise', share),
  easierEvery: take('easierEvery', whole(0, seasonLimits.easierEvery)),
  easierDrop: take('easierDrop', drop),
  taperWeeks: take('taperWeeks', whole(0, seasonLimits.taperWeeks)),
  taperDrop: take('taperDrop', drop),
  upkeepFrom: take('upkeepFrom', oneOf(upkeepIds)),
  upkeepSessions: take('upkeepSessions', whole(1, seasonLimits.upkeepSessions)),
  recoveryWeeks: take('recoveryWeeks', whole(0, seasonLimits.recoveryWeeks)),
  phases: take('phases', list(phase, seasonLimits.phases)),
  events: take('events', list(event, seasonLimits.events)),
  byHand: take('byHand', list(byHand, seasonLimits.weeks)),
  weeksOff: take('weeksOff', whole(0, seasonLimits.weeks)),
  longestRun: take('longestRun', orNull(whole(0, seasonFieldLimits.longestRun))),
}));

/** Reads every field of a season by itself; what goes across fields is checked in `read-season.ts`. */
export function readSeasonShape(given: unknown): Outcome<SeasonShape> {
  const problems: Problem[] = [];
  const shape = readAs(season, given, problems);
  if (shape?.phases?.length === 0 && problems.length === 0)
    problems.push({ path: 'phases', value: 'list of 0', code: 'missing', allowed: {} });
  return shape && problems.length === 0 ? { ok: true, value: shape } : { ok: false, problems };
}
