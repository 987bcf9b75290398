import * as v from 'valibot';
import { seasonLimits, seasonPhaseIds, upkeepIds } from './season-rules.js';
import { sessionMinutes } from './session-minutes.js';
import { categoryIds, eventIds, levelIds, phaseIds } from './ids.js';
import { checkRulesSchema } from './check-rules-schema.js';
import { runningSchema } from './running-schema.js';
import { strengthSchema } from './strength-schema.js';
import {
  between,
  formula,
  founded,
  idPattern,
  name,
  share,
  sources,
  status,
  text,
  wholeBetween,
} from './schema-parts.js';

export const minutes = wholeBetween(sessionMinutes.least, sessionMinutes.most);
const numberInput = (least: number, most: number) =>
  v.strictObject({
    least: between(least, most),
    most: between(least, most),
    step: v.pipe(v.number(), v.minValue(0.05), v.maxValue(60)),
    start: between(least, most),
  });
export const byCategory = <T extends v.GenericSchema>(schema: T) =>
  v.strictObject(v.entriesFromList(categoryIds, schema));

const common = {
  id: v.pipe(v.string(), v.regex(idPattern)),
  enabled: v.optional(v.boolean()),
  name: text,
  when: formula,
  says: text,
  reason: text,
  status,
  sources,
};
const rule = v.variant('kind', [
  v.strictObject({
    kind: v.literal('change'),
    on: name,
    value: formula,
    to: v.optional(name),
    every_second_week: v.optional(v.boolean()),
    ...common,
  }),
  v.strictObject({ kind: v.literal('notice'), level: v.picklist(['note', 'caution']), ...common }),
]);

const category = v.picklist(categoryIds);
const clashCommon = {
  id: v.pipe(v.string(), v.regex(idPattern)),
  cost: wholeBetween(0, 1000),
  name: text,
  says: text,
  reason: text,
  status,
  sources,
};
const members = v.pipe(v.array(v.picklist([...categoryIds, 'long'])), v.minLength(1), v.maxLength(6));
const clash = v.variant('kind', [
  v.strictObject({
    kind: v.literal('pair'),
    first: members,
    then: members,
    days_apart: wholeBetween(0, 3),
    ...clashCommon,
  }),
  v.strictObject({ kind: v.picklist(['crowded-day', 'missed-minutes', 'session-count']), ...clashCommon }),
]);
const week = v.strictObject({
  sessions_a_day: wholeBetween(1, categoryIds.length),
  rest_days: wholeBetween(0, 7),
  one_a_day: v.pipe(v.array(category), v.maxLength(categoryIds.length)),
  order_in_day: v.pipe(v.array(category), v.length(categoryIds.length)),
  hours_between: wholeBetween(0, 24),
  order_reason: text,
  order_sources: sources,
  clashes: v.pipe(v.array(clash), v.maxLength(50)),
  templates: v.pipe(
    v.array(
      v.strictObject({
        id: v.pipe(v.string(), v.regex(idPattern)),
        name: text,
        minutes: v.pipe(v.array(wholeBetween(0, 1440)), v.length(7)),
      }),
    ),
    v.maxLength(20),
  ),
});

const part = between(0, 0.95);
const season = v.strictObject({
  weeks: wholeBetween(1, seasonLimits.weeks),
  phases: v.pipe(
    v.array(v.strictObject({ phase: v.picklist(seasonPhaseIds), share: between(0, 100), least: wholeBetween(0, 52) })),
    v.minLength(1),
    v.maxLength(seasonLimits.phases),
  ),
  rises: v.pipe(v.array(v.picklist(seasonPhaseIds)), v.maxLength(seasonPhaseIds.length)),
  rise: v.strictObject({ share, look: share, most: between(1, 10), ...founded }),
  easier: v.strictObject({ every_weeks: wholeBetween(0, seasonLimits.easierEvery), drop: part, ...founded }),
  taper: v.strictObject({
    weeks: wholeBetween(0, seasonLimits.taperWeeks),
    drop: part,
    least: share,
    most: share,
    ...founded,
  }),
  upkeep: v.strictObject({
    from: v.picklist(upkeepIds),
    sessions: wholeBetween(1, seasonLimits.upkeepSessions),
    ...founded,
  }),
  recovery: v.strictObject({ weeks: wholeBetween(0, seasonLimits.recoveryWeeks), share, ...founded }),
  way_back: v.strictObject({
    off_share: share,
    steps: v.pipe(
      v.array(
        v.strictObject({
          weeks: wholeBetween(1, seasonLimits.weeks),
          shares: v.pipe(v.array(share), v.minLength(1), v.maxLength(12)),
        }),
      ),
      v.maxLength(12),
    ),
    ...founded,
  }),
  single_run: v.strictObject({ most: between(1, 3), weeks: wholeBetween(1, 12), ...founded }),
});

/** The shape of a method document; what goes across fields is checked in `check-method.ts`. */
export const methodSchema = v.strictObject({
  $schema: v.optional(v.string()),
  format: v.literal('weekwright-method'),
  version: v.literal(1),
  id: v.pipe(v.string(), v.regex(idPattern)),
  name: text,
  inputs: v.strictObject({
    weekly_hours: numberInput(0.25, 40),
    season_phase: v.strictObject({ start: v.picklist(phaseIds) }),
    athlete_level: v.strictObject({ start: v.picklist(levelIds) }),
    target_event: v.strictObject({ start: v.picklist(eventIds) }),
    strength_cap: numberInput(0, 1000),
  }),
  categories: v.pipe(
    v.array(
      v.strictObject({
        id: v.picklist(categoryIds),
        name: text,
        session: v.strictObject({ shortest: minutes, typical: minutes, longest: minutes }),
        effort: v.optional(between(0, 10)),
        status,
      }),
    ),
    v.length(categoryIds.length),
  ),
  splits: v.pipe(
    v.array(
      v.strictObject({
        id: name,
        name: text,
        when: v.optional(formula),
        shares: byCategory(share),
        status,
        sources,
        reason: text,
      }),
    ),
    v.minLength(1),
    v.maxLength(20),
  ),
  tie_order: v.pipe(v.array(v.picklist(categoryIds)), v.length(categoryIds.length)),
  gives_way: v.optional(v.pipe(v.array(v.picklist(categoryIds)), v.maxLength(categoryIds.length))),
  rounding: v.strictObject({
    step: wholeBetween(1, 30),
    tolerance_minutes: between(0, 120),
    tolerance_share: share,
  }),
  quantities: v.optional(v.pipe(v.array(v.strictObject({ id: name, name: text, formula, status })), v.maxLength(100))),
  rules: v.pipe(v.array(rule), v.maxLength(100)),
  week: v.optional(week),
  season: v.optional(season),
  running: v.optional(runningSchema),
  strength: v.optional(strengthSchema),
  checks: v.optional(checkRulesSchema),
});
