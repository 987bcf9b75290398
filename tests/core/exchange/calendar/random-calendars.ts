import fc from 'fast-check';
import type { CalendarEvent, CalendarFile } from '../../../../src/exchange/calendar/calendar-event.js';
import { civilText } from '../../../reference/season/civil-days.js';

/** What a writer may stumble over: escapes, line breaks, controls, marks, joined characters, halves of a character. */
const hard = [
  ...['\\', ';', ',', ':', '"', 'n', 'N', ' ', '\t', '\n', '\r', '\r\n', '\\n', '^n', '=', 'END:VEVENT', ''],
  ...['\0', '\x08', '\x0b', '\x1b', '\x7f', '\x85', '\u2028', '\u2029', '\ufeff', '\ud83c', '\udfc3'],
  ...[
    'ü',
    'u\u0308',
    '走',
    '🏃',
    '🏃🏽‍♀️',
    '👨‍👩‍👧',
    '\u200d',
    '\u0301\u0302\u0303',
    'e'.repeat(74),
    '\u0301'.repeat(37),
    '\u0301'.repeat(80),
  ],
];

/** Plain objects, as JSON.parse makes them. */
const plain = { noNullPrototype: true } as const;

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 120 }),
  fc.string({ unit: fc.oneof(fc.constantFrom(...hard), fc.string({ unit: 'grapheme', maxLength: 3 })), maxLength: 60 }),
);

const clock = (minute: number): string =>
  [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':');
const minutes = fc.oneof(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 1, max: 20_000 }));
const time = fc.record({ start: fc.nat(1439).map(clock), minutes }, plain);

/** 1900-01-01 to 2199-12-31, mostly years in which people train with this. */
const date = fc
  .oneof({ weight: 4, arbitrary: fc.integer({ min: 20_000, max: 25_000 }) }, fc.integer({ min: -25_567, max: 84_005 }))
  .map(civilText);

/** Calendars of some events with such texts and identifiers, no identifier twice. */
export const anyCalendar = (text: fc.Arbitrary<string> = anyText): fc.Arbitrary<CalendarFile> => {
  const days = fc.integer({ min: 1, max: 400 });
  const event = fc.record({ uid: text, title: text, notes: text, date, days, time: fc.option(time) }, plain);
  return fc
    .record({
      name: text,
      language: fc.constantFrom('en', 'de', 'de-CH', 'zh-Hant', ''),
      stamp: date.map((day) => `${day.replaceAll('-', '')}T235959Z`),
      events: fc.array(event, { maxLength: 4 }),
    })
    .map(({ events, ...file }) => ({ ...file, events: events.map(told) }));
};

const told = (event: CalendarEvent, index: number): CalendarEvent => ({
  ...event,
  uid: `${index}-${event.uid}`,
  days: event.time === null ? event.days : 1,
});

/**
 * Texts that node-ical 0.26.1 reads as they were written: it takes an escaped backslash before an n for a line break, and
 * takes away quotation marks at both ends.
 */
export const textForNodeIcal = anyText.filter((text) => !/\\n|^".*"$/is.test(keptOf(text)));

/** What of a text a file can hold, written from RFC 5545 alone: its line breaks as '\n', without what it forbids. */
export function keptOf(text: string): string {
  let kept = '';
  for (const character of text.replaceAll('\r\n', '\n')) {
    const code = character.codePointAt(0) ?? 0;
    const breaks = [0x0d, 0x85, 0x2028, 0x2029].includes(code);
    const forbidden = (code < 0x20 && code !== 9 && code !== 10) || code === 0x7f || (code >= 0xd800 && code < 0xe000);
    if (breaks) kept += '\n';
    else if (!forbidden) kept += character;
  }
  return kept;
}
