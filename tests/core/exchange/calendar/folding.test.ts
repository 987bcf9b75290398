import { describe, expect, test } from 'vitest';
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { calendarWith, eventWith, linesOf } from './calendars.js';
import { readByIcalJs, readByNodeIcal } from './readers.js';

const octetsOf = (text: string): number => Buffer.byteLength(text);
const titleLines = (title: string): string[] => {
  const lines = linesOf(calendarText(calendarWith([eventWith({ title })])));
  const first = lines.findIndex((line) => line.startsWith('SUMMARY'));
  return lines.slice(
    first,
    lines.findIndex((line, index) => index > first && !line.startsWith(' ')),
  );
};
/** `SUMMARY;LANGUAGE=en:` has 20 octets. */
const headOctets = 20;

describe('a line', () => {
  test('of 75 octets is not folded, one of 76 is', () => {
    const fits = 'x'.repeat(75 - headOctets);
    expect(titleLines(fits)).toEqual([`SUMMARY;LANGUAGE=en:${fits}`]);
    expect(titleLines(`${fits}y`)).toEqual([`SUMMARY;LANGUAGE=en:${fits}`, ' y']);
  });

  test('that goes on has 75 octets with its space', () => {
    const [, second, third] = titleLines('x'.repeat(75 - headOctets + 74 + 1));
    expect([second, third]).toEqual([` ${'x'.repeat(74)}`, ' x']);
  });

  /** Of one character at most, joined or with marks; then the first and last of each length in UTF-8, of 1 to 4 octets. */
  const characters = ['ü', '走', 'x\u0302', '🏃', '🏃🏽‍♀️', '👨‍👩‍👧'];
  const lengths = ['~', '\u0080', '\u07ff', '\u0800', '\uffff', '\u{10000}', '\u{10ffff}'];

  test.each([...characters, ...lengths])('is never folded inside %s', (character) => {
    for (let before = 0; before <= 75 - headOctets; before += 1) {
      const title = 'x'.repeat(before) + character.repeat(80);
      const lines = titleLines(title);
      const inside = lines.slice(1).map((line) => line.slice(1));
      expect(lines.every((line) => octetsOf(line) <= 75)).toBe(true);
      for (const line of inside) expect(line.startsWith(character)).toBe(true);
      // No room is given away: the next character would not have fitted.
      for (const line of lines.slice(0, -1)) expect(octetsOf(line + character)).toBeGreaterThan(75);
    }
  });

  test.each([',', ';', '\\', '\n', '\u200d,'])(
    'is never folded between a backslash and what it escapes: %j',
    (text) => {
      for (const before of [0, 1, 2, 3]) {
        const lines = titleLines('x'.repeat(before) + text.repeat(100));
        expect(lines.length).toBeGreaterThan(2);
        for (const line of lines.slice(1)) expect(line).toMatch(/^ (?:\u200d|\\[,;\\n])+$/);
      }
    },
  );

  test('holds a character of as many octets as there are after its space, and breaks one of more', () => {
    const [most, more] = [`ü${'\u0301'.repeat(36)}`, `x${'\u0301'.repeat(37)}`];
    expect([most, more].map(octetsOf)).toEqual([74, 75]);
    expect(titleLines(`y${most}z`)).toEqual(['SUMMARY;LANGUAGE=en:y', ` ${most}`, ' z']);
    for (const title of [more, `y${more}`, 'y'.repeat(60) + more + more]) {
      expect(Math.max(...titleLines(title).map(octetsOf))).toBeLessThanOrEqual(75);
    }
  });

  test('is folded inside a character with more marks than a line holds', () => {
    const title = `x${'\u0301'.repeat(200)}y`;
    const lines = titleLines(title);
    expect(lines.every((line) => octetsOf(line) <= 75)).toBe(true);
    const text = calendarText(calendarWith([eventWith({ title })]));
    expect(readByIcalJs(text)[0]?.title).toBe(title);
    expect(readByNodeIcal(text)[0]?.title).toBe(title);
  });
});
