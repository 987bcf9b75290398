import * as v from 'valibot';
import type { Outcome, Problem, ProblemCode } from '../../problem.js';
import { checkMethod } from './check-method.js';
import type { Method } from './document.js';
import { methodSchema } from './schema.js';

/**
 * Reads a method document from outside: its shape, then what goes across its fields. Formulas are not compiled here.
 *
 * @returns the method, or every problem found, each with its path, the value given and what is allowed.
 */
export function readMethod(document: unknown): Outcome<Method> {
  const result = v.safeParse(methodSchema, document);
  if (!result.success) return { ok: false, problems: result.issues.flatMap(problemsOf) };
  const problems = checkMethod(result.output);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: result.output };
}

type Issue = v.BaseIssue<unknown>;

/** A union fails as a whole; where one of its branches got further into the value, that branch's faults say more. */
function problemsOf(issue: Issue): Problem[] {
  const inner = issue.issues?.filter((each) => each.path && each.path.length > 0) ?? [];
  if (issue.type === 'union' && inner.length > 0)
    return inner.map((each) => problemOf(each, `${pathOf(issue)}.${pathOf(each)}`));
  return [problemOf(issue, pathOf(issue))];
}

function problemOf(issue: Issue, path: string): Problem {
  const { code, allowed } = reading(issue);
  // An unknown field is an issue of its key.
  const value = code === 'unknown-field' ? issue.path?.at(-1)?.value : issue.input;
  return { path, value: plain(value), code, allowed };
}

function pathOf(issue: Issue): string {
  const keys = (issue.path ?? []).map((item) => item.key);
  return keys.reduce<string>(
    (path, key) => (typeof key === 'number' ? `${path}[${key}]` : path === '' ? String(key) : `${path}.${String(key)}`),
    '',
  );
}

/** What a fault is called, and what would have been allowed. */
function reading(issue: Issue): { code: ProblemCode; allowed: Problem['allowed'] } {
  const requirement = 'requirement' in issue ? issue.requirement : undefined;
  switch (issue.type) {
    case 'strict_object':
      if (issue.expected === 'never') return { code: 'unknown-field', allowed: {} };
      return issue.received === 'undefined' ? missing : wrongType('object');
    case 'min_value':
      return { code: 'out-of-range', allowed: { least: requirement } };
    case 'max_value':
      return { code: 'out-of-range', allowed: { most: requirement } };
    case 'literal':
    case 'picklist':
    case 'variant':
      if (issue.received === 'undefined') return missing;
      if (issue.expected === 'Object') return wrongType('object');
      return { code: 'not-one-of', allowed: { choices: choices(issue) } };
    case 'regex':
      return { code: 'wrong-pattern', allowed: { pattern: String(requirement) } };
    case 'not_values':
      return { code: 'duplicate', allowed: {} };
    case 'max_length':
      return { code: 'too-long', allowed: { most: requirement } };
    case 'length':
      return { code: 'wrong-count', allowed: { expected: requirement, count: sizeOf(issue.input) } };
    case 'min_length':
      return missing;
    case 'integer':
      return { code: 'not-a-step', allowed: { step: 1 } };
    case 'array':
      return issue.received === 'undefined' ? missing : wrongType('list');
    case 'boolean':
      return wrongType('true or false');
    case 'string':
    case 'number':
      return issue.received === 'undefined' ? missing : wrongType(issue.type === 'string' ? 'text' : 'number');
    default:
      return issue.received === 'undefined' ? missing : wrongType('text');
  }
}

const missing = { code: 'missing', allowed: {} } as const;
const wrongType = (expected: string): { code: ProblemCode; allowed: Problem['allowed'] } => ({
  code: 'wrong-type',
  allowed: { expected },
});

function choices(issue: Issue): string[] {
  return (issue.expected ?? '')
    .replace(/^\(|\)$/g, '')
    .split(' | ')
    .map((choice) => choice.replaceAll('"', ''));
}

function sizeOf(value: unknown): number {
  return Array.isArray(value) || typeof value === 'string' ? value.length : 0;
}

/** A value as it can be shown: numbers, texts and the like as they are, larger things by their kind. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return `list of ${value.length}`;
  return typeof value === 'object' && value !== null ? 'object' : value;
}
