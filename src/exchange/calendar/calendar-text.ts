import type { CalendarEvent, CalendarFile } from './calendar-event.js';
import { escapedText, parameterValue } from './escaped-text.js';
import { eventTimes } from './event-times.js';
import { foldedLine } from './folded-line.js';
import { sequenceAt } from './sequence-at.js';

/**
 * A calendar as the text of an .ics file (RFC 5545; the name as RFC 7986, 5.1, and as the older X-WR-CALNAME): in UTF-8 lines
 * of at most 75 octets, each ended by CRLF. All-day events block no time. Control characters are taken out of texts.
 * RFC 5545 knows no calendar without events (3.6): there is nothing to write then.
 *
 * @throws RangeError for a date, a time, a number or a stamp that is none: what calls this checks its input
 */
export function calendarText({ name, language, stamp, events }: CalendarFile): string {
  const parameter = language === '' ? '' : `;LANGUAGE=${parameterValue(language)}`;
  const text = (property: string, value: string): string[] =>
    value === '' ? [] : [`${property}:${escapedText(value)}`];
  const sequence = sequenceAt(stamp);
  const eventLines = (event: CalendarEvent): string[] => [
    'BEGIN:VEVENT',
    `UID:${escapedText(event.uid)}`,
    `DTSTAMP:${stamp}`,
    `LAST-MODIFIED:${stamp}`,
    `SEQUENCE:${sequence}`,
    ...eventTimes(event),
    ...text(`SUMMARY${parameter}`, event.title),
    ...text(`DESCRIPTION${parameter}`, event.notes),
    ...(event.time === null ? ['TRANSP:TRANSPARENT'] : []),
    'END:VEVENT',
  ];
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Weekwright//NONSGML Training calendar//EN',
    ...text(`NAME${parameter}`, name),
    ...text('X-WR-CALNAME', name), // without a parameter: programs look for it as it is
    ...events.flatMap(eventLines),
    'END:VCALENDAR',
  ];
  return lines.map(foldedLine).join('');
}
