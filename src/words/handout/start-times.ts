/** When sessions begin, as hours and minutes: `18:00`. */
export interface DayTimes {
  /** The only session of a day, and the last but the first of several. */
  readonly usual: string;
  /** The first of several. */
  readonly early: string;
}

/**
 * When each session of a day begins, in the order of the day: the only one at the usual time; of several the first early,
 * the second at the usual time or when the first ends, and every other when the one before it
 * ends.
 *
 * @example startTimes([{ minutes: 45 }, { minutes: 30 }], { usual: '18:00', early: '07:00' }) // ['07:00', '18:00']
 */
export function startTimes(sessions: readonly { readonly minutes: number }[], times: DayTimes): readonly string[] {
  if (sessions.length < 2) return sessions.map(() => times.usual);
  const [first, ...others] = sessions;
  // A long first one may go on beyond the usual time.
  let next = Math.max(minuteOf(times.usual), minuteOf(times.early) + (first?.minutes ?? 0));
  const later = others.map(({ minutes }) => {
    const start = next;
    next += minutes;
    return clock(start);
  });
  return [times.early, ...later];
}

const minutesInADay = 1440;

function minuteOf(time: string): number {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  return hour * 60 + minute;
}

/** Beyond midnight nothing begins: the day is full before. */
function clock(minute: number): string {
  const within = Math.min(minute, minutesInADay - 1);
  const padded = (value: number): string => String(value).padStart(2, '0');
  return `${padded(Math.floor(within / 60))}:${padded(within % 60)}`;
}
