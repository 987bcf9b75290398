import type { Outcome, Problem } from '../problem.js';
import type { Method, NumberInput } from '../training/method/document.js';
import { categoryIds, eventIds, levelIds, phaseIds, type ByCategory } from '../training/method/ids.js';
import type { PlanInputs, PlanRequest } from './document.js';

/** A request made whole: every input, and the sessions picked so far. */
export interface ReadRequest {
  readonly inputs: PlanInputs;
  readonly picks: Partial<ByCategory<readonly number[]>>;
}

const fields = ['hours', 'phase', 'level', 'event', 'strengthCap', 'sessions'] as const;

/** Checks a request against the ranges of a method and fills in the method's starting values. */
export function readRequest(request: PlanRequest, { inputs }: Method): Outcome<ReadRequest> {
  const problems: Problem[] = [];
  const report = <T>(checked: T | Problem[]): T | undefined => {
    if (!Array.isArray(checked)) return checked;
    problems.push(...checked);
    return undefined;
  };
  for (const field of Object.keys(request).filter((each) => !fields.some((known) => known === each)))
    problems.push({ path: field, value: Reflect.get(request, field), code: 'unknown-field', allowed: { fields } });
  const hours = report(inRange('hours', request.hours, inputs.weekly_hours));
  const phase = report(oneOf('phase', request.phase ?? inputs.season_phase.start, phaseIds));
  const level = report(oneOf('level', request.level ?? inputs.athlete_level.start, levelIds));
  const event = report(oneOf('event', request.event ?? inputs.target_event.start, eventIds));
  const strengthCap = report(inRange('strengthCap', request.strengthCap, inputs.strength_cap));
  problems.push(...pickProblems(request.sessions));
  if (problems.length > 0 || hours === undefined || strengthCap === undefined || !phase || !level || !event)
    return { ok: false, problems };
  return { ok: true, value: { inputs: { hours, phase, level, event, strengthCap }, picks: request.sessions ?? {} } };
}

function inRange(path: string, value: unknown, { least, most, start }: NumberInput): number | Problem[] {
  if (value === undefined) return start;
  if (typeof value !== 'number' || Number.isNaN(value))
    return [{ path, value, code: 'wrong-type', allowed: { expected: 'number' } }];
  if (value < least || value > most) return [{ path, value, code: 'out-of-range', allowed: { least, most } }];
  return value;
}

function oneOf<T extends string>(path: string, value: unknown, choices: readonly T[]): T | Problem[] {
  const choice = choices.find((each) => each === value);
  return choice ?? [{ path, value, code: 'not-one-of', allowed: { choices } }];
}

function pickProblems(sessions: unknown): Problem[] {
  if (sessions === undefined) return [];
  if (typeof sessions !== 'object' || sessions === null)
    return [{ path: 'sessions', value: sessions, code: 'wrong-type', allowed: { expected: 'object' } }];
  return Object.entries(sessions).flatMap(([id, durations]: [string, unknown]): Problem[] => {
    const path = `sessions.${id}`;
    if (!categoryIds.some((each) => each === id))
      return [{ path, value: id, code: 'unknown-field', allowed: { fields: categoryIds } }];
    const isList = Array.isArray(durations) && durations.every((each) => typeof each === 'number');
    return isList ? [] : [{ path, value: durations, code: 'wrong-type', allowed: { expected: 'list' } }];
  });
}
