import * as v from 'valibot';
import type { Outcome, Problem } from '../../problem.js';
import { duplicate, repeated } from '../../training/method/duplicates.js';
import type { Method } from '../../training/method/document.js';
import { readShape } from '../../training/method/read-shape.js';
import { weekRules } from './week-problem-of.js';
import { wishesSchema } from './wishes-schema.js';
import type { PlacedSession, WeekWishes } from './wishes.js';

type Shape = v.InferOutput<typeof wishesSchema>;

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

/** Faults that no single field shows: doubles, and lengths that are no whole steps. */
function checkWishes({ free, pinned, done, sessions }: Shape, step: number): Problem[] {
  const placed = [
    ...pinned.map((each, index) => at('pinned', each, index)),
    ...done.map((each, index) => at('done', each, index)),
  ];
  const doubles = placed.filter(({ id }, index) => placed.findIndex((each) => each.id === id) < index);
  const lengths = [
    ...placed.map(({ path, minutes }) => ({ path: `${path}.minutes`, minutes })),
    ...Object.entries(sessions).flatMap(([id, list]) =>
      (list ?? []).map((minutes, index) => ({ path: `sessions.${id}[${index}]`, minutes })),
    ),
  ];
  return [
    ...repeated(free).map((index) => duplicate(`free[${index}]`, free[index])),
    ...doubles.map(({ path, category }) => duplicate(`${path}.category`, category)),
    ...lengths
      .filter(({ minutes }) => minutes % step !== 0)
      .map(({ path, minutes }): Problem => ({ path, value: minutes, code: 'not-a-step', allowed: { step } })),
  ];
}

/** A kind is on a day once at most. */
const at = (
  list: string,
  { category, day, minutes }: PlacedSession,
  index: number,
): { path: string; id: string; category: string; minutes: number } => ({
  path: `${list}[${index}]`,
  id: `${category} ${day}`,
  category,
  minutes,
});
