import type { Told } from '../../plan/handout/concrete-plan.js';
import type { PlannedWeek, WeekPlanner } from '../../plan/record/planned-week.js';
import type { PlanSeason } from '../../plan/season/document.js';
import type { Method } from '../../training/method/document.js';
import { categoryIds, type ByCategory } from '../../training/method/ids.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { dayCount } from '../../training/week/day-sets.js';
import { categoryTitle } from '../category-name.js';
import { headed } from '../joined.js';
import { eventName } from '../season/event-name.js';
import { weekTitle } from '../season/phase-text.js';
import type { Words } from '../words.js';
import { eventId } from './event-id.js';
import { plainText } from './plain-text.js';
import type { SessionText } from './session-text.js';
import { startTimes, type DayTimes } from './start-times.js';
import { weekText } from './week-text.js';

/** An event of a calendar, in words. */
export interface EventText {
  /** The same for the same session, whenever it is written. */
  readonly uid: string;
  readonly title: string;
  readonly notes: string;
  /** ISO date of its first day. */
  readonly date: string;
  /** Whole days; 1 where it has a time. */
  readonly days: number;
  /** When it begins on that day, and for how long; null for the whole day. */
  readonly time: { readonly start: string; readonly minutes: number } | null;
}

/** What events are made with. */
export interface EventGround {
  readonly method: Method;
  readonly told: Told;
  /** What the plan is called: plans of other names have events of their own. */
  readonly name: string;
  /** Null where sessions have the whole day. */
  readonly times: DayTimes | null;
  /** What every event ends with: whom to ask; empty for nothing. */
  readonly contact: string;
}

/** The sessions of a week as events; one event for the whole week where its sessions are for any day. */
export function weekEvents(words: Words, ground: EventGround, week: PlannedWeek): readonly EventText[] {
  const { days, sessions, lead } = weekText(words, ground.method, { week, told: ground.told });
  if (!days) return sessions.length === 0 ? [] : [wholeWeek(words, ground, { week, lead })];
  const counts = new Map<string, number>();
  return days.flatMap((day, index) => {
    const starts = ground.times && startTimes(day.sessions, ground.times);
    return day.sessions.map((session, place): EventText => {
      const count = (counts.get(session.category) ?? 0) + 1;
      counts.set(session.category, count);
      const start = starts?.[place];
      return {
        uid: eventId(ground.name, `${week.start}-${session.category}-${count}`),
        title: plainText(words.say('handout.event', { what: session.title, length: session.length })),
        notes: notesOf(words, ground, sessionLines(words, session)),
        date: isoDate(knownDay(week.start) + index),
        days: 1,
        time: start === undefined ? null : { start, minutes: session.minutes },
      };
    });
  });
}

/** Every week of a season as events, and the events that it leads to. */
export function seasonEvents(
  words: Words,
  ground: EventGround,
  { season, weeks }: { readonly season: PlanSeason; readonly weeks: WeekPlanner },
): readonly EventText[] {
  // A season may lead to a day without a race.
  const raced = season.weeks.flatMap((week) => week.events).filter(({ event }) => event !== 'none');
  return [
    ...season.weeks.flatMap(({ start }) => weekEvents(words, ground, weeks(start))),
    ...raced.map(({ date, event }): EventText => ({
      uid: eventId(ground.name, `${date}-event`),
      title: plainText(words.capital(eventName(words, event))),
      notes: notesOf(words, ground, []),
      date,
      days: 1,
      time: null,
    })),
  ];
}

const sessionLines = (words: Words, { effort, how, sets }: SessionText): readonly string[] => [
  ...(how === '' ? [] : [how]),
  words.say('handout.hard', { effort }),
  ...sets,
];

function notesOf(words: Words, { contact }: EventGround, lines: readonly string[]): string {
  return plainText([...lines, words.say('caution.short'), ...(contact === '' ? [] : [contact])].join('\n'));
}

/** What a week is made of, where its sessions are for any day. */
function wholeWeek(
  words: Words,
  ground: EventGround,
  { week, lead }: { readonly week: PlannedWeek; readonly lead: string },
): EventText {
  const { start, season, plan } = week;
  const kinds = categoryIds.filter((id) => plan.sessions[id].length > 0);
  const lines = kinds.map((id) =>
    headed(
      words,
      categoryTitle(words, ground.method, id),
      `${words.sessions(plan.sessions[id])} ${words.say('unit.minutes')}`,
    ),
  );
  return {
    uid: eventId(ground.name, `${start}-week`),
    title: plainText(
      words.say('handout.event', {
        what: season ? weekTitle(words, season) : words.say('handout.event.week'),
        length: words.hoursShort(minutesOf(plan.sessions) / 60),
      }),
    ),
    notes: notesOf(words, ground, [lead, ...lines]),
    date: start,
    days: dayCount,
    time: null,
  };
}

const minutesOf = (sessions: ByCategory<readonly number[]>): number =>
  categoryIds.reduce((sum, id) => sum + sessions[id].reduce((all, minutes) => all + minutes, 0), 0);
