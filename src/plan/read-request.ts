import type { Outcome, Problem } from '../problem.js';
import type { Method, NumberInput } from '../training/method/document.js';
import { categoryIds, eventIds, levelIds, phaseIds, type ByCategory } from '../training/method/ids.js';
import type { PlanInputs, PlanRequest } from './document.js';
import type { SeasonMaker } from './season/season-maker.js';
import type { SeasonWishes } from './season/wishes.js';
import type { WeekMaker } from './week/week-maker.js';
import type { WeekWishes } from './week/wishes.js';

type Picks = Partial<ByCategory<readonly number[]>>;

/** A request made whole: every input, and the sessions picked so far. */
export interface ReadRequest {
  readonly inputs: PlanInputs;
  readonly picks: Picks;
  /** Null where no days are given. */
  readonly week: WeekWishes | null;
  /** Null where no season is asked for. */
  readonly season: SeasonWishes | null;
}

/** What reads the parts of a request that not every planner knows; without one of these a request may not ask for it. */
export interface RequestReaders {
  readonly week?: Pick<WeekMaker, 'read'> | undefined;
  readonly season?: Pick<SeasonMaker, 'read'> | undefined;
}

/** A request before anything in it is checked. */
export type RawRequest = PlanRequest | Readonly<Record<string, unknown>>;

const fields = ['hours', 'phase', 'level', 'event', 'strengthCap', 'sessions'] as const;

/** Checks a request against the ranges of a method and fills in the method's starting values. */
export function readRequest(request: unknown, method: Method, readers: RequestReaders = {}): Outcome<ReadRequest> {
  const { inputs } = method;
  if (!isObject(request))
    return fault({ path: '', value: request, code: 'wrong-type', allowed: { expected: 'object' } });
  const given: Readonly<Record<string, unknown>> = { ...request };
  const extra = (['week', 'season'] as const).filter((part) => readers[part]);
  const problems = unknownFields(given, [...fields, ...extra], '');
  const take = <T>(checked: Outcome<T>): T | undefined => {
    if (checked.ok) return checked.value;
    problems.push(...checked.problems);
    return undefined;
  };
  const hours = take(inRange('hours', given['hours'], inputs.weekly_hours));
  const phase = take(oneOf('phase', given['phase'], { start: inputs.season_phase.start, choices: phaseIds }));
  const level = take(oneOf('level', given['level'], { start: inputs.athlete_level.start, choices: levelIds }));
  const event = take(oneOf('event', given['event'], { start: inputs.target_event.start, choices: eventIds }));
  const strengthCap = take(inRange('strengthCap', given['strengthCap'], inputs.strength_cap));
  const picks = take(readPicks(given['sessions']));
  const week = readers.week && given['week'] != null ? take(readers.week.read(given['week'], method)) : null;
  const ground = { method, inputs: { hours: hours ?? inputs.weekly_hours.start } };
  const season = readers.season && given['season'] != null ? take(readers.season.read(given['season'], ground)) : null;
  if (problems.length > 0 || hours === undefined || strengthCap === undefined) return { ok: false, problems };
  if (!phase || !level || !event || !picks || week === undefined || season === undefined)
    return { ok: false, problems };
  return { ok: true, value: { inputs: { hours, phase, level, event, strengthCap }, picks, week, season } };
}

const fault = (problem: Problem): Outcome<never> => ({ ok: false, problems: [problem] });

function unknownFields(given: object, known: readonly string[], prefix: string): Problem[] {
  return Object.entries(given)
    .filter(([field]) => !known.includes(field))
    .map(([field, value]: [string, unknown]) => ({
      path: prefix + field,
      value,
      code: 'unknown-field',
      allowed: { fields: known },
    }));
}

function inRange(path: string, value: unknown, { least, most, start }: NumberInput): Outcome<number> {
  if (value === undefined) return { ok: true, value: start };
  if (typeof value !== 'number' || Number.isNaN(value))
    return fault({ path, value, code: 'wrong-type', allowed: { expected: 'number' } });
  if (value < least || value > most) return fault({ path, value, code: 'out-of-range', allowed: { least, most } });
  return { ok: true, value };
}

interface Choice<T> {
  readonly start: T;
  readonly choices: readonly T[];
}

function oneOf<T extends string>(path: string, value: unknown, { start, choices }: Choice<T>): Outcome<T> {
  if (value === undefined) return { ok: true, value: start };
  const choice = choices.find((each) => each === value);
  if (choice === undefined) return fault({ path, value, code: 'not-one-of', allowed: { choices } });
  return { ok: true, value: choice };
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function readPicks(sessions: unknown): Outcome<Picks> {
  if (sessions === undefined) return { ok: true, value: {} };
  const path = 'sessions';
  if (!isObject(sessions)) return fault({ path, value: sessions, code: 'wrong-type', allowed: { expected: 'object' } });
  const picks: Partial<Record<keyof Picks, readonly number[]>> = {};
  const problems = unknownFields(sessions, categoryIds, 'sessions.');
  for (const id of categoryIds) {
    const durations: unknown = Reflect.get(sessions, id);
    if (durations === undefined) continue;
    if (isNumberList(durations)) picks[id] = durations;
    else problems.push({ path: `${path}.${id}`, value: durations, code: 'wrong-type', allowed: { expected: 'list' } });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: picks };
}

function isNumberList(value: unknown): value is readonly number[] {
  return Array.isArray(value) && value.every((each) => typeof each === 'number');
}
