import { byCategory, type ByCategory } from '../method/ids.js';
import type { MatchedWeek } from './match-sessions.js';

/** Minutes and sessions of a kind in a week. */
export interface KindTally {
  /** Minutes of all planned sessions. */
  readonly planned: number;
  /** Minutes of all sessions that were done, extra ones included. */
  readonly done: number;
  /** Minutes of planned sessions that are still open. */
  readonly left: number;
  readonly sessions: { readonly planned: number; readonly done: number; readonly left: number };
}

/** Planned against done, by kind. */
export function tallyWeek({ planned, extra }: MatchedWeek): ByCategory<KindTally> {
  return byCategory((id) => {
    const sessions = planned.filter(({ category }) => category === id);
    const open = sessions.filter(({ done }) => done === null);
    const done = [...sessions.flatMap((each) => each.done ?? []), ...extra.filter(({ category }) => category === id)];
    return {
      planned: minutesOf(sessions),
      done: minutesOf(done),
      left: minutesOf(open),
      sessions: { planned: sessions.length, done: done.length, left: open.length },
    };
  });
}

const minutesOf = (sessions: readonly { readonly minutes: number }[]): number =>
  sessions.reduce((sum, { minutes }) => sum + minutes, 0);
