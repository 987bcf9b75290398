import type { Problem } from '../problem.js';
import { daysAs } from './days.js';
import { rosterFields } from './roster-fields.js';
import type { Roster, RosterEntry, RosterFault } from './roster.js';

/** A line may have a name and `days` beside the fields of a request. */
function asMet(problem: Problem): Problem {
  const isTopLevel = problem.code === 'unknown-field' && !problem.path.includes('.');
  return isTopLevel ? { ...problem, allowed: { fields: rosterFields } } : problem;
}

/** The days of such a line stand in no `week`. */
const asMetByDays = (problem: Problem): Problem => asMet({ ...problem, path: daysAs('days', problem.path) });

type Line = { readonly entry: RosterEntry } | { readonly fault: RosterFault };

/** A roster of one JSON object a line; blank lines count and are passed over. */
export function readNdjsonRoster(text: string): Roster {
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((content, index) => ({ content, line: index + 1 }))
    .filter(({ content }) => content.trim() !== '')
    .map(({ content, line }) => readLine(content, line));
  return {
    entries: lines.flatMap((line) => ('entry' in line ? [line.entry] : [])),
    faults: lines.flatMap((line) => ('fault' in line ? [line.fault] : [])),
  };
}

function readLine(content: string, line: number): Line {
  const read = parseObject(content);
  if ('problem' in read) return { fault: { line, name: '', problem: read.problem } };
  const { name = '', days, ...request } = read.object;
  if (typeof name !== 'string') {
    const problem: Problem = { path: 'name', value: name, code: 'wrong-type', allowed: { expected: 'text' } };
    return { fault: { line, name: '', problem } };
  }
  if (days === undefined) return { entry: { line, name, request, asMet } };
  if (request['week'] == null)
    return { entry: { line, name, request: { ...request, week: { days } }, asMet: asMetByDays } };
  return { fault: { line, name, problem: { path: 'days', value: days, code: 'duplicate', allowed: {} } } };
}

function parseObject(content: string): { object: Readonly<Record<string, unknown>> } | { problem: Problem } {
  try {
    const value: unknown = JSON.parse(content);
    if (isPlainObject(value)) return { object: value };
    return { problem: { path: '', value, code: 'wrong-type', allowed: { expected: 'object' } } };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { problem: { path: '', value: content, code: 'not-json', allowed: { message: error.message } } };
  }
}

function isPlainObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
