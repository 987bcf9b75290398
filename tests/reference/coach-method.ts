import fc from 'fast-check';
import defaultDocument from '../../shared/methods/default.json' with { type: 'json' };
import { createPlanner } from '../../src/plan.js';
import type { Planner } from '../../src/plan.js';
import { categoryIds } from '../../src/training/method/ids.js';
import type { SessionLimits } from './session-limits.js';
import type { ReferenceMethod } from './week-reference.js';

const fives = (least: number, most: number) => fc.integer({ min: least / 5, max: most / 5 }).map((units) => 5 * units);

/** Session limits as a coach might set them, small enough for brute force; a typical session may have any minutes. */
export const coachLimits: fc.Arbitrary<SessionLimits> = fives(10, 30).chain((shortest) =>
  fives(shortest, 120).chain((longest) =>
    fc.integer({ min: shortest, max: longest }).map((typical) => ({ shortest, typical, longest })),
  ),
);

/** Whole percentages for five categories, adding to 100: the gaps between four marks on a scale. */
const percentages = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 4, maxLength: 4 }).map((marks) => {
  const [first = 0, second = 0, third = 0, fourth = 0] = [...marks].sort((one, other) => one - other);
  return [first, second - first, third - second, fourth - third, 100 - fourth] as const;
});

/** Methods with the rules of the default one, and shares and session limits of a coach's own. */
export const coachMethods: fc.Arbitrary<ReferenceMethod> = fc.record({
  percentages: fc.record({
    in_season: percentages,
    off_season: percentages,
    taper: percentages,
    recovery: percentages,
  }),
  limits: fc.record({
    slow: coachLimits,
    tempo: coachLimits,
    intervals: coachLimits,
    cross: coachLimits,
    strength: coachLimits,
  }),
});

/** A planner for the method, by way of its document. */
export async function plannerFor({ percentages, limits }: ReferenceMethod): Promise<Planner> {
  const perSplit = new Map<string, readonly number[]>(Object.entries(percentages));
  const perCategory = new Map<string, SessionLimits>(Object.entries(limits));
  const outcome = await createPlanner({
    ...defaultDocument,
    categories: defaultDocument.categories.map((category) => ({ ...category, session: perCategory.get(category.id) })),
    splits: defaultDocument.splits.map((split) => ({ ...split, shares: sharesOf(perSplit.get(split.id) ?? []) })),
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function sharesOf(percentages: readonly number[]): Readonly<Record<string, number>> {
  return Object.fromEntries(categoryIds.map((category, index) => [category, (percentages[index] ?? NaN) / 100]));
}
