import type { Problem } from '../problem.js';
import { numberOrText } from './number-or-text.js';
import { asOption, asText, fieldsOf, list, partsOf, percent, type OptionFields, type Read } from './option-fields.js';
import type { Asked } from './plan-answer.js';
import type { Session } from './session.js';

/** `base:6` is six weeks of base, `base` its share. */
const phase: Read = (text) => {
  const [name, weeks] = partsOf(text, ':', 2);
  return { phase: name, ...(weeks === undefined ? {} : { weeks: numberOrText(weeks) }) };
};

const event: Read = (text) => {
  const [date, name] = partsOf(text, ':', 2);
  return { date, event: name };
};

const byHand: Read = (text) => {
  const [start, hours = '', reason] = partsOf(text, ':', 3);
  return { start, hours: numberOrText(hours), ...(reason === undefined ? {} : { reason }) };
};

const seasonFields: OptionFields = {
  date: { field: 'date', read: asText },
  start: { field: 'start', read: asText },
  weeks: { field: 'weeks', read: numberOrText },
  'most-hours': { field: 'mostHours', read: numberOrText },
  rise: { field: 'rise', read: percent },
  'easier-every': { field: 'easierEvery', read: numberOrText },
  'easier-drop': { field: 'easierDrop', read: percent },
  'taper-weeks': { field: 'taperWeeks', read: numberOrText },
  'taper-drop': { field: 'taperDrop', read: percent },
  'upkeep-from': { field: 'upkeepFrom', read: asText },
  'upkeep-sessions': { field: 'upkeepSessions', read: numberOrText },
  'recovery-weeks': { field: 'recoveryWeeks', read: numberOrText },
  phases: { field: 'phases', read: list(phase) },
  events: { field: 'events', read: list(event) },
  'by-hand': { field: 'byHand', read: list(byHand) },
  'weeks-off': { field: 'weeksOff', read: numberOrText },
  'longest-run': { field: 'longestRun', read: numberOrText },
};

/** The options of a season that a command line has. */
export const seasonOptionsIn = ({ options }: Pick<Session, 'options'>): readonly string[] =>
  Object.keys(seasonFields).filter((name) => Object.hasOwn(options, name));

/** The season that the options of a command line ask for. */
export const seasonAsked = (session: Pick<Session, 'options'>): Asked => ({
  request: { season: fieldsOf(session, seasonFields) },
  problems: [],
  asOption: (problem: Problem) => asOption(problem, 'season', seasonFields),
});
