import type { Outcome } from '../../problem.js';
import { isPlainObject } from '../is-plain-object.js';

/** A request that a page gave as a property: nothing given is an empty one. */
export function givenRequest(path: string, given: unknown): Outcome<object> {
  if (given === undefined || given === null) return { ok: true, value: {} };
  if (isPlainObject(given)) return { ok: true, value: { ...given } };
  return {
    ok: false,
    problems: [{ path, value: typeof given, code: 'wrong-type', allowed: { expected: 'object' } }],
  };
}
