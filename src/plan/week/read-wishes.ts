import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { readShape } from '../../training/method/read-shape.js';
import { checkWishes } from './check-wishes.js';
import { weekRules } from './week-problem-of.js';
import { wishesSchema } from './wishes-schema.js';
import type { WeekWishes } from './wishes.js';

/**
 * Reads what a request says of the week, and fills in what the method usually has.
 *
 * @returns the wishes, or every problem with its path (`week.days[1]`), the value given and what is allowed.
 */
export function readWishes(given: unknown, method: Method): Outcome<WeekWishes> {
  const shape = readShape(wishesSchema, given);
  if (!shape.ok) return { ok: false, problems: shape.problems.map(inWeek) };
  const problems = checkWishes(shape.value, method.rounding.step).map(inWeek);
  if (problems.length > 0) return { ok: false, problems };
  const { sessions_a_day, rest_days } = weekRules(method);
  const { restDays = rest_days, sessionsADay = sessions_a_day, ...rest } = shape.value;
  return { ok: true, value: { ...rest, restDays, sessionsADay } };
}

const inWeek = (problem: Problem): Problem => ({
  ...problem,
  path: problem.path === '' ? 'week' : `week.${problem.path}`,
});
