import type { Plan } from '../document.js';
import { sessionsOf } from '../sessions-of.js';

/** The days with a hard run: tempo, intervals, and the long run, which is the slow one longer than every other. */
export function hardDays(plan: Pick<Plan, 'week' | 'sessions'>): readonly number[] {
  const slow = sessionsOf(plan, ['slow']);
  const longest = Math.max(0, ...slow.map(({ minutes }) => minutes));
  const long = slow.filter(({ minutes }) => minutes === longest);
  const hard = [...sessionsOf(plan, ['tempo', 'intervals']), ...(long.length === 1 ? long : [])];
  return hard.flatMap(({ day }) => (day === null ? [] : [day]));
}
