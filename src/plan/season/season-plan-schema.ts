import * as v from 'valibot';
import { categoryIds, eventIds, phaseIds } from '../../training/method/ids.js';
import { byCategory, minutes } from '../../training/method/schema.js';
import { between, wholeBetween } from '../../training/method/schema-parts.js';
import { seasonLimits, seasonPhaseIds, upkeepIds } from '../../training/method/season-rules.js';
import { hoursReasons } from '../../training/season/season-hours.js';
import { noticeCodes } from '../notice.js';
import { seasonChangeKinds, seasonNoticeCodes } from './document.js';
import { seasonFieldLimits } from './season-shape.js';
import { byHandReasons } from './wishes.js';

const amount = v.pipe(v.number(), v.minValue(0));
const whole = v.pipe(amount, v.integer());
const date = v.pipe(v.string(), v.regex(/^\d{4}-\d{2}-\d{2}$/));
const sessionList = v.array(v.pipe(v.number(), v.integer(), v.minValue(1)));
const category = v.picklist(categoryIds);
const phase = v.picklist(phaseIds);

const drop = between(0, seasonFieldLimits.drop);
const weeks = wholeBetween(0, seasonLimits.weeks);
const list = <T extends v.GenericSchema>(entry: T, most: number) => v.pipe(v.array(entry), v.maxLength(most));
const picked = list(minutes, seasonFieldLimits.sessions);

const wishedPhase = v.strictObject({ phase: v.picklist(seasonPhaseIds), weeks: v.nullable(weeks) });
const byHandWeek = v.strictObject({
  start: date,
  hours: v.nullable(amount),
  reason: v.picklist(byHandReasons),
  sessions: v.strictObject(v.entriesFromList(categoryIds, v.exactOptional(picked))),
});
const phasesOf = <T extends v.GenericSchema>(entry: T) =>
  v.pipe(v.array(entry), v.minLength(1), v.maxLength(seasonLimits.phases));

const wishes = v.strictObject({
  start: date,
  date,
  hours: amount,
  mostHours: amount,
  rise: between(0, seasonFieldLimits.share),
  easierEvery: wholeBetween(0, seasonLimits.easierEvery),
  easierDrop: drop,
  taperWeeks: wholeBetween(0, seasonLimits.taperWeeks),
  taperDrop: drop,
  upkeepFrom: v.picklist(upkeepIds),
  upkeepSessions: wholeBetween(1, seasonLimits.upkeepSessions),
  recoveryWeeks: wholeBetween(0, seasonLimits.recoveryWeeks),
  phases: phasesOf(wishedPhase),
  events: list(v.strictObject({ date, event: v.picklist(eventIds) }), seasonLimits.events),
  byHand: list(byHandWeek, seasonLimits.weeks),
  weeksOff: weeks,
  longestRun: v.nullable(wholeBetween(0, seasonFieldLimits.longestRun)),
});

/** What a request may say of a season. */
export const seasonRequestSchema = v.partial(
  v.strictObject({
    ...wishes.entries,
    phases: phasesOf(v.partial(wishedPhase, ['weeks'])),
    byHand: list(v.partial(byHandWeek, ['hours', 'reason', 'sessions']), seasonLimits.weeks),
    weeks: wholeBetween(1, seasonLimits.weeks),
  }),
);

/** Notices with what would help; `values` as in the notices of a plan. */
const noticeWith = <T extends v.GenericSchema>(values: T) =>
  v.strictObject({
    code: v.picklist([...noticeCodes, ...seasonNoticeCodes]),
    level: v.picklist(['note', 'caution']),
    rule: v.exactOptional(v.string()),
    category: v.exactOptional(category),
    quantity: v.exactOptional(v.string()),
    values,
    waysOut: v.array(
      v.strictObject({
        kind: v.picklist(seasonChangeKinds),
        amount,
        phase: v.nullable(whole),
        start: v.nullable(date),
        category: v.nullable(category),
        sessions: v.nullable(sessionList),
      }),
    ),
  });

/** The shape of a season in a plan document. */
export const seasonPlanSchema = <T extends v.GenericSchema>(noticeValues: T) =>
  v.strictObject({
    wishes,
    phases: v.array(v.strictObject({ phase, weeks: whole })),
    weeks: v.array(
      v.strictObject({
        number: whole,
        start: date,
        week: v.pipe(v.string(), v.regex(/^\d{4}-W\d{2}$/)),
        weeksToGo: v.pipe(v.number(), v.integer()),
        phase,
        isEasier: v.boolean(),
        events: v.array(v.strictObject({ date, event: v.picklist(eventIds), isMain: v.boolean() })),
        hours: amount,
        why: v.strictObject({
          reason: v.picklist(hoursReasons),
          base: amount,
          share: v.nullable(v.number()),
          ceiling: amount,
          risesLeft: whole,
        }),
        minutes: byCategory(amount),
        rounded: byCategory(whole),
        sessions: byCategory(sessionList),
        load: whole,
        longestRun: whole,
        notices: v.array(noticeWith(noticeValues)),
      }),
    ),
    notices: v.array(noticeWith(noticeValues)),
  });
