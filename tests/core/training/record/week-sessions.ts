import fc from 'fast-check';
import type { CategoryId } from '../../../../src/training/method/ids.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import type { DueSession } from '../../../../src/training/record/match-sessions.js';

/** The days of a week in short: `mon` is Monday, 23 November 2026. */
export const days = {
  mon: '2026-11-23',
  tue: '2026-11-24',
  wed: '2026-11-25',
  thu: '2026-11-26',
  fri: '2026-11-27',
  sat: '2026-11-28',
  sun: '2026-11-29',
} as const;
type Day = keyof typeof days;

export const plan = (category: CategoryId, minutes: number, day: Day | null = null): DueSession => ({
  category,
  minutes,
  date: day && days[day],
});

export const did = (category: CategoryId, minutes: number, day: Day, effort: number | null = null): DoneSession => ({
  date: days[day],
  category,
  minutes,
  effort,
});

/** What is planned for a week, and what was done in it. */
export interface Week {
  readonly planned: readonly DueSession[];
  readonly done: readonly DoneSession[];
}

const day = fc.constantFrom(...Object.values(days));
const category = fc.constantFrom(...categoryIds.slice(0, 3));
const minutes = fc.integer({ min: 1, max: 24 }).map((steps) => steps * 5);

/** Weeks with up to six sessions of each sort, of three kinds, so that many fit many. */
export const anyWeeks: fc.Arbitrary<Week> = fc.record({
  planned: fc.array(fc.record({ category, minutes, date: fc.option(day, { nil: null }) }), { maxLength: 6 }),
  done: fc.array(fc.record({ date: day, category, minutes, effort: fc.constant(null) }), { maxLength: 6 }),
});
