import type { FactId } from '../../training/checks/facts.js';
import type { CheckUnit } from '../../training/checks/measures.js';
import type { Words } from '../words.js';

/** A value in its unit: "36 min", "2 sessions", "45.5%"; loads and strains in whole numbers, for the measure is coarse. */
export function checkAmount(words: Words, unit: CheckUnit, value: number): string {
  switch (unit) {
    case 'minutes':
      return words.minutesShort(value);
    case 'hours':
      return words.hoursShort(value);
    case 'share':
      return words.share(value);
    case 'times':
      return words.number(value, 1);
    case 'load':
    case 'strain':
      return words.number(value, 0);
    case 'days':
    case 'sessions':
      // Of a session that is too much, all of it has to go.
      return words.say(`checks.unit.${unit}`, { count: Math.ceil(value) });
  }
}

/** How far one thing is above another: "25% more", "5% less". */
export function riseText(words: Words, share: number): string {
  const size = words.share(Math.abs(share));
  if (size === words.share(0)) return words.say('checks.rise.same');
  return words.say(share > 0 ? 'checks.rise.more' : 'checks.rise.less', { share: size });
}

/** Facts that are counted in something else than minutes. */
const units: Readonly<Partial<Record<FactId, CheckUnit>>> = {
  weekly_hours: 'hours',
  hours_before: 'hours',
  week_load: 'load',
  own_load: 'load',
  week_strain: 'strain',
  own_strain: 'strain',
  load_monotony: 'times',
  own_monotony: 'times',
};

const counted: readonly string[] = ['running_sessions', 'hard_sessions', 'strength_sessions', 'rest_days'];

/** A fact as sentences have it: sessions and days as bare numbers. */
export function factText(words: Words, fact: string, value: number): string {
  if (counted.includes(fact)) return words.number(value);
  return checkAmount(words, unitOf(fact), value);
}

function unitOf(fact: string): CheckUnit {
  const known: Readonly<Record<string, CheckUnit>> = units;
  return known[fact] ?? 'minutes';
}
