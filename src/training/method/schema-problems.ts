import type * as v from 'valibot';
import type { Problem, ProblemCode } from '../../problem.js';

type Issue = v.BaseIssue<unknown>;

/**
 * Problems of one issue of valibot's: where, what was given, what is allowed.
 *
 * A union fails as a whole; where one of its branches got further into the value, that branch's faults say more.
 */
export function schemaProblems(issue: Issue): Problem[] {
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
  const keys = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : shortened(String(key))));
  return keys.reduce<string>(
    (path, key) => (typeof key === 'number' ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
    '',
  );
}

const longestKey = 60;

/** Keys come from outside too, and a path is shown whole. */
function shortened(key: string): string {
  return key.length > longestKey ? `${key.slice(0, longestKey)}…` : key;
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
    case 'raw_check': // of a key that no record may have
      return { code: 'unknown-field', allowed: {} };
    case 'not_values':
      return { code: 'duplicate', allowed: {} };
    case 'max_length':
    case 'max_entries':
      return { code: 'too-long', allowed: { most: requirement } };
    case 'length':
      return { code: 'wrong-count', allowed: { expected: requirement, count: sizeOf(issue.input) } };
    case 'min_length':
      return missing;
    case 'integer':
      return { code: 'not-a-step', allowed: { step: 1 } };
    case 'custom': // the check that a value is an object and no list
      return wrongType('object');
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
