import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CalendarEvent } from '../../../../src/exchange/calendar/calendar-event.js';
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { calendarWith, contentLinesOf, eventWith } from './calendars.js';
import { readByIcalJs, readByNodeIcal, type ReadEvent } from './readers.js';

const timed = (date: string, start: string, minutes: number): CalendarEvent =>
  eventWith({ date, time: { start, minutes } });
const allDay = (date: string, days: number): CalendarEvent => eventWith({ date, days });
const starting = ({ start, end }: ReadEvent): [string, string] => [start, end];

/** Counted by hand. The nights on which clocks are set, from memory of the zones; 2026 has a week 53, 2028 is a leap year. */
const rows: readonly [what: string, event: CalendarEvent, start: string, end: string][] = [
  [
    'before a clock goes back in Berlin',
    timed('2026-10-24', '23:30', 60),
    '2026-10-24T23:30:00',
    '2026-10-25T00:30:00',
  ],
  ['while it does', timed('2026-10-25', '00:30', 300), '2026-10-25T00:30:00', '2026-10-25T05:30:00'],
  [
    'before a clock goes forward in Berlin',
    timed('2027-03-27', '22:00', 180),
    '2027-03-27T22:00:00',
    '2027-03-28T01:00:00',
  ],
  ['while it does', timed('2027-03-28', '00:30', 300), '2027-03-28T00:30:00', '2027-03-28T05:30:00'],
  [
    'while a clock goes back in New York',
    timed('2026-11-01', '00:15', 200),
    '2026-11-01T00:15:00',
    '2026-11-01T03:35:00',
  ],
  ['while it goes forward', timed('2027-03-14', '00:15', 200), '2027-03-14T00:15:00', '2027-03-14T03:35:00'],
  ['the days of it', allDay('2026-10-24', 2), '2026-10-24', '2026-10-26'],
  ['the days of it', allDay('2027-03-14', 1), '2027-03-14', '2027-03-15'],
  ['the last minute of a day', timed('2026-11-29', '23:59', 1), '2026-11-29T23:59:00', '2026-11-30T00:00:00'],
  ['a whole day by the clock', timed('2026-11-30', '00:00', 1440), '2026-11-30T00:00:00', '2026-12-01T00:00:00'],
  ['over more days than one', timed('2026-11-29', '18:00', 3000), '2026-11-29T18:00:00', '2026-12-01T20:00:00'],
  ['over the end of a month', timed('2027-04-30', '22:45', 90), '2027-04-30T22:45:00', '2027-05-01T00:15:00'],
  ['over the end of a year', timed('2026-12-31', '23:00', 61), '2026-12-31T23:00:00', '2027-01-01T00:01:00'],
  ['week 53 of 2026', allDay('2026-12-28', 7), '2026-12-28', '2027-01-04'],
  ['over a leap day', timed('2028-02-28', '23:30', 45), '2028-02-28T23:30:00', '2028-02-29T00:15:00'],
  ['after a leap day', timed('2028-02-29', '23:30', 45), '2028-02-29T23:30:00', '2028-03-01T00:15:00'],
  ['February without one', allDay('2027-02-28', 1), '2027-02-28', '2027-03-01'],
  ['February with one', allDay('2028-02-28', 2), '2028-02-28', '2028-03-01'],
  ['no leap year', allDay('2100-02-28', 1), '2100-02-28', '2100-03-01'],
  ['the whole of a leap year', allDay('2028-01-01', 366), '2028-01-01', '2029-01-01'],
  ['the first date that there is', timed('1900-01-01', '00:00', 1), '1900-01-01T00:00:00', '1900-01-01T00:01:00'],
  ['the last date that there is', allDay('2199-12-31', 1), '2199-12-31', '2200-01-01'],
];

describe('when an event begins and ends', () => {
  test.each(rows)('%s: ical.js reads it as it is on the clock', (_what, event, start, end) => {
    expect(readByIcalJs(calendarText(calendarWith([event]))).map(starting)).toEqual([[start, end]]);
  });

  test.each(rows)('%s: node-ical does', (_what, event, start, end) => {
    expect(readByNodeIcal(calendarText(calendarWith([event]))).map(starting)).toEqual([[start, end]]);
  });

  test('a time that a night leaves out stays as it is', () => {
    const text = calendarText(calendarWith([timed('2027-03-28', '02:15', 30)]));
    expect(readByIcalJs(text).map(starting)).toEqual([['2027-03-28T02:15:00', '2027-03-28T02:45:00']]);
    expect(contentLinesOf(text)).toEqual(expect.arrayContaining(['DTSTART:20270328T021500', 'DTEND:20270328T024500']));
  });

  test('only an event with a time blocks it', () => {
    const blocking = [timed('2026-11-29', '06:00', 1), allDay('2026-11-29', 1)].map(
      (event) => !calendarText(calendarWith([event])).includes('\r\nTRANSP:TRANSPARENT\r\n'),
    );
    expect(blocking).toEqual([true, false]);
  });
});

