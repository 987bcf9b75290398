/**
 * Seconds as a clock shows them.
 *
 * @example clockTime(2700) // '45:00'
 * @example clockTime(12420) // '3:27:00'
 */
export function clockTime(seconds: number): string {
  const whole = Math.round(seconds);
  const padded = (value: number): string => String(value).padStart(2, '0');
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return hours > 0 ? `${hours}:${padded(minutes)}:${padded(rest)}` : `${minutes}:${padded(rest)}`;
}

const clock = /^(?:(\d{1,2}):)?(\d{1,3}):([0-5]\d)$/;

/**
 * The seconds of a time as people type it: minutes and seconds, or hours, minutes and seconds.
 *
 * @returns seconds, or null where the text is no such time.
 * @example readClock('45:00') // 2700
 * @example readClock('1:39:17') // 5957
 */
export function readClock(text: string): number | null {
  const [, hours, minutes, seconds] = clock.exec(text.trim().replaceAll('.', ':')) ?? [];
  if (minutes === undefined || seconds === undefined) return null;
  if (hours !== undefined && (minutes.length > 2 || Number(minutes) > 59)) return null;
  return Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds);
}
