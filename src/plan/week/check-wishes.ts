import type { Problem } from '../../problem.js';
import { duplicate, repeated } from '../../training/method/duplicates.js';
import type { PlacedSession, WeekWishes } from './wishes.js';

type Shape = Pick<WeekWishes, 'free' | 'pinned' | 'done' | 'sessions'>;

/** Faults of wishes that no single field shows: doubles, and lengths that are no whole steps. */
export function checkWishes({ free, pinned, done, sessions }: Shape, step: number): Problem[] {
  const placed = [
    ...pinned.map((each, index) => at('pinned', each, index)),
    ...done.map((each, index) => at('done', each, index)),
  ];
  const doubles = placed.filter(({ id }, index) => placed.findIndex((each) => each.id === id) < index);
  const lengths = [
    ...placed.map(({ path, minutes }) => ({ path: `${path}.minutes`, minutes })),
    ...Object.entries(sessions).flatMap(([id, list]) =>
      list.map((minutes, index) => ({ path: `sessions.${id}[${index}]`, minutes })),
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
