import type { CategoryId } from '../training/method/ids.js';
import type { Plan } from './document.js';

/** A session of a plan. */
export interface PlannedSession {
  readonly category: CategoryId;
  readonly minutes: number;
  /** 0 for Monday to 6 for Sunday; null while sessions are not laid on days. */
  readonly day: number | null;
}

/** The sessions of some kinds: in the order of the week where they are laid on days, else kind after kind. */
export function sessionsOf(
  { week, sessions }: Pick<Plan, 'week' | 'sessions'>,
  kinds: readonly CategoryId[],
): readonly PlannedSession[] {
  if (!week?.days)
    return kinds.flatMap((category) => sessions[category].map((minutes) => ({ category, minutes, day: null })));
  return week.days.flatMap((placed, day) =>
    placed.filter(({ category }) => kinds.includes(category)).map((session) => ({ ...session, day })),
  );
}
