import ICAL from 'ical.js';
import nodeIcal from 'node-ical';

/** What a program reads of an event. Dates are 'YYYY-MM-DD', local times 'YYYY-MM-DDTHH:MM:SS', as the file has them. */
export interface ReadEvent {
  readonly uid: string;
  readonly title: string;
  readonly notes: string;
  readonly start: string;
  readonly end: string;
}

/** The events of a file as ical.js reads them, in their order. */
export function readByIcalJs(text: string): ReadEvent[] {
  return componentsOf(text).map((component) => {
    const { uid, summary, description, startDate, endDate } = new ICAL.Event(component);
    const times = [startDate, endDate];
    if (times.some(({ zone }) => zone !== ICAL.Timezone.localTimezone)) throw new Error('a time with a zone');
    const [start = '', end = ''] = times.map(String);
    return { uid, title: summary ?? '', notes: description ?? '', start, end };
  });
}

/** The components of the events of a file, with all their properties, as ical.js reads them. */
export const componentsOf = (text: string): ICAL.Component[] => calendarOf(text).getAllSubcomponents('vevent');

/** The whole calendar as ical.js reads it. */
export const calendarOf = (text: string): ICAL.Component => ICAL.Component.fromString(text);

/** The events of a file as node-ical reads them, which makes local times instants of the zone that it runs in. */
export function readByNodeIcal(text: string): ReadEvent[] {
  return Object.values(nodeIcal.sync.parseICS(text)).flatMap((component) => {
    if (component === undefined || !('type' in component) || component.type !== 'VEVENT') return [];
    const { uid, summary, description, start, end, datetype } = component;
    if (end === undefined) throw new Error('an event without an end');
    const local = datetype === 'date' ? localDate : localTime;
    return [{ uid, title: plain(summary), notes: plain(description), start: local(start), end: local(end) }];
  });
}

/** The name of a calendar as node-ical reads it, from X-WR-CALNAME. */
export const nameByNodeIcal = (text: string): string | undefined =>
  nodeIcal.sync.parseICS(text).vcalendar?.['WR-CALNAME'];

const plain = (value: string | { readonly val: string } | undefined): string =>
  typeof value === 'object' ? value.val : (value ?? '');

const padded = (value: number): string => String(value).padStart(2, '0');
const localDate = (date: Date): string =>
  `${date.getFullYear()}-${padded(date.getMonth() + 1)}-${padded(date.getDate())}`;
const localTime = (date: Date): string =>
  `${localDate(date)}T${padded(date.getHours())}:${padded(date.getMinutes())}:${padded(date.getSeconds())}`;
