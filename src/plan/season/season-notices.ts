import { weeksFrom } from '../../training/season/season-weeks.js';
import { seasonLimits } from '../../training/method/season-rules.js';
import { inputQuantities } from '../inputs.js';
import type { SeasonNotice } from './document.js';
import type { DraftSeason } from './draft-season.js';
import { isWithinReach } from './is-within-reach.js';
import { seasonChange, seasonNotice } from './season-notice.js';
import { mostNotReached } from './most-not-reached.js';
import { seasonRules } from './season-ground.js';

/** What concerns a season as a whole: what cannot be as it is wished, and what would help; what to mind. */
export function seasonNotices(draft: DraftSeason): readonly SeasonNotice[] {
  return [
    ...inputsHeld(draft),
    ...tooFewWeeks(draft),
    ...spareWeeks(draft),
    ...startAboveMost(draft),
    ...mostNotReached(draft),
    ...fastRise(draft),
    ...otherTaper(draft),
    ...afterBreak(draft),
    ...outside(draft),
  ];
}

/** What a person has put over the hours or the phase holds in every week: a season cannot move them. */
function inputsHeld({ tools: { sheet } }: DraftSeason): SeasonNotice[] {
  const moved = [inputQuantities.hours, inputQuantities.phase];
  return sheet.model.overrides
    .filter(({ on }) => moved.includes(on))
    .map(({ on }) => ({ ...seasonNotice('input-held', 'caution'), quantity: on }));
}

function tooFewWeeks({ wishes, lengths }: DraftSeason): SeasonNotice[] {
  const weeks = weeksFrom(wishes.start, wishes.date);
  const missing = lengths.missing + Math.max(0, wishes.taperWeeks - weeks);
  if (missing === 0) return [];
  const settled = wishes.phases.findIndex((phase) => phase.weeks !== null && phase.weeks > missing);
  const shorter = wishes.phases[settled]?.weeks;
  const waysOut = [
    ...(shorter == null ? [] : [seasonChange('phase-weeks', { amount: shorter - missing, phase: settled })]),
    ...(weeks + missing > seasonLimits.weeks ? [] : [seasonChange('weeks', { amount: weeks + missing })]),
    ...(wishes.taperWeeks > missing ? [seasonChange('taper-weeks', { amount: wishes.taperWeeks - missing })] : []),
  ];
  return [seasonNotice('too-few-weeks', 'caution', { values: { weeks, missing, asked: weeks + missing }, waysOut })];
}

function spareWeeks({ lengths: { spare } }: DraftSeason): SeasonNotice[] {
  return spare === 0 ? [] : [seasonNotice('spare-weeks', 'note', { values: { spare } })];
}

function startAboveMost({ wishes: { hours, mostHours } }: DraftSeason): SeasonNotice[] {
  if (hours <= mostHours) return [];
  const waysOut = [seasonChange('most-hours', { amount: hours })];
  return [seasonNotice('start-above-most', 'note', { values: { hours, most: mostHours }, waysOut })];
}

function fastRise({ tools: { method }, wishes: { rise } }: DraftSeason): SeasonNotice[] {
  const { look } = seasonRules(method).rise;
  if (rise <= look + 1e-9) return [];
  const waysOut = [seasonChange('rise', { amount: look })];
  return [seasonNotice('fast-rise', 'caution', { values: { rise, look }, waysOut })];
}

function otherTaper({ tools: { method }, wishes }: DraftSeason): SeasonNotice[] {
  const { weeks, least, most } = seasonRules(method).taper;
  const { taperWeeks, taperDrop } = wishes;
  const isUsual = taperWeeks === weeks && taperDrop >= least - 1e-9 && taperDrop <= most + 1e-9;
  return isUsual
    ? []
    : [seasonNotice('other-taper', 'note', { values: { taperWeeks, taperDrop, weeks, least, most } })];
}

/** A way back is an assumption; who comes back is told so, and what to mind. */
function afterBreak({ weeks }: DraftSeason): SeasonNotice[] {
  const back = weeks.filter(({ hours }) => hours.reason === 'way-back').length;
  const isIll = weeks.some(({ byHand }) => byHand?.hours != null && byHand.reason === 'ill');
  return [
    ...(back > 0 ? [seasonNotice('after-break', 'caution', { values: { weeks: back } })] : []),
    ...(isIll ? [seasonNotice('ill', 'caution')] : []),
  ];
}

/** Events and weeks by hand that the season does not have: they wait until it has. */
function outside({ wishes, weeks }: DraftSeason): SeasonNotice[] {
  const starts = new Set(weeks.map(({ calendar }) => calendar.start));
  const events = wishes.events.filter(({ date }) => !isWithinReach(wishes, date)).length;
  const byHand = wishes.byHand.filter(({ start }) => !starts.has(start)).length;
  return [
    ...(events > 0 ? [seasonNotice('event-outside', 'note', { values: { count: events } })] : []),
    ...(byHand > 0 ? [seasonNotice('by-hand-outside', 'note', { values: { count: byHand } })] : []),
  ];
}
