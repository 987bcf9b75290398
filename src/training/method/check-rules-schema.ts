import * as v from 'valibot';
import { checkGroupIds, edgeInputs, measureIds } from './check-rules.js';
import { categoryIds, levelIds, phaseIds } from './ids.js';
import { between, characters, founded, idPattern, text, wholeBetween } from './schema-parts.js';

const id = v.pipe(v.string(), v.regex(idPattern));
const number = between(-100_000, 100_000);
const edge = v.union([number, v.picklist(edgeInputs)]);
const age = wholeBetween(0, 120);
const some = <T extends v.GenericSchema>(schema: T, most: number) =>
  v.optional(v.pipe(v.array(schema), v.minLength(1), v.maxLength(most)));

const limits = v.strictObject({
  levels: some(v.picklist(levelIds), levelIds.length),
  phases: some(v.picklist(phaseIds), phaseIds.length),
  ages: v.optional(v.strictObject({ least: v.optional(age), most: v.optional(age), untold: v.optional(v.boolean()) })),
  hours_above: v.optional(between(0, 168)),
  in_line: v.strictObject({ least: v.optional(edge), most: v.optional(edge) }),
  caution: v.optional(v.strictObject({ below: v.optional(number), above: v.optional(number) })),
  not_said: text,
  ...founded,
});

const check = v.strictObject({
  id,
  group: v.picklist(checkGroupIds),
  measure: v.picklist(measureIds),
  enabled: v.optional(v.boolean()),
  name: text,
  says: text,
  change: text,
  limits: v.pipe(v.array(limits), v.minLength(1), v.maxLength(20)),
});

/** Two letters of any script at least: a JSON Schema knows no names of scripts. */
const hasLetters =
  /[A-Za-z\u00c0-\u1fff\u2c00-\ud7ff\uf900-\ufdff][\s\S]*[A-Za-z\u00c0-\u1fff\u2c00-\ud7ff\uf900-\ufdff]/;

/** Words that are there: a clinic can change what is said, not leave it unsaid, nor say something else's words. */
const wording = <T extends string>(key: T) =>
  v.optional(
    v.union([v.pipe(v.string(), v.regex(hasLetters), characters(1000)), v.strictObject({ key: v.literal(key) })]),
  );

const cautions = v.strictObject({
  pain: wording('usual-caution.pain'),
  bone: wording('usual-caution.bone'),
  'warning-signs': wording('usual-caution.warning-signs'),
  illness: wording('usual-caution.illness'),
  'low-energy': wording('usual-caution.low-energy'),
  heat: wording('usual-caution.heat'),
  pregnancy: wording('usual-caution.pregnancy'),
  'under-18': wording('usual-caution.under-18'),
  older: wording('usual-caution.older'),
  new: wording('usual-caution.new'),
  local: wording('usual-caution.local'),
});

/** The section `checks` of a method. */
export const checkRulesSchema = v.strictObject({
  activity: v.strictObject({
    kinds: v.pipe(
      v.array(v.strictObject({ id: v.picklist(categoryIds), multiple: between(0.5, 30) })),
      v.maxLength(categoryIds.length),
    ),
    moderate: between(1, 30),
    vigorous: between(1, 30),
    vigorous_counts: between(1, 10),
    ...founded,
  }),
  list: v.pipe(v.array(check), v.maxLength(60)),
  differences: v.pipe(
    v.array(v.strictObject({ id, name: text, text, sources: v.pipe(v.array(v.string()), v.maxLength(20)) })),
    v.maxLength(40),
  ),
  cautions: v.optional(cautions),
  screening: v.strictObject({
    advice: v.optional(
      v.strictObject({
        stop: wording('advice.stop'),
        'ask-first': wording('advice.ask-first'),
        'ask-before-hard': wording('advice.ask-before-hard'),
        'stay-easy': wording('advice.stay-easy'),
        'start-easy': wording('advice.start-easy'),
        go: wording('advice.go'),
      }),
    ),
    ...founded,
  }),
});
