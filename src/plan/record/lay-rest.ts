import { categoryIds, type ByCategory, type CategoryId } from '../../training/method/ids.js';
import type { DoneSession } from '../../training/record/done-session.js';
import { knownDay } from '../../training/season/iso-date.js';
import { dayCount, minutesInADay } from '../../training/week/day-sets.js';
import { isAt } from '../week/cards.js';
import type { PlanWeek } from '../week/document.js';
import type { PlacedSession, WeekWishes } from '../week/wishes.js';

/** Where a week stands. */
export interface WeekSoFar {
  /** What was done in the week. */
  readonly done: readonly DoneSession[];
  /** The Monday of the week. */
  readonly start: string;
  /** The first day that may still take a session: today. */
  readonly from: string;
  /** Minutes of a step of the method's rounding. */
  readonly step: number;
  /** Minutes that the plan has of each kind. */
  readonly rounded: ByCategory<number>;
}

/**
 * Wishes for what is left of a week: what was done stays on its day, the days before `from` are over, and as little as
 * possible of the rest moves. A week counts in whole steps, so what was done is rounded to one; of a kind that was done
 * twice on a day the week has one session with the minutes of both. Of a kind that was done as much as was planned, or more,
 * nothing is left to lay.
 */
export function layRest({ wishes, days }: Pick<PlanWeek, 'wishes' | 'days'>, soFar: WeekSoFar): WeekWishes {
  const start = knownDay(soFar.start);
  const passed = Math.min(dayCount, Math.max(0, knownDay(soFar.from) - start));
  const done = placed(soFar, start);
  return {
    ...wishes,
    done,
    passed,
    pinned: wishes.pinned.filter((each) => each.day >= passed && !done.some(isAt(each))),
    sessions: settled(wishes.sessions, done, soFar.rounded),
    before: days,
  };
}

function placed({ done, step }: WeekSoFar, start: number): readonly PlacedSession[] {
  const minutes = new Map<string, number>();
  const keyOf = (category: CategoryId, day: number): string => `${category} ${day}`;
  for (const each of done) {
    const key = keyOf(each.category, knownDay(each.date) - start);
    minutes.set(key, (minutes.get(key) ?? 0) + each.minutes);
  }
  const most = Math.floor(minutesInADay / step);
  const whole = (sum: number): number => Math.min(most, Math.max(1, Math.round(sum / step))) * step;
  return Array.from({ length: dayCount }, (_, day) =>
    categoryIds.flatMap((category) => {
      const sum = minutes.get(keyOf(category, day));
      return sum === undefined ? [] : [{ category, minutes: whole(sum), day }];
    }),
  ).flat();
}

/** Lengths settled for a kind hold on only while everything that was done of it is among them. */
function settled(
  before: WeekWishes['sessions'],
  done: readonly PlacedSession[],
  rounded: ByCategory<number>,
): WeekWishes['sessions'] {
  const kinds = categoryIds.flatMap((id) => {
    const lengths = done.filter(({ category }) => category === id).map(({ minutes }) => minutes);
    const sum = lengths.reduce((all, minutes) => all + minutes, 0);
    if (lengths.length > 0 && sum >= rounded[id]) return [[id, lengths] as const];
    const wished = before[id];
    return wished && isWithin(lengths, wished) ? [[id, wished] as const] : [];
  });
  return Object.fromEntries(kinds);
}

/** True where each length stands among others, as often as it is there. */
function isWithin(lengths: readonly number[], others: readonly number[]): boolean {
  const left = [...others];
  return lengths.every((minutes) => {
    const index = left.indexOf(minutes);
    if (index >= 0) left.splice(index, 1);
    return index >= 0;
  });
}
