import { describe, expect, test } from 'vitest';
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { calendarWith, contentLinesOf, eventWith, linesOf } from './calendars.js';
import { calendarOf, componentsOf, nameByNodeIcal, readByIcalJs, readByNodeIcal } from './readers.js';

describe('calendarText(file)', () => {
  test('is an all-day event and a session with a time, line by line', () => {
    const run = eventWith({ uid: 'b', title: 'Langer Lauf', notes: 'ruhig', time: { start: '06:30', minutes: 95 } });
    const race = eventWith({ uid: 'a', title: 'Race week', date: '2026-12-28', days: 7 });
    const file = calendarWith([race, run], { name: 'Plan', language: 'de', stamp: '20200101T000010Z' });
    expect(linesOf(calendarText(file))).toEqual([
      ...['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Weekwright//NONSGML Training calendar//EN'],
      ...['NAME;LANGUAGE=de:Plan', 'X-WR-CALNAME:Plan'],
      ...['BEGIN:VEVENT', 'UID:a', 'DTSTAMP:20200101T000010Z', 'LAST-MODIFIED:20200101T000010Z', 'SEQUENCE:10'],
      ...['DTSTART;VALUE=DATE:20261228', 'DTEND;VALUE=DATE:20270104', 'SUMMARY;LANGUAGE=de:Race week'],
      ...['TRANSP:TRANSPARENT', 'END:VEVENT'],
      ...['BEGIN:VEVENT', 'UID:b', 'DTSTAMP:20200101T000010Z', 'LAST-MODIFIED:20200101T000010Z', 'SEQUENCE:10'],
      ...['DTSTART:20261129T063000', 'DTEND:20261129T080500', 'SUMMARY;LANGUAGE=de:Langer Lauf'],
      ...['DESCRIPTION;LANGUAGE=de:ruhig', 'END:VEVENT'],
      ...['END:VCALENDAR', ''],
    ]);
  });

  test('has its name for node-ical and ical.js', () => {
    const name = 'Herbst, Halbmarathon; \\ „neu“';
    const text = calendarText(calendarWith([eventWith({})], { name }));
    expect(nameByNodeIcal(text)).toBe(name);
    // ical.js knows no type for it and gives it as it is written.
    expect(calendarOf(text).getFirstPropertyValue('name')).toBe('Herbst\\, Halbmarathon\\; \\\\ „neu“');
  });

  test('leaves out what is empty', () => {
    const file = calendarText(calendarWith([eventWith({ title: '' })], { name: '', language: '' }));
    expect(file).not.toMatch(/NAME|SUMMARY|DESCRIPTION|LANGUAGE/);
  });

  test.each([
    ['a:b', '"a:b"'],
    ['a;b', '"a;b"'],
    ['a,b', '"a,b"'],
    ['a"b\r\nEND:VEVENT', '"abEND:VEVENT"'],
    ['a\u2028b\u0000', 'ab'],
    ['sr-Latn', 'sr-Latn'],
  ])('a language %j can be nothing but a parameter', (language, value) => {
    const text = calendarText(calendarWith([eventWith({ title: 'x' })], { language }));
    expect(contentLinesOf(text)).toContain(`SUMMARY;LANGUAGE=${value}:x`);
    const [event] = componentsOf(text);
    expect(event?.getFirstProperty('summary')?.getFirstParameter('language')).toBe(value.replaceAll('"', ''));
    expect(event?.getFirstPropertyValue('summary')).toBe('x');
  });

  test('texts cannot end an event', () => {
    const attack = 'x\r\nEND:VEVENT\nBEGIN:VEVENT\rUID:2\u2028END:VCALENDAR\u0085';
    const text = calendarText(
      calendarWith([eventWith({ uid: attack, title: attack, notes: attack })], { name: attack }),
    );
    const kept = 'x\nEND:VEVENT\nBEGIN:VEVENT\nUID:2\nEND:VCALENDAR\n';
    for (const read of [readByIcalJs, readByNodeIcal]) {
      expect(read(text)).toMatchObject([{ uid: kept, title: kept, notes: kept }]);
    }
  });
});
