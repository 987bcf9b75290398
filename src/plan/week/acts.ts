import type { CategoryId } from '../../training/method/ids.js';
import type { Change } from '../../training/week/wish.js';
import { cardsOf, isAt, type Card, type CardPlace } from './cards.js';
import type { PlanWeek } from './document.js';
import type { PlacedSession, WeekWishes } from './wishes.js';

/*
 * What people do to a week: each function gives other wishes and leaves those it got. Where sessions are moved by hand the
 * week on show is kept in mind, so that as little as possible else moves.
 */

type Week = Pick<PlanWeek, 'days' | 'sessions' | 'wishes'>;

/** Gives a day other minutes. */
export function setDayMinutes(wishes: WeekWishes, day: number, minutes: number): WeekWishes {
  return { ...wishes, days: wishes.days.map((each, at) => (at === day ? minutes : each)) };
}

/** Keeps a day free, or uses it again. */
export function toggleFree(wishes: WeekWishes, day: number): WeekWishes {
  const free = wishes.free.includes(day) ? wishes.free.filter((each) => each !== day) : [...wishes.free, day];
  return { ...wishes, free: free.sort((one, other) => one - other) };
}

/** A day fell out: it stays free, and the rest is laid again. */
export function dayFellOut({ wishes, days }: Week, day: number): WeekWishes {
  const others = wishes.pinned.filter((each) => each.day !== day);
  return { ...(wishes.free.includes(day) ? wishes : toggleFree(wishes, day)), pinned: others, before: days };
}

/** True where a session can be put on a day: what is done stays, and days that are over take nothing. */
export function canMove({ wishes }: Pick<Week, 'wishes'>, { category, day: from }: CardPlace, day: number): boolean {
  const isDone = (at: number): boolean => wishes.done.some(isAt({ category, day: at }));
  return !isDone(from) && !isDone(day) && day >= wishes.passed;
}

/** Puts a session on another day, where it stays. One of the same kind that lies there makes way. See `canMove`. */
export function moveCard({ wishes, days }: Week, card: PlacedSession, day: number): WeekWishes {
  const { category, minutes } = card;
  const pinned = wishes.pinned.filter((each) => !isAt(card)(each) && !isAt({ category, day })(each));
  return { ...wishes, pinned: [...pinned, { category, minutes, day }], before: days };
}

/** Lets a session move again. */
export function releaseCard({ wishes, days }: Week, place: CardPlace): WeekWishes {
  return { ...wishes, pinned: wishes.pinned.filter((each) => !isAt(place)(each)), before: days };
}

/** Marks a session as done, or takes the mark away. */
export function toggleDone({ wishes, days }: Week, { category, minutes, day }: PlacedSession): WeekWishes {
  const place = { category, day };
  const isDone = wishes.done.some(isAt(place));
  const done = wishes.done.filter((each) => !isAt(place)(each));
  return {
    ...wishes,
    pinned: wishes.pinned.filter((each) => !isAt(place)(each)),
    done: isDone ? done : [...done, { category, minutes, day }],
    before: days,
  };
}

/** A session was missed: everything else up to its day is done, and what is left is laid on the days after it. */
export function missCard(week: Week, missed: CardPlace): WeekWishes {
  const { wishes, days } = week;
  const isOver = ({ day }: CardPlace): boolean => day <= missed.day;
  const over = cardsOf(week).filter((card) => isOver(card) && !isAt(missed)(card));
  return {
    ...wishes,
    pinned: wishes.pinned.filter((each) => !isOver(each)),
    done: [...wishes.done.filter((each) => ![missed, ...over].some(isAt(each))), ...over.map(asPlaced)],
    passed: Math.max(wishes.passed, missed.day + 1),
    before: days,
  };
}

const asPlaced = ({ category, minutes, day }: Card): PlacedSession => ({ category, minutes, day });

