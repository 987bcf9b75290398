import type { CategoryId } from '../../training/method/ids.js';
import type { PlanWeek } from './document.js';
import type { PlacedSession, WeekWishes } from './wishes.js';

/** A session of a week, where it lies and whether it may move. */
export interface Card extends PlacedSession {
  readonly state: 'open' | 'pinned' | 'done';
}

/** A kind is on a day once at most: so the two tell a card from all others. */
export interface CardPlace {
  readonly category: CategoryId;
  readonly day: number;
}

/** The sessions of a week, day by day; none where there is no week. */
export function cardsOf({ days, wishes }: Pick<PlanWeek, 'days' | 'wishes'>): Card[] {
  return (days ?? []).flatMap((sessions, day) =>
    sessions.map(({ category, minutes }) => ({ category, minutes, day, state: stateOf(wishes, { category, day }) })),
  );
}

/** The session of a kind on a day. */
export function cardAt(week: Pick<PlanWeek, 'days' | 'wishes'>, place: CardPlace): Card | undefined {
  return cardsOf(week).find((card) => isAt(place)(card));
}

/** True for what lies at a place. */
export const isAt =
  ({ category, day }: CardPlace) =>
  (other: CardPlace): boolean =>
    other.category === category && other.day === day;

function stateOf({ pinned, done }: WeekWishes, place: CardPlace): Card['state'] {
  if (done.some(isAt(place))) return 'done';
  return pinned.some(isAt(place)) ? 'pinned' : 'open';
}
