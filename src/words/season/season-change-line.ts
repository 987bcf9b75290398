import type { PlanSeason, SeasonChange } from '../../plan/season/document.js';
import type { Method } from '../../training/method/document.js';
import { categoryName } from '../category-name.js';
import type { Words } from '../words.js';
import { datesOf } from './dates.js';

/**
 * A change that would help a season, fit for a list.
 *
 * @example 'at most 6 hours 30 minutes a week'
 */
export function seasonChangeLine(
  words: Words,
  { method, season }: { readonly method: Method; readonly season: PlanSeason },
  { kind, amount, phase, start, category, sessions }: SeasonChange,
): string {
  const wished = phase === null ? undefined : season.wishes.phases[phase];
  return words.say(`season-change.${kind}`, {
    weeks: words.say('season.weeks', { count: amount }),
    hours: words.hours(amount),
    share: words.share(amount),
    sessions: words.sessions(sessions ?? []),
    ...(wished && { phase: words.say(`phase.${wished.phase}`) }),
    ...(start !== null && { date: datesOf(words).short(start) }),
    ...(category && { kind: categoryName(words, method, category) }),
  });
}

/** The changes that a notice offers, in one sentence; empty where there is none. */
export function waysOutLine(
  words: Words,
  of: { readonly method: Method; readonly season: PlanSeason },
  waysOut: readonly SeasonChange[],
): string {
  const ways = waysOut.map((change) => seasonChangeLine(words, of, change));
  return ways.length === 0 ? '' : words.say('season.ways-out', { ways: words.alternatives(ways) });
}
