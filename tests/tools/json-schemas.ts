import { fileURLToPath } from 'node:url';
import { toJsonSchema, type ConversionConfig, type JsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';
import { fileSchema } from '../../src/plan/file/file-schema.js';
import { cellError, isNoList, planSchema } from '../../src/plan/plan-schema.js';
import { unusableKeys } from '../../src/plan/scenarios/document.js';
import { refuseUnusableKeys } from '../../src/plan/scenarios/scenario-schema.js';
import { object } from '../../src/plan/strict-object.js';
import { methodSchema } from '../../src/training/method/schema.js';
import { formula, name, status, text } from '../../src/training/method/schema-parts.js';
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
  file: {
    title: 'A plan as a file: everything that a person has set',
    schema: fileSchema,
    type: { file: 'src/plan/file/document.ts', name: 'PlanFileDocument' },
    definitions: { name, formula },
  },
} satisfies Readonly<Record<string, Publication>>;

/**
 * Several schemas in one pipe are one in JSON Schema, all of them: the converter would keep the first or the last, and not
 * the length of a list that is looked at before its entries. To have it keep all, its errors are left to us.
 */
const wholePipes: ConversionConfig = {
  errorMode: 'ignore',
  overrideAction: ({ valibotAction, jsonSchema, errors }) => {
    if ('message' in valibotAction && valibotAction.message === isNoList) return jsonSchema;
    if (valibotAction === refuseUnusableKeys) return { ...jsonSchema, allOf: [without(unusableKeys)] };
    return refuse(errors);
  },
  // What is an object is said by the schema that comes after it in its pipe.
  overrideSchema: ({ valibotSchema, jsonSchema, errors }) => (valibotSchema === object ? jsonSchema : refuse(errors)),
};

const without = (names: readonly string[]): JsonSchema => ({
  type: 'object',
  propertyNames: { not: { enum: [...names] } },
});

function refuse(errors: readonly string[] | undefined): null {
  if (errors) throw new Error(errors.join('\n'));
  return null;
}

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
    definitions: { ...definitions },
    ...wholePipes,
  });
  const place = { ...type, file: fileURLToPath(new URL(type.file, root)) };
  return { $schema, $id: `${document}.schema.json`, title, ...describeByType(rest, place) };
}
