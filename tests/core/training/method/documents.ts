import { readFileSync } from 'node:fs';
import type { Outcome, Problem } from '../../../../src/problem.js';
import { createPlanner, type Planner } from '../../../../src/plan.js';

const text = readFileSync(new URL('../../../../shared/methods/default.json', import.meta.url), 'utf8');

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** The default method as it stands on disk; a new copy each time. */
export function defaultDocument(): Record<string, unknown> {
  return objectOf(JSON.parse(text));
}

/** The default method with one thing changed: `rules[0].value` is the path of the problems, undefined takes a field out. */
export function documentWith(path: string, value: unknown): Record<string, unknown> {
  const document = defaultDocument();
  const keys = keysOf(path);
  const holder = keys.slice(0, -1).reduce<Record<string, unknown>>((within, key) => objectOf(within[key]), document);
  const key = keys.at(-1) ?? '';
  // As JSON.parse does it: a key like __proto__ becomes a field, not a prototype.
  if (value === undefined) Reflect.deleteProperty(holder, key);
  else Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
  return document;
}

function keysOf(path: string): string[] {
  return path.split(/[.[\]]+/).filter((key) => key !== '');
}

export function objectOf(value: unknown): Record<string, unknown> {
  if (!isObject(value)) throw new Error(`no object: ${JSON.stringify(value)}`);
  return value;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** The planner of a document that must be good. */
export async function plannerOf(document: unknown): Promise<Planner> {
  return valueOf(await createPlanner(document));
}

/** The problems of a document that must be faulty. */
export async function problemsOf(document: unknown): Promise<readonly Problem[]> {
  const outcome = await createPlanner(document);
  if (outcome.ok) throw new Error('the document is accepted');
  return outcome.problems;
}

export function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
