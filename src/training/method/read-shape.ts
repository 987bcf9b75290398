import * as v from 'valibot';
import type { Outcome } from '../../problem.js';
import { schemaProblems } from './schema-problems.js';

/** Holds a document from outside against a schema: what the schema makes of it, or every fault of its shape. */
export function readShape<T>(schema: v.GenericSchema<unknown, T>, document: unknown): Outcome<T> {
  const result = v.safeParse(schema, document);
  if (result.success) return { ok: true, value: result.output };
  return { ok: false, problems: result.issues.flatMap(schemaProblems) };
}
