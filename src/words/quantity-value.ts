import { isCheck, isOfChecks } from '../plan/checks/check-quantities.js';
import { checkLevels } from '../training/checks/check-levels.js';
import type { Method } from '../training/method/document.js';
import { strengthUpkeep } from '../training/method/names.js';
import { dayQuantities, weekCost } from '../training/method/week-names.js';
import { choiceIds, quantityMeaning, type ChoiceKind, type Measure } from './quantity-meaning.js';
import type { Words } from './words.js';

/** What a quantity is counted in. */
export type Unit =
  'hours' | 'minutes' | 'share' | 'phase' | 'level' | 'event' | 'yes-no' | 'number' | 'whole' | 'tenth' | 'check';

const unitOfMeasure: Readonly<Record<Measure, Unit>> = {
  share: 'share',
  minutes: 'minutes',
  rounded: 'minutes',
  shortest: 'minutes',
  typical: 'minutes',
  longest: 'minutes',
};

/** The quantities of the week as a whole, and what they are counted in. */
export const unitOfWeek: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ['weekly_hours', 'hours'],
  ['season_phase', 'phase'],
  ['athlete_level', 'level'],
  ['target_event', 'event'],
  ['strength_cap', 'minutes'],
  [strengthUpkeep, 'minutes'],
  ['weekly_minutes', 'minutes'],
  ['planned_minutes', 'minutes'],
  ['running_minutes', 'minutes'],
  ['running_share', 'share'],
  ['total_rounded', 'minutes'],
  ...dayQuantities.map((id): [string, Unit] => [id, 'minutes']),
  [weekCost, 'number'],
]);

/** What the facts of checks are counted in that are not whole numbers. */
const unitOfFact: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ['fact:activity_minutes', 'minutes'],
  ['fact:hard_minutes_share', 'share'],
  ['fact:hard_sessions_share', 'share'],
  ['fact:load_monotony', 'tenth'],
]);

/** The unit of a quantity; a coach's own quantities are plain numbers. */
export function quantityUnit(method: Method, id: string): Unit {
  if (isCheck(id)) return 'check';
  if (isOfChecks(id)) return unitOfFact.get(id) ?? 'whole';
  const meaning = quantityMeaning(method, id);
  switch (meaning.of) {
    case 'category':
      return unitOfMeasure[meaning.measure];
    case 'split-share':
      return 'share';
    case 'split':
    case 'notice':
      return 'yes-no';
    default:
      return unitOfWeek.get(id) ?? 'number';
  }
}

/** A value in words by its unit: "72 minutes", "30%", "build", "yes"; "no value" for null. */
export function formatByUnit(words: Words, unit: Unit, value: number | null): string {
  if (value === null) return words.say('value.none');
  switch (unit) {
    case 'hours':
    case 'minutes':
    case 'share':
    case 'number':
      return words[unit](value);
    case 'whole':
      return value < 0 ? words.say('value.none') : words.number(value, 0);
    case 'tenth':
      return value < 0 ? words.say('value.none') : words.number(value, 1);
    case 'check':
      return words.say(`check-level.${checkLevels[value] ?? 'unknown'}`);
    case 'yes-no':
      return words.say(value === 0 ? 'value.no' : 'value.yes');
    case 'phase':
    case 'level':
    case 'event':
      return choiceText(words, unit, value);
  }
}

/** A choice is held as its place in the list; a value between two places is no choice and stays a number. */
function choiceText(words: Words, kind: ChoiceKind, value: number): string {
  const id = choiceIds[kind][value];
  return id === undefined ? words.number(value) : words.say(`${kind}.${id}`);
}

/** The value of a quantity in words. */
export function quantityValue(
  words: Words,
  method: Method,
  { id, value }: { id: string; value: number | null },
): string {
  return formatByUnit(words, quantityUnit(method, id), value);
}
