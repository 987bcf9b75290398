import type { Problem } from '../problem.js';
import { numberOrText } from './number-or-text.js';
import type { OptionName } from './options.js';
import type { Session } from './session.js';

/** How the text of an option becomes a value, for the planner to check. */
export type Read = (text: string) => unknown;

/** What options are called in a part of a request, and how their texts are read. */
export type OptionFields = Readonly<Partial<Record<OptionName, { readonly field: string; readonly read: Read }>>>;

export const asText: Read = (text) => text;

/** Entries between commas. */
export const list =
  (entry: Read): Read =>
  (text) =>
    text.split(',').map((part) => entry(part.trim()));

/** The parts of an entry between separators; what is too much stays with the last part, to be refused with it. */
export function partsOf(text: string, separator: string, most: number): readonly string[] {
  const parts = text.split(separator);
  return parts.length <= most ? parts : [...parts.slice(0, most - 1), parts.slice(most - 1).join(separator)];
}

/** A number, per cent as a part of 1. */
export const percent: Read = (text) => {
  const value = numberOrText(text);
  return typeof value === 'number' ? value / 100 : value;
};

/** The fields that the options of a command line give. */
export function fieldsOf(
  { options }: Pick<Session, 'options'>,
  fields: OptionFields,
): Readonly<Record<string, unknown>> {
  const values: Readonly<Record<string, string | undefined>> = options;
  const given = Object.entries(fields).flatMap(([option, { field, read }]) => {
    const value = values[option];
    return value === undefined ? [] : [[field, read(value)] as const];
  });
  return Object.fromEntries(given);
}

/** A problem of a part of a request as its author met it: the option by its name, shares as per cent. */
export function asOption(problem: Problem, part: string, fields: OptionFields): Problem {
  const [, begin, field, rest = ''] = /^([a-z]+)\.([a-zA-Z]+)(.*)$/.exec(problem.path) ?? [];
  const found = Object.entries(fields).find(([, each]) => begin === part && each.field === field);
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
