import type { Outcome, Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { categoryIds } from '../training/method/ids.js';
import { inputNames } from './inputs.js';
import type { Scenario } from './scenarios/document.js';
import { readRequest } from './read-request.js';
import { readSeason } from './season/read-season.js';
import { readWishes } from './week/read-wishes.js';

/** Most that a plan document may have: one of a season of 54 weeks with everything in it has a fifth of these characters. */
export const planDocumentLimits = { characters: 1_000_000, depth: 20 } as const;

/** What of a plan document can be put on a planner again. */
export type SubmittedPlan = Pick<Scenario, 'inputs' | 'sessions' | 'week' | 'season'>;

/**
 * Reads back a plan document (`shared/schema/plan.schema.json`): its inputs, the sessions that are not the best ones,
 * what is wished of days and season. Everything else in it follows from these and is worked out anew.
 *
 * @param method the method in use; a plan made with another is refused.
 * @returns what can be put on a planner, or every problem with its path in the document (`week.wishes.days[1]`).
 */
export function readPlanDocument(document: unknown, method: Method): Outcome<SubmittedPlan> {
  const plan = fieldsOf(document);
  const faulty = foreign(document, plan, method);
  if (faulty) return { ok: false, problems: [faulty] };
  const faults = misshapen(plan);
  if (faults.length > 0) return { ok: false, problems: faults };
  const [week, season] = [wishesOf(plan['week']), wishesOf(plan['season'])];
  const request = {
    ...fieldsOf(plan['inputs']),
    sessions: week ? picksBeside(plan['week']) : picksOf(plan),
    week,
    season,
  };
  const read = readRequest(request, method, { week: { read: readWishes }, season: { read: readSeason } });
  if (!read.ok) return { ok: false, problems: read.problems.map(inDocument(week ? 'week.picks' : 'sessions')) };
  const { inputs, picks, ...wishes } = read.value;
  return { ok: true, value: { inputs, sessions: picks, ...wishes } };
}

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const fieldsOf = (value: unknown): Fields => (isFields(value) ? { ...value } : {});

const wishesOf = (part: unknown): unknown => fieldsOf(part)['wishes'];

/** What is no plan, of a later version, or another coach's. */
function foreign(document: unknown, plan: Fields, method: Method): Problem | undefined {
  const { format, version } = plan;
  if (format !== 'weekwright-plan')
    return { path: 'format', value: format ?? document, code: 'not-one-of', allowed: { choices: ['weekwright-plan'] } };
  if (version !== 1) return { path: 'version', value: version, code: 'newer-version', allowed: { most: 1 } };
  const { id } = fieldsOf(plan['method']);
  return id === method.id
    ? undefined
    : { path: 'method', value: id, code: 'other-method', allowed: { method: method.id } };
}

/** What is carried has to be there: a plan without it would silently be another. What is in it is read as a request is. */
function misshapen(plan: Fields): Problem[] {
  const { inputs, sessions } = plan;
  const asked = (['week', 'season'] as const).filter((part) => plan[part] !== null);
  return [
    ...faultsOf('inputs', inputs, inputNames),
    ...faultsOf('sessions', sessions, categoryIds),
    ...asked.flatMap((part) => {
      const faults = faultsOf(part, plan[part]);
      return faults.length > 0 ? faults : faultsOf(`${part}.wishes`, wishesOf(plan[part]));
    }),
    ...(isFields(plan['week']) ? faultsOf('week.picks', plan['week']['picks']) : []),
  ];
}

function faultsOf(path: string, value: unknown, needed: readonly string[] = []): Problem[] {
  if (value === undefined) return [missing(path)];
  if (!isFields(value)) return [{ path, value, code: 'wrong-type', allowed: { expected: 'object' } }];
  return needed.filter((field) => value[field] === undefined).map((field) => missing(`${path}.${field}`));
}

const missing = (path: string): Problem => ({ path, value: undefined, code: 'missing', allowed: {} });

/** Sessions that somebody has picked where days are given, too: those laid may be others. */
const picksBeside = (week: unknown): unknown => fieldsOf(week)['picks'];

/** Sessions that somebody has picked: the best ones come by themselves. */
function picksOf(plan: Fields): Fields {
  const [sessions, options] = [fieldsOf(plan['sessions']), fieldsOf(plan['options'])];
  const picked = categoryIds.filter((id) => !isBest(sessions[id], options[id]));
  return Object.fromEntries(picked.map((id) => [id, sessions[id]]));
}

function isBest(sessions: unknown, options: unknown): boolean {
  const best: unknown = Array.isArray(options) ? (options[0] ?? []) : null;
  if (!Array.isArray(sessions) || !Array.isArray(best) || sessions.length !== best.length) return false;
  return sessions.every((minutes, index) => minutes === best[index]);
}

/** A plan has what is wished, and what was picked, elsewhere than a request. */
const inDocument =
  (picks: string) =>
  (problem: Problem): Problem => {
    const { path } = problem;
    if (/^(week|season)\b/.test(path)) return { ...problem, path: path.replace(/^\w+/, '$&.wishes') };
    return { ...problem, path: path.startsWith('sessions') ? path.replace('sessions', picks) : `inputs.${path}` };
  };
