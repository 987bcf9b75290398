import { handoutLimits } from '../plan/file/document.js';
import { scenarioLimits } from '../plan/scenarios/document.js';
import type { Problem } from '../problem.js';
import type { EventGround } from '../words/handout/calendar-events.js';
import type { DayTimes } from '../words/handout/start-times.js';
import type { OptionFaults } from './option-faults.js';
import type { ArgumentFault } from './read-arguments.js';
import type { Session } from './session.js';

/** When the first of several sessions of a day begins, where only the usual time is told. */
export const usualEarly = '07:00';

/** What the options of a command line tell of the events alone. */
export function eventsAsked({ options }: Pick<Session, 'options'>): Pick<EventGround, 'name' | 'contact' | 'times'> {
  const { name = '', contact = '' } = options;
  return { name: name.trim(), contact: contact.trim(), times: timesIn(options) };
}

/** What is wrong with them. */
export function eventFaults({ options }: Pick<Session, 'options'>): OptionFaults {
  const { name, contact, at, early } = options;
  const problems: readonly Problem[] = [
    ...tooLong('--name', name, scenarioLimits.name),
    ...tooLong('--contact', contact, handoutLimits.contact),
    ...(at === undefined && early !== undefined ? [noUsualTime] : []),
    ...noTime('--at', at),
    ...noTime('--early', early),
  ];
  const times = timesIn(options);
  return { problems, faults: problems.length === 0 && times ? wrongOrder(times) : [] };
}

const noUsualTime: Problem = { path: '--at', value: null, code: 'missing', allowed: {} };

const timesIn = ({ at, early = usualEarly }: Session['options']): DayTimes | null =>
  at === undefined ? null : { usual: at, early };

const tooLong = (path: string, text: string | undefined, most: number): Problem[] =>
  text !== undefined && Array.from(text.trim()).length > most
    ? [{ path, value: Array.from(text.trim()).length, code: 'too-long', allowed: { most } }]
    : [];

const noTime = (path: string, value: string | undefined): Problem[] =>
  value === undefined || /^([01]\d|2[0-3]):[0-5]\d$/.test(value)
    ? []
    : [{ path, value, code: 'wrong-type', allowed: { expected: 'time-of-day' } }];

/** The second of a day may not begin before its first. */
const wrongOrder = ({ usual: at, early }: DayTimes): ArgumentFault[] =>
  early < at ? [] : [{ key: 'fault.early', values: { early, at } }];
