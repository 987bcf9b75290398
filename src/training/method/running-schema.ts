import * as v from 'valibot';
import { bandIds, runningIds } from './running-rules.js';
import { between, founded, idPattern, share, wholeBetween } from './schema-parts.js';

const span = (least: number, most: number) =>
  v.strictObject({ least: between(least, most), most: between(least, most) });
const easyPart = v.optional(v.strictObject({ minutes: wholeBetween(0, 60), most_share: between(0, 0.4) }));
const kind = v.strictObject({
  id: v.picklist(runningIds),
  uptake: span(0.3, 1.3),
  effort: span(0, 10),
  warm_up: easyPart,
  cool_down: easyPart,
  bouts: v.optional(v.strictObject({ work: between(0.5, 60), rest: between(0, 30) })),
  ...founded,
});

/** The section `running` of a method. */
export const runningSchema = v.strictObject({
  kinds: v.pipe(v.array(kind), v.length(runningIds.length)),
  equal_times: v.strictObject({
    distances: v.pipe(v.array(between(400, 500_000)), v.minLength(1), v.maxLength(20)),
    least_seconds: between(0, 3600),
    most_seconds: between(3600, 360_000),
    marathon_minutes: between(0, 120),
    outside_share: between(0, 1),
    old_days: wholeBetween(1, 3650),
    ...founded,
  }),
  threshold: v.strictObject({ minutes: between(10, 120), ...founded }),
  heart: v.strictObject({
    estimates: v.pipe(
      v.array(
        v.strictObject({
          id: v.pipe(v.string(), v.regex(idPattern)),
          from: between(150, 250),
          slope: between(0, 1),
        }),
      ),
      v.minLength(1),
      v.maxLength(5),
    ),
    spread: span(0, 50),
    bands: v.pipe(
      v.array(v.strictObject({ id: v.picklist(bandIds), uptake: share, reserve: share, highest: share })),
      v.length(bandIds.length),
    ),
    ...founded,
  }),
  energy: v.strictObject({ cross: span(1, 25), strength: span(1, 25), ...founded }),
});
