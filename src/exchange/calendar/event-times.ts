import { isoDate, knownDay } from '../../training/season/iso-date.js';
import type { CalendarEvent } from './calendar-event.js';

const timePattern = /^([01]\d|2[0-3]):([0-5]\d)$/;
const minutesADay = 1440;
/** Days or minutes of an event, so that its end has a year of four digits. */
const most = 1_000_000;

/**
 * When an event begins and ends, as the properties DTSTART and DTEND. Days are dates, the end the day after the last
 * (RFC 5545, 3.6.1). Times are local times without a zone (3.3.5, form 1), and the end is what the clock on the wall then
 * shows, reckoned without zones: a night on which clocks are set changes nothing.
 *
 * @throws RangeError for a date, a time or a number that is none
 */
export function eventTimes({ date, days, time }: CalendarEvent): readonly string[] {
  const day = knownDay(date);
  const end = day + counted(days, 'days', time === null ? most : 1);
  if (time === null) return [`DTSTART;VALUE=DATE:${dateValue(day)}`, `DTEND;VALUE=DATE:${dateValue(end)}`];
  const start = day * minutesADay + minuteOfDay(time.start);
  return [`DTSTART:${timeValue(start)}`, `DTEND:${timeValue(start + counted(time.minutes, 'minutes', most))}`];
}

function minuteOfDay(time: string): number {
  const [, hours, minutes] = timePattern.exec(time) ?? [];
  if (minutes === undefined) throw new RangeError(`${time} is no time`);
  return Number(hours) * 60 + Number(minutes);
}

function counted(value: number, unit: string, limit: number): number {
  if (Number.isInteger(value) && value >= 1 && value <= limit) return value;
  throw new RangeError(`${value} is no number of ${unit} from 1 to ${limit}`);
}

const dateValue = (day: number): string => isoDate(day).replaceAll('-', '');

/** Of minutes since the beginning of 1 January 1970. */
function timeValue(minutes: number): string {
  const day = Math.floor(minutes / minutesADay);
  const minute = minutes - day * minutesADay;
  const padded = (value: number): string => String(value).padStart(2, '0');
  return `${dateValue(day)}T${padded(Math.floor(minute / 60))}${padded(minute % 60)}00`;
}
