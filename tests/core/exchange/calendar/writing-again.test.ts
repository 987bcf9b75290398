import { describe, expect, test, vi } from 'vitest';
import type { CalendarEvent } from '../../../../src/exchange/calendar/calendar-event.js';
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { calendarWith, eventWith } from './calendars.js';
import { componentsOf, readByNodeIcal } from './readers.js';

describe('writing again', () => {
  const events: readonly CalendarEvent[] = [eventWith({}), eventWith({ uid: 'run-2@weekwright', date: '2026-12-01' })];
  const written = (stamp: string): { uid: unknown; sequence: number }[] =>
    componentsOf(calendarText(calendarWith(events, { stamp }))).map((event) => ({
      uid: event.getFirstPropertyValue('uid'),
      sequence: Number(event.getFirstPropertyValue('sequence')),
    }));
  const stamps = [
    ...['19991231T235959Z', '20191231T235959Z', '20200101T000000Z', '20200101T000001Z', '20261128T235959Z'],
    ...['20261129T000000Z', '20261231T235959Z', '20270101T000000Z', '20280229T120000Z', '20880119T031406Z'],
    ...['20880119T031408Z', '21991231T235959Z'],
  ];

  test('keeps what an event is known by', () => {
    for (const stamp of stamps) expect(written(stamp).map(({ uid }) => uid)).toEqual(events.map(({ uid }) => uid));
  });

  test('counts the seconds since 2020, in what an INTEGER holds', () => {
    const seconds = (stamp: string): number =>
      (Date.parse(stamp.replace(/(....)(..)(.....)(..)(...)/, '$1-$2-$3:$4:$5')) - Date.UTC(2020, 0, 1)) / 1000;
    for (const stamp of stamps) {
      const expected = Math.max(0, Math.min(seconds(stamp), 2_147_483_647));
      expect(written(stamp).map(({ sequence }) => sequence)).toEqual([expected, expected]);
    }
  });

  test('a second later is a later revision', () => {
    const sequences = stamps.slice(2, 10).map((stamp) => written(stamp)[0]?.sequence ?? NaN);
    for (const [index, sequence] of sequences.slice(1).entries())
      expect(sequence).toBeGreaterThan(sequences[index] ?? NaN);
  });

  test('the later of two files wins in node-ical, in whichever order they arrive', () => {
    const warnings = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    const body = (title: string, stamp: string): string =>
      calendarText(calendarWith([eventWith({ title })], { stamp })).replace(
        /^.*?(?=BEGIN:VEVENT)|END:VCALENDAR\r\n$/gs,
        '',
      );
    const [early, late] = [body('before', '20261129T120000Z'), body('after', '20261129T120001Z')];
    for (const both of [early + late, late + early]) {
      const read = readByNodeIcal(`BEGIN:VCALENDAR\r\n${both}END:VCALENDAR\r\n`);
      expect(read.map(({ title }) => title)).toEqual(['after']);
    }
    // It says that it ignores the older one.
    expect(warnings).toHaveBeenCalledOnce();
    warnings.mockRestore();
  });
});
