import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { beforeAll, describe, expect, test } from 'vitest';
import { datesOf } from '../../../../src/words/season/dates.js';
import { english, german } from './seasons.js';

const plainSpaces = (text: string): string => text.replaceAll(/[\u2009\u202F\u00A0]/g, ' ');

/** Weekdays of days that are known: 1 January 1900 was a Monday and 29 February 2024 a Thursday (printed calendars, from memory). */
const known = [
  ['1900-01-01', 'Monday, January 1, 1900', 'Montag, 1. Januar 1900', 'Jan 1', '1. Jan.'],
  ['2024-02-29', 'Thursday, February 29, 2024', 'Donnerstag, 29. Februar 2024', 'Feb 29', '29. Feb.'],
  ['2027-04-11', 'Sunday, April 11, 2027', 'Sonntag, 11. April 2027', 'Apr 11', '11. Apr.'],
  ['2199-12-31', 'Tuesday, December 31, 2199', 'Dienstag, 31. Dezember 2199', 'Dec 31', '31. Dez.'],
] as const;

describe('datesOf(words)', () => {
  test.each(known)('%s in full and in short', (date, full, germanFull, short, germanShort) => {
    expect([datesOf(english).full(date), datesOf(german).full(date)]).toEqual([full, germanFull]);
    expect([datesOf(english).short(date), datesOf(german).short(date)]).toEqual([short, germanShort]);
  });

  test.each([
    ['2027-04-05', 'Apr 5 – 11, 2027', '5.–11. Apr. 2027'],
    ['2027-03-29', 'Mar 29 – Apr 4, 2027', '29. März – 4. Apr. 2027'],
    ['2026-12-28', 'Dec 28, 2026 – Jan 3, 2027', '28. Dez. 2026 – 3. Jan. 2027'],
  ])('the week from %s on', (start, expected, other) => {
    expect(plainSpaces(datesOf(english).week(start))).toBe(expected);
    expect(plainSpaces(datesOf(german).week(start))).toBe(other);
  });

  test('throws for what is no date', () => {
    expect(() => datesOf(english).full('2027-02-29')).toThrow(RangeError);
  });
});

describe('dates in any zone', () => {
  const run = promisify(execFile);
  // The days on which a clock is set forward at midnight or at one, 1 January of both ends, and a leap day.
  const days = ['1900-01-01', '2018-11-04', '2024-02-29', '2026-04-24', '2027-03-28', '2027-10-31', '2199-12-31'];
  let program = '';

  beforeAll(async () => {
    const root = fileURLToPath(new URL('../../../../', import.meta.url));
    const { outputFiles } = await build({
      entryPoints: [`${root}src/words/season/dates.ts`],
      bundle: true,
      format: 'esm',
      platform: 'node',
      write: false,
    });
    program = `${outputFiles[0]?.text ?? ''}
      const { full, short, week } = datesOf({ language: 'en' });
      const hours = new Date(2027, 0, 1).getTimezoneOffset() / -60;
      console.log(JSON.stringify({ hours, texts: ${JSON.stringify(days)}.map((day) => [full(day), short(day), week(day)]) }));`;
  });

  const inZone = async (zone: string): Promise<{ hours: number; texts: string[][] }> => {
    const { stdout } = await run(process.execPath, ['--input-type=module', '-e', program], {
      env: { ...process.env, TZ: zone },
    });
    return JSON.parse(stdout) as { hours: number; texts: string[][] };
  };

  // Hours from UTC in January 2027, from memory of the zones.
  test.each([
    ['Pacific/Kiritimati', 14],
    ['Pacific/Pago_Pago', -11],
    ['America/Sao_Paulo', -3],
    ['Africa/Cairo', 2],
    ['Europe/Berlin', 1],
    ['Asia/Kolkata', 5.5],
  ])('are those of UTC: %s', async (zone, hours) => {
    const [there, utc] = [await inZone(zone), await inZone('UTC')];
    expect([there.hours, Math.abs(utc.hours)]).toEqual([hours, 0]);
    expect(there.texts).toEqual(utc.texts);
    expect(utc.texts[0]?.[0]).toBe('Monday, January 1, 1900');
  });
});
