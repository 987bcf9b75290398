import * as v from 'valibot';
import { reservedNames } from '../../sheet/formula/functions.js';
import { statusIds } from './ids.js';

/** Names that formulas can use: small letters, digits and underscores. */
const namePattern = /^[a-z][a-z0-9_]{0,39}$/;
/** Ids that are never in formulas. */
export const idPattern = /^[a-z][a-z0-9-]{0,39}$/;

/** As JSON Schema counts characters: an emoji is one, not the two halves that `length` tells. */
export function characters(most: number): v.MaxLengthAction<string, number, undefined> {
  const units = v.maxLength<string, number>(most);
  return {
    ...units,
    '~run': (dataset, config) =>
      dataset.typed && Array.from(dataset.value).length <= most ? dataset : units['~run'](dataset, config),
  };
}

export const formula = v.pipe(v.string(), v.maxLength(2000));
export const text = v.union([
  v.pipe(v.string(), v.minLength(1), characters(500)),
  v.strictObject({ key: v.pipe(v.string(), characters(100)) }),
]);
export const name = v.pipe(v.string(), v.regex(namePattern), v.notValues(reservedNames));
export const status = v.picklist(statusIds);
export const sources = v.optional(v.pipe(v.array(v.pipe(v.string(), characters(40))), v.maxLength(20)));
export const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
export const between = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most));
export const wholeBetween = (least: number, most: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

/** How well a number is founded; see `Founded`. */
export const founded = { status, sources, reason: text };
