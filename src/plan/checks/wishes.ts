import type { AnswerId } from '../../training/checks/screening.js';
import type { ByCategory } from '../../training/method/ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** What may be told, ends included: years, hours a week, minutes of a run, effort times minutes. */
export const checksLimits = {
  age: { least: 5, most: 110 },
  hoursBefore: { least: 0.25, most: 60 },
  longestRun: { least: 5, most: 1440 },
  load: { least: 0, most: 20_000 },
  effort: { least: 0, most: 10 },
  weeks: 12,
} as const;

/** What a runner tells, for checks. */
export interface ChecksWishes {
  /** In years; null where it is not told. */
  readonly age: number | null;
  /** Hours of a usual week in the last month; null where they are not told. */
  readonly hoursBefore: number | null;
  /** Minutes of the longest run of the last 30 days; null where it is not told. */
  readonly longestRun: number | null;
  /** Loads (effort times minutes) of the runner's own last weeks: seven numbers, Monday first, or one for the whole week. */
  readonly weeks: readonly (readonly number[])[];
  /** How hard sessions feel as a whole, 0 to 10, where it is not as the method has it. */
  readonly efforts: Partial<ByCategory<number>>;
}

/** What is told, for checks; all of it may be left out. The answers are never part of a plan. */
export type ChecksRequest = { readonly [K in keyof ChecksWishes]?: ChecksWishes[K] | undefined } & {
  /** What holds for the runner, of the questions before the start. Some of it leads to no plan at all. */
  readonly answers?: readonly AnswerId[] | undefined;
};
