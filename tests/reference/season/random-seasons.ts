import fc from 'fast-check';
import type { SeasonRequest, WishedPhase } from '../../../src/plan/season/wishes.js';
import { byHandReasons } from '../../../src/plan/season/wishes.js';
import type { Method } from '../../../src/training/method/document.js';
import { categoryIds, eventIds } from '../../../src/training/method/ids.js';
import { seasonPhaseIds, upkeepIds } from '../../../src/training/method/season-rules.js';
import { civilDay, civilText } from './civil-days.js';

/** Plain objects, as JSON.parse makes them. */
const plain = { noNullPrototype: true } as const;
const part = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most * 100 }).map((per) => per / 100);
const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

/** When a season is, and in which of the allowed ways that is said. */
interface When {
  readonly first: number;
  readonly last: number;
  readonly weeks: number;
  readonly said: 'both' | 'date and weeks' | 'start and weeks' | 'all' | 'date' | 'start';
}

const whens: fc.Arbitrary<When> = fc
  .record({
    monday: fc.integer({ min: -1200, max: 6700 }).map((week) => civilDay('1970-01-05') + 7 * week),
    weeks: fc.oneof(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 7, max: 60 })),
    ...{ early: fc.nat(6), late: fc.nat(6) },
    said: fc.constantFrom('both', 'date and weeks', 'start and weeks', 'all', 'date', 'start'),
  })
  .map(({ monday, weeks, early, late, said }) => {
    return { first: monday + early, last: monday + 7 * (weeks - 1) + late, weeks, said } as const;
  });

function datesOf({ first, last, weeks, said }: When): Pick<SeasonRequest, 'start' | 'date' | 'weeks'> {
  const [start, date] = [civilText(first), civilText(last)];
  if (said === 'both') return { start, date };
  if (said === 'date and weeks') return { date, weeks };
  if (said === 'start and weeks') return { start, weeks };
  if (said === 'all') return { start, date, weeks };
  return said === 'date' ? { date } : { start };
}

const phases: fc.Arbitrary<WishedPhase[]> = fc.array(
  fc.record(
    { phase: fc.constantFrom(...seasonPhaseIds), weeks: fc.option(fc.integer({ min: 0, max: 20 }), { nil: null }) },
    plain,
  ),
  { minLength: 1, maxLength: 5 },
);
const lengths = fc.array(
  fc.integer({ min: 2, max: 40 }).map((steps) => steps * 5),
  { maxLength: 5 },
);
const sessions = fc
  .subarray([...categoryIds], { maxLength: 2 })
  .chain((ids) => fc.record(Object.fromEntries(ids.map((id) => [id, lengths])), plain));

function byHand({ first, last }: When, most: number): fc.Arbitrary<NonNullable<SeasonRequest['byHand']>> {
  const weekOf = (day: number): number => Math.floor((day + 3) / 7);
  const quarter = fc.integer({ min: 0, max: most * 4 }).map((quarters) => quarters / 4);
  const week = fc.record(
    {
      start: fc.integer({ min: first - 10, max: last + 30 }).map(civilText),
      hours: fc.oneof(fc.constant(0), quarter, fc.constant(null)),
      reason: fc.constantFrom(...byHandReasons),
      sessions,
    },
    plain,
  );
  return fc.uniqueArray(week, { maxLength: 6, selector: ({ start }) => weekOf(civilDay(start)) });
}

const otherEvents = ({ first, last }: When): fc.Arbitrary<NonNullable<SeasonRequest['events']>> =>
  fc.array(
    fc.record(
      { date: fc.integer({ min: first - 20, max: last + 60 }).map(civilText), event: fc.constantFrom(...eventIds) },
      plain,
    ),
    { maxLength: 3 },
  );

/** What people may want of a season within a method's range of hours; in the order of the schema. */
export function anySeasons({ inputs }: Pick<Method, 'inputs'>): fc.Arbitrary<SeasonRequest> {
  const { least, most } = inputs.weekly_hours;
  const hoursFrom = (low: number): fc.Arbitrary<number> =>
    fc.oneof(
      fc.integer({ min: Math.ceil(low * 4), max: Math.floor(most * 4) }).map((quarters) => quarters / 4),
      fc.double({ min: low, max: most, noNaN: true }),
    );
  const hours = hoursFrom(least).chain((start) =>
    fc.record({ hours: fc.constant(start), mostHours: fc.oneof(hoursFrom(start), hoursFrom(least)) }, plain),
  );
  const mostAlone = fc.record({ mostHours: hoursFrom(least) }, plain);
  return whens.chain((when) =>
    fc
      .record({
        hours: fc.oneof(hours, mostAlone, fc.constant({})),
        rise: maybe(part(1)),
        easierEvery: maybe(fc.nat(8)),
        easierDrop: maybe(part(0.95)),
        taperWeeks: maybe(fc.nat(3)),
        taperDrop: maybe(part(0.95)),
        upkeepFrom: maybe(fc.constantFrom(...upkeepIds)),
        upkeepSessions: maybe(fc.integer({ min: 1, max: 3 })),
        recoveryWeeks: maybe(fc.nat(8)),
        phases: maybe(phases),
        events: maybe(otherEvents(when)),
        byHand: maybe(byHand(when, most)),
        weeksOff: maybe(fc.oneof(fc.constant(0), fc.nat(12))),
        longestRun: maybe(fc.option(fc.integer({ min: 0, max: 240 }), { nil: null })),
      })
      .map(({ hours: given, ...others }) => {
        const said = Object.entries(others).filter(([, wish]) => wish !== undefined);
        return { ...datesOf(when), ...given, ...Object.fromEntries(said) };
      }),
  );
}
