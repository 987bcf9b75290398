import { calendarText } from '../exchange/calendar/calendar-text.js';
import { seasonEvents, weekEvents, type EventText } from '../words/handout/calendar-events.js';
import type { Words } from '../words/words.js';
import { eventFaults, eventsAsked } from './calendar-options.js';
import { handOver, type Handed } from './hand-over.js';
import type { Session } from './session.js';

/** `weekwright calendar`: the sessions of a week or a season as a calendar file. */
export function calendarCommand(session: Session): Promise<number> {
  const { io, speech } = session;
  const { words } = speech;
  const asked = eventsAsked(session);
  return handOver(session, {
    own: eventFaults(session),
    write: (handed) => {
      const events = eventsOf(words, handed, asked);
      // A calendar without events is none (RFC 5545, 3.6).
      if (events.length === 0) return null;
      const name = asked.name === '' ? words.say('handout.name') : asked.name;
      const text = calendarText({ name, language: words.language, stamp: io.now(), events });
      return { text, weeks: mondaysOf(handed).map(handed.weeks) };
    },
  });
}

function eventsOf(
  words: Words,
  { method, plan, told, weeks, monday }: Handed,
  asked: ReturnType<typeof eventsAsked>,
): readonly EventText[] {
  const ground = { method, told, ...asked };
  if (monday !== null) return weekEvents(words, ground, weeks(monday));
  return plan.season ? seasonEvents(words, ground, { season: plan.season, weeks }) : [];
}

const mondaysOf = ({ plan, monday }: Handed): readonly string[] =>
  monday === null ? (plan.season?.weeks.map(({ start }) => start) ?? []) : [monday];
