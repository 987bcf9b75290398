import { categoryIds, type CategoryId } from '../../../src/training/method/ids.js';
import type { KindNeed, WeekProblem } from '../../../src/training/week/week-problem.js';
import { weekOf } from './random-weeks.js';

/** Settled lengths of a kind in steps, or what it needs besides limits of 4 and 12 steps. */
type Wanted = readonly number[] | Partial<KindNeed>;

/** A week as a person would note it: steps of room by day, kinds with their sessions, and anything else. */
export interface Note extends Partial<Omit<WeekProblem, 'kinds' | 'room'>> {
  readonly room: Partial<Record<keyof typeof dayNumbers, number>>;
  readonly kinds: Partial<Record<CategoryId, Wanted>>;
}

export const dayNumbers = { mon: 0, tue: 1, wed: 2, thu: 3, fri: 4, sat: 5, sun: 6 } as const;

/** The problem of a noted week, by the default rules and without rest days unless it says otherwise. */
export function noted({ room, kinds, ...others }: Note): WeekProblem {
  const steps = [room.mon, room.tue, room.wed, room.thu, room.fri, room.sat, room.sun].map((each) => each ?? 0);
  const needs = categoryIds.map((category): KindNeed => ({ category, ...needOf(kinds[category] ?? []) }));
  return weekOf({ restDays: 0, ...others, kinds: needs, room: steps });
}

function needOf(wanted: Wanted): Omit<KindNeed, 'category'> {
  const limits = { shortest: 4, longest: 12, least: 0, most: 0, rounded: 0, wished: 0, sessions: null };
  if (!isList(wanted)) return { ...limits, ...wanted };
  const rounded = wanted.reduce((sum, each) => sum + each, 0);
  return { ...limits, least: rounded, most: rounded, rounded, wished: wanted.length, sessions: wanted };
}

const isList = (wanted: Wanted): wanted is readonly number[] => Array.isArray(wanted);
