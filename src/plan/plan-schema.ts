import * as v from 'valibot';
import type { CellError } from '../sheet/errors.js';
import { categoryIds, eventIds, levelIds, phaseIds } from '../training/method/ids.js';
import { byCategory } from '../training/method/schema.js';
import { status, text } from '../training/method/schema-parts.js';
import { changeKinds, wishKinds } from '../training/week/wish.js';
import { checkResultSchema, loadSchema } from './checks/checks-plan-schema.js';
import { noticeCodes, type Plan } from './document.js';
import { runningPlanSchema } from './running/running-plan-schema.js';
import { seasonPlanSchema } from './season/season-plan-schema.js';
import { strengthPlanSchema } from './strength/strength-plan-schema.js';
import { weekStates } from './week/document.js';
import { daySession } from './week/wishes-schema.js';

const minutes = v.pipe(v.number(), v.minValue(0));
const wholeMinutes = v.pipe(minutes, v.integer());
const session = v.pipe(v.number(), v.integer(), v.minValue(1));
/** JSON has no NaN: where a quantity failed there is null. */
const valueOrNull = v.nullable(v.number());

/** Nothing to say in a JSON Schema, whose objects are never lists; `v.record` alone takes an empty list for a record. */
export const isNoList = 'is no list';
const byName = <T extends v.GenericSchema>(schema: T) =>
  v.pipe(
    v.unknown(),
    v.check((given) => !Array.isArray(given), isNoList),
    v.record(v.string(), schema),
  );

/** Why a quantity has no number; the cause of a cause may lie deeper still. */
export const cellError: v.GenericSchema<CellError> = v.variant('code', [
  v.strictObject({ code: v.literal('division-by-zero') }),
  v.strictObject({ code: v.literal('not-a-number'), operation: v.string() }),
  v.strictObject({ code: v.literal('too-large') }),
  v.strictObject({ code: v.literal('nothing-left'), over: v.number() }),
  v.strictObject({ code: v.literal('unknown-name'), name: v.string() }),
  v.strictObject({ code: v.literal('circle'), path: v.array(v.string()) }),
  v.strictObject({ code: v.literal('depends-on'), name: v.string(), cause: v.lazy(() => cellError) }),
]);

const ruleOutcome = v.strictObject({
  id: v.string(),
  kind: v.picklist(['change', 'notice']),
  enabled: v.boolean(),
  acted: v.boolean(),
  on: v.nullable(v.string()),
  to: v.nullable(v.string()),
  before: valueOrNull,
  after: valueOrNull,
  status,
});

const notice = v.strictObject({
  code: v.picklist(noticeCodes),
  level: v.picklist(['note', 'caution']),
  rule: v.exactOptional(v.string()),
  category: v.exactOptional(v.picklist(categoryIds)),
  quantity: v.exactOptional(v.string()),
  values: byName(v.number()),
});

const readings = v.array(v.strictObject({ name: v.string(), value: valueOrNull }));

const derivation = v.strictObject({
  quantity: v.string(),
  kind: v.picklist(['input', 'constant', 'formula', 'block']),
  value: valueOrNull,
  formula: v.nullable(v.string()),
  readings,
  rules: v.array(
    v.strictObject({
      rule: v.string(),
      role: v.picklist(['on', 'to']),
      enabled: v.boolean(),
      acted: v.boolean(),
      when: v.string(),
      formula: v.string(),
      before: valueOrNull,
      after: valueOrNull,
    }),
  ),
  byHand: v.nullable(
    v.strictObject({
      kind: v.picklist(['override', 'gives-way']),
      formula: v.nullable(v.string()),
      readings,
      before: valueOrNull,
      to: v.array(v.string()),
    }),
  ),
  error: v.nullable(cellError),
  status: v.nullable(status),
  sources: v.array(v.string()),
  reason: v.nullable(text),
});

const day = v.pipe(wholeMinutes, v.maxValue(6));
const sessionList = v.array(session);
const placed = v.strictObject({ ...daySession.entries, day });
const perDay = <T extends v.GenericSchema>(schema: T) => v.pipe(v.array(schema), v.length(7));
const category = v.picklist(categoryIds);

const picks = v.strictObject(v.entriesFromList(categoryIds, v.exactOptional(sessionList)));

const week = v.strictObject({
  wishes: v.strictObject({
    days: perDay(wholeMinutes),
    free: v.array(day),
    longRun: v.nullable(day),
    restDays: wholeMinutes,
    sessionsADay: session,
    pinned: v.array(placed),
    done: v.array(placed),
    passed: wholeMinutes,
    sessions: picks,
    before: v.nullable(perDay(v.array(daySession))),
  }),
  picks,
  state: v.picklist(weekStates),
  days: v.nullable(perDay(v.array(daySession))),
  sessions: byCategory(sessionList),
  cost: v.nullable(wholeMinutes),
  clashes: v.array(
    v.strictObject({
      kind: v.string(),
      days: v.array(day),
      cost: wholeMinutes,
      category: v.nullable(category),
      by: v.number(),
    }),
  ),
  conflict: v.nullable(
    v.strictObject({
      wishes: v.array(
        v.strictObject({
          kind: v.picklist(wishKinds),
          day: v.nullable(day),
          category: v.nullable(category),
          amount: v.number(),
        }),
      ),
      waysOut: v.array(
        v.strictObject({
          changes: v.array(
            v.strictObject({
              kind: v.picklist(changeKinds),
              day: v.nullable(day),
              category: v.nullable(category),
              amount: v.number(),
              sessions: v.nullable(sessionList),
            }),
          ),
          cost: wholeMinutes,
        }),
      ),
    }),
  ),
});

/** The shape of a plan document. */
export const planSchema = v.strictObject({
  format: v.literal('weekwright-plan'),
  version: v.literal(1),
  method: v.strictObject({ id: v.string(), name: text }),
  inputs: v.strictObject({
    hours: v.number(),
    phase: v.picklist(phaseIds),
    level: v.picklist(levelIds),
    event: v.picklist(eventIds),
    strengthCap: v.number(),
  }),
  split: v.strictObject({ id: v.string(), shares: byCategory(v.number()), status }),
  minutes: byCategory(minutes),
  rounded: byCategory(wholeMinutes),
  total: v.strictObject({ exact: minutes, rounded: wholeMinutes }),
  options: byCategory(v.array(v.array(session))),
  sessions: byCategory(v.array(session)),
  rules: v.array(ruleOutcome),
  notices: v.array(notice),
  derivations: byName(derivation),
  week: v.nullable(week),
  season: v.nullable(seasonPlanSchema(byName(v.number()))),
  running: v.nullable(runningPlanSchema(byName(v.number()))),
  strength: v.nullable(strengthPlanSchema(byName(v.number()))),
  load: v.nullable(loadSchema),
  checks: v.array(checkResultSchema(byName(v.number()))),
});

type Frozen<T> = T extends object ? { readonly [K in keyof T]: Frozen<T[K]> } : T;
type PlanByItsSchema = Frozen<v.InferOutput<typeof planSchema>>;

/**
 * Fails to compile where the schema and the type drift apart, in either direction.
 *
 * @public
 */
export const schemaIsPlan: [PlanByItsSchema] extends [Plan]
  ? [Plan] extends [PlanByItsSchema]
    ? true
    : never
  : never = true;
