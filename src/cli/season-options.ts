import type { Problem } from '../problem.js';
import { numberOrText } from './number-or-text.js';
import type { OptionName } from './options.js';
import type { Session } from './session.js';

type Read = (text: string) => unknown;

const list =
  (entry: Read): Read =>
  (text) =>
    text.split(',').map((part) => entry(part.trim()));

const percent: Read = (text) => {
  const value = numberOrText(text);
  return typeof value === 'number' ? value / 100 : value;
};

/** The parts of an entry between colons; what is too much stays with the last part, to be refused with it. */
function partsOf(text: string, most: number): readonly string[] {
  const parts = text.split(':');
  return parts.length <= most ? parts : [...parts.slice(0, most - 1), parts.slice(most - 1).join(':')];
}

/** `base:6` is six weeks of base, `base` its share. */
const phase: Read = (text) => {
  const [name, weeks] = partsOf(text, 2);
  return { phase: name, ...(weeks === undefined ? {} : { weeks: numberOrText(weeks) }) };
};

const event: Read = (text) => {
  const [date, name] = partsOf(text, 2);
  return { date, event: name };
};

const byHand: Read = (text) => {
  const [start, hours = '', reason] = partsOf(text, 3);
  return { start, hours: numberOrText(hours), ...(reason === undefined ? {} : { reason }) };
};

const text: Read = (value) => value;

/** What each option of a season is called in a request, and how its text is read. */
const seasonFields: Readonly<Partial<Record<OptionName, { readonly field: string; readonly read: Read }>>> = {
  date: { field: 'date', read: text },
  start: { field: 'start', read: text },
  weeks: { field: 'weeks', read: numberOrText },
  'most-hours': { field: 'mostHours', read: numberOrText },
  rise: { field: 'rise', read: percent },
  'easier-every': { field: 'easierEvery', read: numberOrText },
  'easier-drop': { field: 'easierDrop', read: percent },
  'taper-weeks': { field: 'taperWeeks', read: numberOrText },
  'taper-drop': { field: 'taperDrop', read: percent },
  'upkeep-from': { field: 'upkeepFrom', read: text },
  'upkeep-sessions': { field: 'upkeepSessions', read: numberOrText },
  'recovery-weeks': { field: 'recoveryWeeks', read: numberOrText },
  phases: { field: 'phases', read: list(phase) },
  events: { field: 'events', read: list(event) },
  'by-hand': { field: 'byHand', read: list(byHand) },
  'weeks-off': { field: 'weeksOff', read: numberOrText },
  'longest-run': { field: 'longestRun', read: numberOrText },
};

/** The season that the options of a command line ask for. */
export function seasonOf({ options }: Pick<Session, 'options'>): Readonly<Record<string, unknown>> {
  const values: Readonly<Record<string, string | undefined>> = options;
  const given = Object.entries(seasonFields).flatMap(([option, { field, read }]) => {
    const value = values[option];
    return value === undefined ? [] : [[field, read(value)] as const];
  });
  return Object.fromEntries(given);
}

/** A problem of a season as its author met it: the option by its name, shares as per cent. */
export function asSeasonOption(problem: Problem): Problem {
  const [, field = '', rest = ''] = /^season\.([a-zA-Z]+)(.*)$/.exec(problem.path) ?? [];
  const found = Object.entries(seasonFields).find(([, each]) => each.field === field);
  if (!found) return problem;
  const [option, { read }] = found;
  const named = { ...problem, path: `--${option}${rest}` };
  return read === percent
    ? { ...named, value: hundredfold(problem.value), allowed: allHundredfold(problem.allowed) }
    : named;
}

const hundredfold = (value: unknown): unknown => (typeof value === 'number' ? Math.round(value * 1e6) / 1e4 : value);

const allHundredfold = (allowed: Problem['allowed']): Problem['allowed'] =>
  Object.fromEntries(Object.entries(allowed).map(([name, value]) => [name, hundredfold(value)]));
