import * as v from 'valibot';
import { equipmentIds, patternIds, roleIds } from '../../training/method/strength-rules.js';
import { between, wholeBetween } from '../../training/method/schema-parts.js';
import { strengthNoticeCodes } from './document.js';
import { strengthLimits } from './wishes.js';

const amount = v.pipe(v.number(), v.minValue(0));
const whole = v.pipe(amount, v.integer());
const pattern = v.picklist(patternIds);
const movement = v.string();

const { minutes, kilograms, age } = strengthLimits;

const wishes = v.strictObject({
  equipment: v.pipe(v.array(v.picklist(equipmentIds)), v.maxLength(equipmentIds.length)),
  minutes: v.nullable(wholeBetween(minutes.least, minutes.most)),
  forms: v.strictObject(v.entriesFromList(patternIds, v.exactOptional(movement))),
  lifted: v.array(
    v.strictObject({
      movement,
      kilograms: between(kilograms.least, kilograms.most),
      // How many tell of a maximum is the method's to say.
      repetitions: v.pipe(whole, v.minValue(1)),
    }),
  ),
  age: v.nullable(wholeBetween(age.least, age.most)),
});

/** What a request may say of strength. */
export const strengthRequestSchema = v.partial(wishes);

const exercise = v.strictObject({
  movement,
  pattern,
  role: v.picklist(roleIds),
  sets: whole,
  wishedSets: whole,
  repetitions: v.nullable(whole),
  seconds: v.nullable(amount),
  eachSide: v.boolean(),
  effort: amount,
  inHand: v.nullable(whole),
  rest: amount,
  share: v.nullable(amount),
  kilograms: v.nullable(amount),
  next: v.nullable(v.strictObject({ least: amount, most: amount })),
});

const session = v.strictObject({
  minutes: whole,
  plannedMinutes: whole,
  day: v.nullable(v.pipe(whole, v.maxValue(6))),
  legs: v.picklist(['full', 'spared']),
  warmUp: amount,
  blocks: v.array(
    v.strictObject({
      exercises: v.pipe(v.array(exercise), v.minLength(1), v.maxLength(2)),
      rest: amount,
      seconds: amount,
    }),
  ),
  coolDown: amount,
  seconds: amount,
  spare: amount,
  leftOut: v.array(v.strictObject({ pattern, movement })),
  landings: whole,
});

/** The shape of strength in a plan document. */
export const strengthPlanSchema = <T extends v.GenericSchema>(noticeValues: T) =>
  v.strictObject({
    wishes,
    stage: v.string(),
    sessions: v.array(session),
    maxima: v.array(v.strictObject({ movement, epley: amount, brzycki: amount, used: amount })),
    notices: v.array(
      v.strictObject({
        code: v.picklist(strengthNoticeCodes),
        level: v.picklist(['note', 'caution']),
        session: v.exactOptional(whole),
        movement: v.exactOptional(movement),
        pattern: v.exactOptional(pattern),
        values: noticeValues,
      }),
    ),
  });
