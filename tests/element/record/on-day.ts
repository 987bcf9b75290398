// Today as a test needs it: the planner reads the clock only through `new Date()`.
const RealDate = globalThis.Date;

/** Has it be this day, at noon on the calendar of whoever is looking, until the real day is asked for again. */
export function onDay(date: string): void {
  globalThis.Date = new Proxy(RealDate, {
    construct: (target, given: readonly unknown[], newTarget): object => {
      if (given.length === 0) return new RealDate(`${date}T12:00:00`);
      const made: unknown = Reflect.construct(target, given, newTarget);
      return made as Date;
    },
  });
}

/** Has it be the real day again. */
export function onRealDay(): void {
  globalThis.Date = RealDate;
}
