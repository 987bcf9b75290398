import * as v from 'valibot';
import {
  activityFactIds,
  dayFactIds,
  minuteFactIds,
  seasonFactIds,
  sessionFactIds,
  sheetFactIds,
  toldFactIds,
} from '../../training/checks/facts.js';
import { checkLevels } from '../../training/checks/check-levels.js';
import { checkUnits } from '../../training/checks/measures.js';
import { checkGroupIds, measureIds } from '../../training/method/check-rules.js';
import { categoryIds } from '../../training/method/ids.js';
import { byCategory } from '../../training/method/schema.js';
import { between, status, text, wholeBetween } from '../../training/method/schema-parts.js';
import { checksLimits } from './wishes.js';

const numberOrNull = v.nullable(v.number());
const load = v.pipe(v.number(), v.minValue(0));
const unit = v.picklist(checkUnits);
const fact = v.picklist([
  ...sheetFactIds,
  ...minuteFactIds,
  ...activityFactIds,
  ...sessionFactIds,
  ...dayFactIds,
  ...toldFactIds,
  ...seasonFactIds,
]);

const { age, hoursBefore, longestRun, effort, weeks } = checksLimits;
const loadOfDay = between(checksLimits.load.least, checksLimits.load.most);
const daysOrWeek = v.union([v.pipe(v.array(loadOfDay), v.length(7)), v.pipe(v.array(loadOfDay), v.length(1))]);

/** What a request may tell for checks, the answers to the questions before the start excepted. */
export const toldForChecksSchema = v.partial(
  v.strictObject({
    age: v.nullable(wholeBetween(age.least, age.most)),
    hoursBefore: v.nullable(between(hoursBefore.least, hoursBefore.most)),
    longestRun: v.nullable(between(longestRun.least, longestRun.most)),
    weeks: v.pipe(v.array(daysOrWeek), v.maxLength(weeks)),
    efforts: v.strictObject(v.entriesFromList(categoryIds, v.exactOptional(between(effort.least, effort.most)))),
  }),
);

/** `load` of a plan. */
export const loadSchema = v.strictObject({
  efforts: byCategory(between(effort.least, effort.most)),
  week: load,
  days: v.nullable(v.pipe(v.array(load), v.length(7))),
  spread: v.nullable(
    v.strictObject({
      week: load,
      mean: load,
      deviation: load,
      sampleDeviation: load,
      monotony: numberOrNull,
      sampleMonotony: numberOrNull,
      strain: numberOrNull,
    }),
  ),
  own: v.strictObject({
    load: numberOrNull,
    monotony: numberOrNull,
    strain: numberOrNull,
    dayWeeks: v.pipe(v.number(), v.integer(), v.minValue(0)),
  }),
});

/** One of the `checks` of a plan; `values` are numbers by name. */
export const checkResultSchema = <T extends v.GenericSchema>(values: T) =>
  v.strictObject({
    id: v.string(),
    group: v.picklist(checkGroupIds),
    measure: v.picklist(measureIds),
    level: v.nullable(v.picklist(checkLevels)),
    value: numberOrNull,
    unit,
    missing: v.nullable(fact),
    inLine: v.strictObject({ least: numberOrNull, most: numberOrNull }),
    caution: v.strictObject({ below: numberOrNull, above: numberOrNull }),
    change: v.strictObject({ amount: numberOrNull, unit }),
    values,
    notSaid: text,
    status,
    sources: v.array(v.string()),
    reason: text,
  });
