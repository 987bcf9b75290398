import * as v from 'valibot';
import { levelIds, phaseIds } from './ids.js';
import { between, founded, idPattern, share, text, wholeBetween } from './schema-parts.js';
import { equipmentIds, patternIds, roleIds } from './strength-rules.js';

const id = v.pipe(v.string(), v.regex(idPattern));
const pattern = v.picklist(patternIds);
const grade = wholeBetween(1, 5);
const equipment = v.pipe(v.array(v.picklist(equipmentIds)), v.maxLength(equipmentIds.length));
const wholeSpan = (least: number, most: number) =>
  v.strictObject({ least: wholeBetween(least, most), most: wholeBetween(least, most) });
const listOf = <T extends v.GenericSchema>(schema: T, most: number) =>
  v.pipe(v.array(schema), v.minLength(1), v.maxLength(most));

const movement = v.strictObject({
  id,
  name: text,
  how: text,
  pattern,
  grade,
  equipment,
  each_side: v.boolean(),
  held: v.boolean(),
  loaded: v.boolean(),
  cautions: v.optional(v.pipe(v.array(text), v.maxLength(10))),
});

/** Movements of the library or of a coach. */
export const movementsSchema = v.pipe(v.array(movement), v.maxLength(200));

const dose = v.strictObject({
  sets: wholeSpan(1, 10),
  repetitions: wholeBetween(1, 50),
  unweighted: v.optional(wholeBetween(1, 50)),
  in_hand: v.nullable(wholeBetween(0, 10)),
  seconds: wholeBetween(1, 300),
  rest: wholeBetween(0, 600),
  effort: between(0, 10),
});
const stage = v.strictObject({
  id,
  name: text,
  phases: v.optional(listOf(v.picklist(phaseIds), phaseIds.length)),
  levels: v.optional(listOf(v.picklist(levelIds), levelIds.length)),
  grade,
  pairs: v.boolean(),
  doses: v.strictObject(v.entriesFromList(roleIds, v.nullable(dose))),
  ...founded,
});
const easyPart = v.strictObject({ minutes: wholeBetween(0, 60), most_share: between(0, 0.4) });
const areas = ['legs', 'calves', 'hips', 'trunk', 'upper'] as const;

/** The section `strength` of a method. */
export const strengthSchema = v.strictObject({
  equipment,
  stages: listOf(stage, 20),
  patterns: v.pipe(
    v.array(v.strictObject({ id: pattern, role: v.picklist(roleIds), area: v.picklist(areas) })),
    v.length(patternIds.length),
  ),
  sessions: listOf(listOf(pattern, patternIds.length), 7),
  order: v.pipe(v.array(v.picklist(roleIds)), v.length(roleIds.length)),
  time: v.strictObject({
    warm_up: easyPart,
    cool_down: easyPart,
    seconds_a_repetition: between(0.5, 30),
    change_over: wholeBetween(0, 600),
    between: wholeBetween(0, 600),
    ...founded,
  }),
  spared: v.strictObject({ days_before: wholeBetween(0, 3), ...founded }),
  maximum: v.strictObject({
    most_repetitions: wholeBetween(1, 20),
    table: listOf(v.strictObject({ repetitions: wholeBetween(1, 50), share }), 30),
    step: between(0.1, 50),
    ...founded,
  }),
  progress: v.strictObject({ least: between(0, 0.5), most: between(0, 0.5), ...founded }),
  dose: v.strictObject({
    sessions: v.strictObject({ usual: wholeBetween(1, 7), most: wholeBetween(1, 7) }),
    main: wholeSpan(0, 10),
    landings: wholeBetween(0, 10_000),
    ...founded,
  }),
  movements: v.optional(movementsSchema),
});
