import { byCategory, eventIds, levelIds, phaseIds, type CategoryId } from './ids.js';

/*
 * How the things of a method are called in formulas. A choice such as the phase `off-season` is a number, its place in
 * the list of choices; formulas name it `phase_off_season`, so that levels and events can be compared by order.
 */

/** The name of a choice in formulas: `choiceName('event', 'half-marathon')` is `event_half_marathon`. */
export function choiceName(kind: 'phase' | 'level' | 'event', id: string): string {
  return `${kind}_${id.replaceAll('-', '_')}`;
}

const choices = (kind: 'phase' | 'level' | 'event', ids: readonly string[]): [string, number][] =>
  ids.map((id, index) => [choiceName(kind, id), index]);

/** Every choice by its name in formulas. */
export const choiceNames: Readonly<Record<string, number>> = Object.fromEntries([
  ...choices('phase', phaseIds),
  ...choices('level', levelIds),
  ...choices('event', eventIds),
]);

/** What every category has a quantity for. */
type CategoryFact = 'share' | 'minutes' | 'rounded' | 'shortest' | 'typical' | 'longest';

/** Written once: a plan asks for dozens of these names, and looking up a text that was just put together is slow. */
const categoryQuantities = byCategory((id): Readonly<Record<CategoryFact, string>> => ({
  share: `${id}_share`,
  minutes: `${id}_minutes`,
  rounded: `${id}_rounded`,
  shortest: `${id}_shortest`,
  typical: `${id}_typical`,
  longest: `${id}_longest`,
}));

/** The quantities that belong to a category: `categoryQuantity('slow', 'minutes')` is `slow_minutes`. */
export function categoryQuantity(category: CategoryId, what: CategoryFact): string {
  return categoryQuantities[category][what];
}

/** The quantity that holds the most minutes of strength where it is only kept up; 0 where it is not. */
export const strengthUpkeep = 'upkeep_minutes';

/** The quantity that says whether a split is the one in use, 1 or 0. */
export function splitQuantity(splitId: string): string {
  return `split_${splitId}`;
}

/** The quantity that holds a split's share of a category: `off_season_slow_share`. */
export function splitShareQuantity(splitId: string, category: CategoryId): string {
  return `${splitId}_${category}_share`;
}

/** The quantity that says whether a notice is due, 1 or 0: `notice_few_hours`. */
export function noticeQuantity(ruleId: string): string {
  const known = noticeQuantities.get(ruleId) ?? `notice_${ruleId.replaceAll('-', '_')}`;
  noticeQuantities.set(ruleId, known);
  return known;
}

/** Asked for by every plan and every week of a season; a method has few. */
const noticeQuantities = new Map<string, string>();
