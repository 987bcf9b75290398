import { knownDay } from '../../training/season/iso-date.js';
import { once } from '../once.js';
import type { Words } from '../words.js';

/** Days as a language writes them. */
export interface Dates {
  /** "Sunday, April 11, 2027" */
  readonly full: (date: string) => string;
  /** "Apr 5" */
  readonly short: (date: string) => string;
  /** "Apr 5 – 11, 2027": a week from its Monday on. */
  readonly week: (start: string) => string;
}

const millisecondsInADay = 86_400_000;
const made = new Map<string, Dates>();

/** The days of a language; every Intl object is made once, when it is first needed. */
export function datesOf({ language }: Pick<Words, 'language'>): Dates {
  const known = made.get(language) ?? createDates(language);
  made.set(language, known);
  return known;
}

function createDates(language: string): Dates {
  const format = (options: Intl.DateTimeFormatOptions): (() => Intl.DateTimeFormat) =>
    once(() => new Intl.DateTimeFormat(language, { ...options, timeZone: 'UTC' }));
  const full = format({ dateStyle: 'full' });
  const short = format({ day: 'numeric', month: 'short' });
  const range = format({ day: 'numeric', month: 'short', year: 'numeric' });
  // The day at midnight in UTC, written in UTC: no zone can move it.
  const at = (date: string, daysLater = 0): number => (knownDay(date) + daysLater) * millisecondsInADay;
  return {
    full: (date) => full().format(at(date)),
    short: (date) => short().format(at(date)),
    week: (start) => range().formatRange(at(start), at(start, 6)),
  };
}
