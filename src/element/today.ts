/** Today on the calendar of whoever is looking: the only place where a clock is read. */
export function today(): string {
  const now = new Date();
  const padded = (value: number): string => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${padded(now.getMonth() + 1)}-${padded(now.getDate())}`;
}
