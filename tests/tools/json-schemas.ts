import { fileURLToPath } from 'node:url';
import { toJsonSchema, type JsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';
import { cellError, isNoList, planSchema } from '../../src/plan/plan-schema.js';
import { methodSchema } from '../../src/training/method/schema.js';
import { name, status, text } from '../../src/training/method/schema-parts.js';
import { describeByType, type TypePlace } from './doc-comments.js';

interface Publication {
  readonly title: string;
  readonly schema: GenericSchema;
  readonly type: TypePlace;
  /** Parts that stand in many places. */
  readonly definitions: Readonly<Record<string, GenericSchema>>;
}

const publications = {
  method: {
    title: 'A training method: how hours become a week of training',
    schema: methodSchema,
    type: { file: 'src/training/method/document.ts', name: 'Method' },
    definitions: { text, status, name },
  },
  plan: {
    title: 'The plan of a week of training',
    schema: planSchema,
    type: { file: 'src/plan/document.ts', name: 'Plan' },
    definitions: { text, status, 'cell-error': cellError },
  },
} satisfies Readonly<Record<string, Publication>>;

/**
 * The JSON Schema of a document as we publish it. Its `$id` is its file name, so that it may lie at any address. Throws
 * where our schema checks what JSON Schema cannot say.
 *
 * @param root the top of the project, where its source is.
 */
export function jsonSchema(document: keyof typeof publications, root: URL): JsonSchema {
  const { title, schema, type, definitions }: Publication = publications[document];
  const { $schema, ...rest } = toJsonSchema(schema, {
    target: 'draft-2020-12',
    typeMode: 'output',
    definitions: { ...definitions },
    overrideAction: ({ valibotAction, jsonSchema }) =>
      'message' in valibotAction && valibotAction.message === isNoList ? jsonSchema : null,
  });
  const place = { ...type, file: fileURLToPath(new URL(type.file, root)) };
  return { $schema, $id: `${document}.schema.json`, title, ...describeByType(rest, place) };
}
