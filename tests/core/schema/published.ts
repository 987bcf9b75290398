import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020, type AnySchemaObject, type ValidateFunction } from 'ajv/dist/2020.js';

export const root = fileURLToPath(new URL('../../..', import.meta.url));

export const readJson = (path: string): unknown => JSON.parse(readFileSync(root + path, 'utf8'));

type Published = 'method' | 'plan' | 'file';

export const readSchema = (document: Published): AnySchemaObject =>
  readJson(`shared/schema/${document}.schema.json`) as AnySchemaObject;

/** Says whether a document is one by its published schema; throws where ajv finds a fault in the schema itself. */
export function validator(document: Published): ValidateFunction {
  return new Ajv2020({ strict: true, allErrors: true }).compile(readSchema(document));
}
