import type { PlanWeek } from '../../../../src/plan/week/document.js';
import type { PlacedSession, WeekWishes } from '../../../../src/plan/week/wishes.js';
import type { CategoryId } from '../../../../src/training/method/ids.js';
import { frozen } from '../scenarios/sheets.js';

/** A session of the week below. */
export const session = (category: CategoryId, minutes: number, day: number): PlacedSession => ({
  category,
  minutes,
  day,
});

const on = (category: CategoryId, minutes: number) => [{ category, minutes }];

/** Wishes of somebody with two hours on each of seven days. */
export const wishes: WeekWishes = frozen({
  days: [120, 120, 120, 120, 120, 120, 120],
  free: [],
  longRun: null,
  restDays: 0,
  sessionsADay: 2,
  pinned: [],
  done: [],
  passed: 0,
  sessions: {},
  before: null,
});

type Week = Pick<PlanWeek, 'days' | 'sessions' | 'wishes'>;

/** A week of four hours in build that costs nothing (see `hand-made-weeks.test.ts`); nothing in it can be changed. */
export const sevenDays: Week & { readonly days: NonNullable<PlanWeek['days']> } = frozen({
  days: [
    on('tempo', 35),
    on('strength', 35),
    on('slow', 35),
    on('intervals', 25),
    on('strength', 40),
    on('slow', 35),
    on('cross', 35),
  ],
  sessions: { slow: [35, 35], tempo: [35], intervals: [25], cross: [35], strength: [35, 40] },
  wishes,
});

/** The same week with other wishes. */
export const wished = (fields: Partial<WeekWishes>): typeof sevenDays =>
  frozen({ ...sevenDays, wishes: { ...wishes, ...fields } });
