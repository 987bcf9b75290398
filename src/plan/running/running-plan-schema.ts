import * as v from 'valibot';
import { categoryIds } from '../../training/method/ids.js';
import { bandIds, runningIds } from '../../training/method/running-rules.js';
import { wideningReasons } from '../../training/running/equal-times.js';
import { runPartKinds } from '../../training/running/run-session.js';
import { basisKinds, highestSources, runningNoticeCodes } from './document.js';
import { between } from '../../training/method/schema-parts.js';
import { distanceUnits, runningLimits } from './wishes.js';

const amount = v.pipe(v.number(), v.minValue(0));
const span = v.strictObject({ from: amount, to: amount });
const date = v.pipe(v.string(), v.regex(/^\d{4}-\d{2}-\d{2}$/));

const within = ({ least, most }: (typeof runningLimits)[keyof typeof runningLimits]) => between(least, most);
const told = (limit: keyof typeof runningLimits) => v.nullable(within(runningLimits[limit]));

const race = v.strictObject({ metres: within(runningLimits.metres), seconds: amount, date: v.nullable(date) });
const wishes = v.strictObject({
  race: v.nullable(race),
  thresholdPace: told('thresholdPace'),
  unit: v.picklist(distanceUnits),
  age: told('age'),
  highestHeart: told('highestHeart'),
  restingHeart: told('restingHeart'),
  weight: told('weight'),
  today: v.nullable(date),
});

/** What a request may say of running. */
export const runningRequestSchema = v.partial(
  v.strictObject({ ...wishes.entries, race: v.nullable(v.partial(race, ['date'])) }),
);

const part = v.strictObject({
  kind: v.picklist(runPartKinds),
  minutes: amount,
  times: v.pipe(amount, v.integer()),
});

/** The running of a plan; `values` as in the notices of a plan. */
export const runningPlanSchema = <T extends v.GenericSchema>(values: T) =>
  v.strictObject({
    wishes,
    basis: v.nullable(
      v.strictObject({ from: v.picklist(basisKinds), metres: amount, seconds: amount, held: amount, uptake: amount }),
    ),
    guides: v.array(
      v.strictObject({
        category: v.picklist(runningIds),
        effort: span,
        pace: v.nullable(span),
        heart: v.nullable(span),
        bands: v.nullable(v.strictObject({ from: v.picklist(bandIds), to: v.picklist(bandIds) })),
      }),
    ),
    equalTimes: v.array(
      v.strictObject({
        metres: amount,
        riegel: amount,
        uptake: amount,
        from: amount,
        to: amount,
        widened: v.nullable(v.picklist(wideningReasons)),
      }),
    ),
    highest: v.nullable(
      v.strictObject({
        beats: amount,
        from: v.picklist(highestSources),
        estimates: v.array(v.strictObject({ id: v.string(), beats: amount })),
      }),
    ),
    bands: v.array(v.strictObject({ id: v.picklist(bandIds), from: amount, to: amount })),
    sessions: v.array(
      v.strictObject({
        category: v.picklist(categoryIds),
        minutes: amount,
        day: v.nullable(v.pipe(amount, v.integer(), v.maxValue(6))),
        parts: v.array(part),
        metres: v.nullable(span),
        energy: v.nullable(span),
      }),
    ),
    metres: v.nullable(span),
    energy: v.nullable(span),
    notices: v.array(
      v.strictObject({ code: v.picklist(runningNoticeCodes), level: v.picklist(['note', 'caution']), values }),
    ),
  });
