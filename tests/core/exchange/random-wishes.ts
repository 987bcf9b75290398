import fc from 'fast-check';
import type { PlacedSession, WeekRequest } from '../../../src/plan/week/wishes.js';
import type { Method } from '../../../src/training/method/document.js';
import { categoryIds } from '../../../src/training/method/ids.js';

const day = fc.nat(6);
const perDay = { minLength: 7, maxLength: 7 } as const;
/** Plain objects, as JSON.parse makes them. */
const plain = { noNullPrototype: true } as const;

/** What people may want of their days, every field filled in but those that a method may fill in. */
export function anyWeeks({ rounding: { step } }: Pick<Method, 'rounding'>): fc.Arbitrary<WeekRequest> {
  const minutes = fc.integer({ min: 1, max: Math.floor(1440 / step) }).map((steps) => steps * step);
  const lengths = fc.array(minutes, { maxLength: 7 });
  const category = fc.constantFrom(...categoryIds);
  const placed = fc.uniqueArray(fc.record({ category, minutes, day }, plain), {
    maxLength: 8,
    selector: (session: PlacedSession) => `${session.category} ${session.day}`,
  });
  return (
    fc
      .record({
        days: fc.array(fc.integer({ min: 0, max: 1440 }), perDay),
        free: fc.uniqueArray(day),
        longRun: fc.option(day, { nil: null }),
        restDays: fc.option(fc.nat(7), { nil: null }),
        sessionsADay: fc.option(fc.integer({ min: 1, max: 5 }), { nil: null }),
        placed,
        donePart: fc.nat(8),
        passed: fc.nat(7),
        sessions: fc
          .subarray([...categoryIds])
          .chain((ids) => fc.record(Object.fromEntries(ids.map((id) => [id, lengths])), plain)),
        before: fc.option(fc.array(fc.array(fc.record({ category, minutes }, plain), { maxLength: 5 }), perDay), {
          nil: null,
        }),
      })
      // In the order of the schema, or the text of a sheet read back would be another.
      .map(({ days, free, longRun, restDays, sessionsADay, placed: all, donePart, passed, sessions, before }) => ({
        ...{ days, free, longRun },
        ...(restDays === null ? {} : { restDays }),
        ...(sessionsADay === null ? {} : { sessionsADay }),
        ...{ pinned: all.slice(donePart), done: all.slice(0, donePart), passed, sessions, before },
      }))
  );
}
