import type { CalendarEvent, CalendarFile } from '../../../../src/exchange/calendar/calendar-event.js';

/** An all-day event of one day, unless told otherwise. */
export const eventWith = (parts: Partial<CalendarEvent>): CalendarEvent => ({
  ...{ uid: 'run-1@weekwright', title: 'Easy run', notes: '', date: '2026-11-29', days: 1, time: null },
  ...parts,
});

/** A calendar of these events. */
export const calendarWith = (events: readonly CalendarEvent[], parts: Partial<CalendarFile> = {}): CalendarFile => ({
  ...{ name: 'Training', language: 'en', stamp: '20261129T120000Z', events },
  ...parts,
});

/** The lines of a file as they are written. */
export const linesOf = (text: string): string[] => text.split('\r\n');

/** The content lines of a file: unfolded, as RFC 5545, 3.1, says. */
export const contentLinesOf = (text: string): string[] => linesOf(text.replace(/\r\n[ \t]/g, ''));
