import { dayOf, knownDay } from '../../training/season/iso-date.js';

const stampPattern = /^(\d{4})(\d{2})(\d{2})T([01]\d|2[0-3])([0-5]\d)([0-5]\d)Z$/;
const firstDay = knownDay('2020-01-01');
/** RFC 5545, 3.3.8: the greatest INTEGER; reached in January 2088. */
const greatest = 2 ** 31 - 1;

/**
 * The revision of what is written at an instant 'YYYYMMDDTHHMMSSZ' (SEQUENCE; RFC 5545, 3.8.7.4): seconds since 2020, 0 before.
 * Nothing remembers how often a plan was written, yet some calendars take an update only where its number has grown.
 *
 * @throws RangeError for what is no instant
 */
export function sequenceAt(stamp: string): number {
  const [, year = '', month = '', date = '', ...time] = stampPattern.exec(stamp) ?? [];
  const day = dayOf(`${year}-${month}-${date}`);
  if (day === null) throw new RangeError(`${stamp} is no stamp`);
  const [hours = 0, minutes = 0, seconds = 0] = time.map(Number);
  const since = (((day - firstDay) * 24 + hours) * 60 + minutes) * 60 + seconds;
  return Math.min(Math.max(since, 0), greatest);
}
