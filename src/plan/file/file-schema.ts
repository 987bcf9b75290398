import * as v from 'valibot';
import { categoryIds } from '../../training/method/ids.js';
import { between, characters, wholeBetween } from '../../training/method/schema-parts.js';
import { recordLimits } from '../../training/record/done-session.js';
import { toldForChecksSchema } from '../checks/checks-plan-schema.js';
import { runningRequestSchema } from '../running/running-plan-schema.js';
import { scenarioLimits } from '../scenarios/document.js';
import { sheetWith } from '../scenarios/scenario-schema.js';
import { seasonRequestSchema } from '../season/season-plan-schema.js';
import type { SeasonRequest } from '../season/wishes.js';
import { strengthRequestSchema } from '../strength/strength-plan-schema.js';
import { handoutLimits, type PlanFileDocument } from './document.js';

/*
 * For publication only: a page reads files with `read-plan-file.ts`, which is stricter, and loads nothing from here.
 */

const { minutes, effort, sessions } = recordLimits;
const upTo = (most: number) => v.optional(v.pipe(v.string(), characters(most)));

const doneSession = v.strictObject({
  date: v.pipe(v.string(), v.regex(/^\d{4}-\d{2}-\d{2}$/)),
  category: v.picklist(categoryIds),
  minutes: wholeBetween(minutes.least, minutes.most),
  effort: v.optional(v.nullable(between(effort.least, effort.most))),
});

/** The shape of a plan file, as it may come from outside; what goes across fields is checked in `read-plan-file.ts`. */
export const fileSchema = v.strictObject({
  format: v.literal('weekwright-file'),
  version: v.literal(1),
  name: upTo(scenarioLimits.name),
  sheet: sheetWith(seasonRequestSchema),
  onShow: v.optional(v.string()),
  running: v.optional(v.nullable(runningRequestSchema)),
  strength: v.optional(v.nullable(strengthRequestSchema)),
  checks: v.optional(v.nullable(toldForChecksSchema)),
  record: v.optional(v.pipe(v.array(doneSession), v.maxLength(sessions))),
  handout: v.optional(
    v.strictObject({
      runner: upTo(handoutLimits.runner),
      contact: upTo(handoutLimits.contact),
      note: upTo(handoutLimits.note),
    }),
  ),
});

type Frozen<T> = T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;
type FileByItsSchema = Frozen<v.InferInput<typeof fileSchema>>;
type SeasonByItsSchema = Frozen<v.InferInput<typeof seasonRequestSchema>>;

/**
 * Fails to compile where the schema lacks a field of the type, or has one of its own. The type of the sheet comes from its
 * schema already.
 *
 * @public
 */
export const schemaIsFile: [Omit<PlanFileDocument, 'sheet'>] extends [Omit<FileByItsSchema, 'sheet'>]
  ? [keyof FileByItsSchema, SeasonRequest] extends [keyof PlanFileDocument, SeasonByItsSchema]
    ? true
    : never
  : never = true;