/** Settles the lengths of a kind; null leaves them to the week again. */
export function settleSessions(
  { wishes, days }: Week,
  category: CategoryId,
  sessions: readonly number[] | null,
): WeekWishes {
  const { [category]: _, ...others } = wishes.sessions;
  if (!sessions) return { ...wishes, sessions: others, before: days };
  const settled = [...sessions].sort((one, other) => one - other);
  return {
    ...wishes,
    sessions: { ...others, [category]: settled },
    pinned: pinsThatFit(wishes, category, settled),
    before: days,
  };
}

/** Pins of a kind whose length is among its sessions, each session once. */
function pinsThatFit({ pinned, done }: WeekWishes, category: CategoryId, sessions: readonly number[]): PlacedSession[] {
  const left = [...sessions];
  const take = ({ minutes }: PlacedSession): boolean => {
    const index = left.indexOf(minutes);
    if (index >= 0) left.splice(index, 1);
    return index >= 0;
  };
  for (const each of done) if (each.category === category) take(each);
  return pinned.filter((each) => each.category !== category || take(each));
}

/** Gives a session another length; it stays on its day. */
export function resizeCard(week: Week, card: PlacedSession, minutes: number): WeekWishes {
  const resized = settleSessions(week, card.category, replaced(week, card, [minutes]));
  return moveCard({ ...week, wishes: resized }, { ...card, minutes }, card.day);
}

/** Cuts a session in two, as equal as whole steps allow. */
export function splitCard(week: Week, card: PlacedSession, step: number): WeekWishes {
  const half = Math.floor(card.minutes / step / 2) * step;
  return settleSessions(week, card.category, replaced(week, card, [half, card.minutes - half]));
}

/** Makes one of two sessions of a kind; it stays on the day of the first. */
export function mergeCards(week: Week, card: PlacedSession, other: PlacedSession): WeekWishes {
  const minutes = card.minutes + other.minutes;
  const rest = without(replaced(week, card, [minutes]), other.minutes);
  const merged = settleSessions(week, card.category, rest);
  return moveCard({ ...week, wishes: merged }, { ...card, minutes }, card.day);
}

/** Takes a session away. */
export function removeCard(week: Week, card: PlacedSession): WeekWishes {
  return settleSessions(releaseFirst(week, card), card.category, replaced(week, card, []));
}

const releaseFirst = (week: Week, card: CardPlace): Week => ({ ...week, wishes: releaseCard(week, card) });

/** Adds a session of a kind, on whichever day fits best. */
export function addSession(week: Week, category: CategoryId, minutes: number): WeekWishes {
  return settleSessions(week, category, [...week.sessions[category], minutes]);
}

/** The lengths of a kind with others in place of one. */
function replaced({ sessions }: Week, { category, minutes }: PlacedSession, by: readonly number[]): number[] {
  return [...without(sessions[category], minutes), ...by];
}

function without(lengths: readonly number[], minutes: number): number[] {
  const index = lengths.indexOf(minutes);
  return lengths.filter((_, at) => at !== index);
}

/** Makes a change that helps where nothing fits. */
export function makeChange(wishes: WeekWishes, { kind, day, category, amount, sessions }: Change): WeekWishes {
  switch (kind) {
    case 'more-minutes':
      return { ...wishes, days: wishes.days.map((minutes, at) => (at === day ? minutes + amount : minutes)) };
    case 'use-free-day':
      return { ...wishes, free: wishes.free.filter((each) => each !== day) };
    case 'any-long-run':
      return { ...wishes, longRun: null };
    case 'fewer-rest-days':
      return { ...wishes, restDays: amount };
    case 'more-sessions-a-day':
      return { ...wishes, sessionsADay: amount };
    case 'unpin':
      return { ...wishes, pinned: wishes.pinned.filter((each) => each.category !== category || each.day !== day) };
    case 'settle-sessions':
      return category ? { ...wishes, sessions: { ...wishes.sessions, [category]: sessions ?? [] } } : wishes;
  }
}
