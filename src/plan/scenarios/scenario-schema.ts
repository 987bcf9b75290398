import * as v from 'valibot';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../training/method/ids.js';
import { minutes } from '../../training/method/schema.js';
import { characters, formula, name } from '../../training/method/schema-parts.js';
import { object, strictObject } from '../strict-object.js';
import { wishesSchema } from '../week/wishes-schema.js';
import { mostScenarios, scenarioLimits, unusableKeys } from './document.js';

/** Its length comes first: nobody wants to hear of the faults of ten thousand entries. */
const list = <T extends v.GenericSchema>(entry: T, most: number) =>
  v.pipe(v.array(v.unknown()), v.maxLength(most), v.array(entry));

/** Nothing that JSON Schema could say of a record itself: see `unusableKeys`. */
export const refuseUnusableKeys = v.rawCheck<Readonly<Record<string, unknown>>>(({ dataset, addIssue }) => {
  if (!dataset.typed) return;
  const input = dataset.value;
  for (const key of unusableKeys.filter((each) => Object.hasOwn(input, each)))
    addIssue({ path: [{ type: 'object', origin: 'key', input, key, value: input[key] }] });
});
const formulas = v.optional(
  v.pipe(object, v.maxEntries(scenarioLimits.formulas), refuseUnusableKeys, v.record(name, formula)),
  () => ({}),
);

const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{1,40}$/));
const shownName = v.optional(v.pipe(v.string(), characters(scenarioLimits.name)), '');
// A hundred rules are the most of a method.
const rulesOff = v.optional(list(v.pipe(v.string(), characters(40)), 100), () => []);

const scenarioWith = <T extends v.GenericSchema>(season: T) =>
  strictObject({
    id: v.optional(id),
    name: shownName,
    inputs: v.optional(
      strictObject({
        hours: v.optional(v.number()),
        phase: v.optional(v.picklist(phaseIds)),
        level: v.optional(v.picklist(levelIds)),
        event: v.optional(v.picklist(eventIds)),
        strengthCap: v.optional(v.number()),
      }),
      () => ({}),
    ),
    sessions: v.optional(
      strictObject(v.entriesFromList(categoryIds, v.optional(list(minutes, scenarioLimits.sessions)))),
      () => ({}),
    ),
    week: v.optional(v.nullable(wishesSchema), null),
    season: v.optional(v.nullable(season), null),
    overrides: formulas,
    rulesOff,
  });

/** A what-if sheet whose seasons are of a shape. */
export const sheetWith = <T extends v.GenericSchema>(season: T) =>
  strictObject({
    format: v.literal('weekwright-sheet'),
    version: v.literal(1),
    method: v.pipe(v.string(), characters(40)),
    formulas,
    rows: v.optional(list(strictObject({ id: name, name: shownName, formula }), scenarioLimits.rows), () => []),
    rulesOff,
    scenarios: v.pipe(list(scenarioWith(season), mostScenarios), v.minLength(1)),
    reference: v.optional(v.string()),
  });

/**
 * The shape of a what-if sheet from a link or a file; what goes across fields is checked in `check-scenarios.ts`. A season
 * is read by itself, and wholly, with the inputs of its scenario.
 */
export const sheetSchema = sheetWith(object);

/** A sheet from outside that is right in its shape, with the parts that were left out filled in. */
export type ScenarioShape = v.InferOutput<typeof sheetSchema>;