describe('in every zone', () => {
  const root = fileURLToPath(new URL('../../../../', import.meta.url));
  let program = '';

  beforeAll(async () => {
    const { outputFiles } = await build({
      entryPoints: [fileURLToPath(new URL('./readers.ts', import.meta.url))],
      ...{ bundle: true, format: 'esm', platform: 'node', packages: 'external', write: false },
    });
    program = `${outputFiles[0]?.text ?? ''}
      let input = '';
      for await (const chunk of process.stdin) input += chunk;
      const hours = new Date(2027, 0, 1).getTimezoneOffset() / -60;
      console.log(JSON.stringify({ hours, events: [readByIcalJs(input), readByNodeIcal(input)] }));`;
  });

  // Hours from UTC in January 2027, from memory of the zones.
  test.each([
    ['UTC', 0],
    ['Europe/Berlin', 1],
    ['America/New_York', -5],
    ['Australia/Lord_Howe', 11],
    ['Pacific/Kiritimati', 14],
    ['Pacific/Pago_Pago', -11],
    ['Asia/Kolkata', 5.5],
  ])('an event is at the same time on the clock: %s', (zone, hours) => {
    const events = rows.map(([, event], index) => ({ ...event, uid: String(index) }));
    const output = execFileSync(process.execPath, ['--input-type=module', '-e', program], {
      ...{ cwd: root, encoding: 'utf8', env: { ...process.env, TZ: zone } },
      input: calendarText(calendarWith(events)),
    });
    const there = JSON.parse(output) as { hours: number; events: ReadEvent[][] };
    expect(there.hours).toBeCloseTo(hours, 9);
    const sorted = there.events.map((read) => read.toSorted((a, b) => Number(a.uid) - Number(b.uid)).map(starting));
    const expected = rows.map(([, , start, end]) => [start, end]);
    expect(sorted).toEqual([expected, expected]);
  });
});

describe('what is none', () => {
  const refused = (event: CalendarEvent, naming: string): void => {
    const write = (): string => calendarText(calendarWith([event]));
    expect(write).toThrow(RangeError);
    expect(write).toThrow(naming);
  };

  test.each(['2026-02-29', '2026-13-01', '2026-11-31', '26-11-29', '20261129', '', '1899-12-31', '2200-01-01'])(
    'no date: %j',
    (date) => refused(eventWith({ date }), `${date} is no date`),
  );

  test.each(['24:00', '7:30', '07:60', '0730', '', '07:30:00', '-1:30', '107:30', '07:30\n', '٠٧:٣٠'])(
    'no time: %j',
    (start) => refused(eventWith({ time: { start, minutes: 30 } }), `${start} is no time`),
  );

  test.each([0, -30, 1.5, NaN, Infinity, 1_000_001])('no number of minutes: %d', (minutes) =>
    refused(eventWith({ time: { start: '07:30', minutes } }), `${minutes} is no number of minutes`),
  );

  test.each([0, -1, 1.5, NaN, Infinity, 1_000_001])('no number of days: %d', (days) =>
    refused(eventWith({ days }), `${days} is no number of days`),
  );

  test('an event with a time of more days than one', () =>
    refused(eventWith({ days: 2, time: { start: '07:30', minutes: 30 } }), '2 is no number of days from 1 to 1'));

  const faulty = ['20261129T120060Z', '20261129T240000Z', '20261129T126000Z', '20261131T120000Z', '20261129T120000'];
  test.each([...faulty, '2026-11-29T12:00:00Z', 'x20261129T120000Z', '20261129T120000Zx', '20261129T120000Z\n', ''])(
    'no stamp: %j',
    (stamp) => {
      const write = (): string => calendarText(calendarWith([], { stamp }));
      expect(write).toThrow(RangeError);
      expect(write).toThrow(`${stamp} is no stamp`);
    },
  );

  test('as much as there can be has a year of four digits', () => {
    const most = [{ days: 1_000_000 }, { time: { start: '23:59', minutes: 1_000_000 } }];
    for (const parts of most) {
      const text = calendarText(calendarWith([eventWith({ date: '2199-12-31', ...parts })]));
      expect(text).toMatch(/\r\nDTEND[^:]*:\d{8}(?:T\d{6})?\r\n/);
    }
  });
});
