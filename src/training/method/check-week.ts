import type { Problem } from '../../problem.js';
import type { ClashMember, ClashRule, Method } from './document.js';
import { duplicate, duplicates, repeated } from './duplicates.js';
import type { CategoryId } from './ids.js';

/** Faults of a method's week that no single field shows. */
export function checkWeek({ week }: Method): Problem[] {
  if (!week) return [];
  const { clashes, templates, order_in_day, one_a_day } = week;
  return [
    ...duplicates(clashes, 'week.clashes'),
    ...duplicates(templates, 'week.templates'),
    ...repeated(order_in_day).map((index) => duplicate(`week.order_in_day[${index}]`, order_in_day[index])),
    ...repeated(one_a_day).map((index) => duplicate(`week.one_a_day[${index}]`, one_a_day[index])),
    ...clashes.flatMap((clash, index) => sameDayPairs(clash, `week.clashes[${index}]`)),
  ];
}

/** On one day a kind is always beside itself: there the two sides of a pair must differ. */
function sameDayPairs(clash: ClashRule, path: string): Problem[] {
  if (clash.kind !== 'pair' || clash.days_apart > 0) return [];
  const first = new Set(clash.first.map(kindOf));
  return clash.then.flatMap((member, index) =>
    first.has(kindOf(member)) ? [duplicate(`${path}.then[${index}]`, member)] : [],
  );
}

const kindOf = (member: ClashMember): CategoryId => (member === 'long' ? 'slow' : member);
