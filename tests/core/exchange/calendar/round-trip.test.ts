import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CalendarEvent } from '../../../../src/exchange/calendar/calendar-event.js';
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { civilDay, civilText } from '../../../reference/season/civil-days.js';
import { patience, runs } from '../../../reference/runs.js';
import { contentLinesOf, linesOf } from './calendars.js';
import { anyCalendar, keptOf, textForNodeIcal } from './random-calendars.js';
import { calendarOf, readByIcalJs, readByNodeIcal, type ReadEvent } from './readers.js';

/** By the calendar of the platform, in UTC, where a day has 1440 minutes. */
function expectedOf({ uid, title, notes, date, days, time }: CalendarEvent): ReadEvent {
  const texts = { uid: keptOf(uid), title: keptOf(title), notes: keptOf(notes) };
  if (time === null) return { ...texts, start: date, end: civilText(civilDay(date) + days) };
  const start = Date.parse(`${date}T${time.start}:00Z`);
  const shown = (instant: number): string => new Date(instant).toISOString().slice(0, 19);
  return { ...texts, start: shown(start), end: shown(start + time.minutes * 60_000) };
}

describe('a random calendar', { timeout: patience }, () => {
  test('is read by ical.js as it was given', () => {
    fc.assert(
      fc.property(anyCalendar(), (file) => {
        expect(readByIcalJs(calendarText(file))).toEqual(file.events.map(expectedOf));
      }),
      runs(1000, 50_000),
    );
  });

  test('is read by node-ical as it was given', () => {
    fc.assert(
      fc.property(anyCalendar(textForNodeIcal), (file) => {
        expect(readByNodeIcal(calendarText(file))).toEqual(file.events.map(expectedOf));
      }),
      runs(200, 2000),
    );
  });

  test('has only lines of at most 75 octets, ended by CRLF, without control characters, and whole characters', () => {
    fc.assert(
      fc.property(anyCalendar(), (file) => {
        const text = calendarText(file);
        expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
        for (const line of linesOf(text).slice(0, -1)) {
          expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
          // Nothing that could end a line for some program, and no half of a character.
          expect(line).toMatch(/^[^\0-\x08\n-\x1f\x7f\u0085\u2028\u2029\p{Surrogate}]+$/u);
        }
        // What a program stores and reads again is the same.
        expect(Buffer.from(text).toString()).toBe(text);
      }),
      runs(1000, 50_000),
    );
  });

  test('has the lines of each event in one piece, and its name', () => {
    fc.assert(
      fc.property(anyCalendar(), (file) => {
        const lines = contentLinesOf(calendarText(file));
        const count = (wanted: string): number => lines.filter((line) => line === wanted).length;
        expect([count('BEGIN:VEVENT'), count('END:VEVENT')]).toEqual([file.events.length, file.events.length]);
        expect(count(`DTSTAMP:${file.stamp}`)).toBe(file.events.length);
        const names = file.name === '' ? 0 : 1;
        for (const property of ['name', 'x-wr-calname']) {
          expect(calendarOf(calendarText(file)).getAllProperties(property)).toHaveLength(names);
        }
      }),
      runs(200, 5000),
    );
  });

  test('is the same text for the same file, which is not changed', () => {
    fc.assert(
      fc.property(anyCalendar(), (file) => {
        const before = structuredClone(file);
        expect(calendarText(file)).toBe(calendarText(before));
        expect(file).toStrictEqual(before);
      }),
      runs(100, 5000),
    );
  });
});
