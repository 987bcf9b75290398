import * as v from 'valibot';
import { categoryIds } from '../../training/method/ids.js';
import { strictObject } from '../strict-object.js';
import { dayCount, minutesInADay } from '../../training/week/day-sets.js';

const whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
const day = whole(0, dayCount - 1);
/** Its length comes first: nobody wants to hear of the faults of ten thousand entries. */
const list = <T extends v.GenericSchema>(entry: T, most: number) =>
  v.pipe(v.array(v.unknown()), v.maxLength(most), v.array(entry));
const perDay = <T extends v.GenericSchema>(entry: T) =>
  v.pipe(v.array(v.unknown()), v.length(dayCount), v.array(entry));
const none = () => [];

const sessionEntries = { category: v.picklist(categoryIds), minutes: whole(1, minutesInADay) };
export const daySession = v.strictObject(sessionEntries);
const placed = strictObject({ ...sessionEntries, day });
/** A kind on every day. */
const mostPlaced = categoryIds.length * dayCount;

/** What a request may say of a week; what goes across fields is checked in `read-wishes.ts`. */
export const wishesSchema = strictObject({
  days: perDay(whole(0, minutesInADay)),
  free: v.optional(list(day, dayCount), none),
  longRun: v.optional(v.nullable(day), null),
  restDays: v.optional(whole(0, dayCount)),
  sessionsADay: v.optional(whole(1, categoryIds.length)),
  pinned: v.optional(list(placed, mostPlaced), none),
  done: v.optional(list(placed, mostPlaced), none),
  passed: v.optional(whole(0, dayCount), 0),
  sessions: v.optional(
    strictObject(v.entriesFromList(categoryIds, v.exactOptional(list(sessionEntries.minutes, dayCount)))),
    () => ({}),
  ),
  before: v.optional(v.nullable(perDay(list(daySession, categoryIds.length))), null),
});
