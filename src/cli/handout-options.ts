import { faultyDate } from '../plan/faulty-date.js';
import type { Problem } from '../problem.js';
import { dateRange, isoDate, knownDay, mondayDate, mondayOf } from '../training/season/iso-date.js';
import type { OptionFaults } from './option-faults.js';
import type { Asked } from './plan-answer.js';
import { runningAsked } from './running-options.js';
import { seasonAsked, seasonOptionsIn } from './season-options.js';
import type { Session } from './session.js';
import { strengthAsked } from './strength-options.js';

/** What the options of a command line ask for that hands a plan over: a week or a season, runs and sets. */
export function handoutAsked(session: Session): Asked {
  const isSeason = seasonOptionsIn(session).length > 0;
  const parts = [runningAsked(session), strengthAsked(session), ...(isSeason ? [seasonAsked(session)] : [])];
  return {
    request: Object.fromEntries(parts.flatMap(({ request }) => Object.entries(request))),
    problems: parts.flatMap(({ problems }) => problems),
    asOption: (problem) => parts.reduce((told, { asOption }) => asOption(told), problem),
  };
}

/** What is only told of a single week. */
const ofOneWeek = ['phase', 'week-of'] as const;

/** What is wrong with the week, or with asking for a season. */
export function weekFaults(session: Pick<Session, 'options'>): OptionFaults {
  const { options } = session;
  const season = seasonOptionsIn(session);
  const date = options['week-of'];
  if (season.length > 0) {
    const given = ofOneWeek.filter((name) => Object.hasOwn(options, name));
    const named = season.map((name) => `--${name}`).join(', ');
    const faults = given.map((name) => ({ key: 'fault.one-week', values: { option: `--${name}`, season: named } }));
    return { problems: [], faults };
  }
  if (date === undefined) return { problems: [], faults: [{ key: 'fault.no-week', values: {} }] };
  const problems = faultyDate('--week-of', date);
  return { problems: problems.length > 0 ? problems : tooLate(date), faults: [] };
}

/** The Monday of the week asked for, once its date was found to be one; null where a season is. */
export const mondayAsked = ({ options }: Pick<Session, 'options'>): string | null =>
  options['week-of'] === undefined ? null : mondayDate(options['week-of']);

/** Every day of the week has to be a date. */
function tooLate(value: string): Problem[] {
  const lastDay = knownDay(dateRange.most);
  const most = isoDate(mondayOf(lastDay + 1) - 1);
  return value > most ? [{ path: '--week-of', value, code: 'out-of-range', allowed: { most } }] : [];
}
