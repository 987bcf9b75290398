import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { duplicate } from '../../training/method/duplicates.js';
import { dayOf, mondayOf } from '../../training/season/iso-date.js';
import { faultyDate } from '../faulty-date.js';
import type { SeasonGround } from './season-ground.js';
import type { SeasonShape } from './season-shape.js';

/** Faults of a season that no single field shows: hours out of the method's range, days that are none, weeks set twice. */
export function checkSeason(
  { hours, mostHours, events = [], byHand = [] }: SeasonShape,
  ground: SeasonGround,
): Problem[] {
  const { least, most } = ground.method.inputs.weekly_hours;
  return [
    ...outside('hours', hours, { least, most }),
    ...outside('mostHours', mostHours, { least, most }),
    ...events.flatMap(({ date }, index) => faultyDate(`events[${index}].date`, date)),
    ...byHand.flatMap((week, index) => [
      ...faultyDate(`byHand[${index}].start`, week.start),
      // A week off has 0 hours.
      ...outside(`byHand[${index}].hours`, week.hours, { least: 0, most }),
    ]),
    ...weeksTwice(byHand),
  ];
}

function outside(
  path: string,
  value: number | null | undefined,
  allowed: Pick<Method['inputs']['weekly_hours'], 'least' | 'most'>,
): Problem[] {
  const isGiven = value !== null && value !== undefined;
  return isGiven && (value < allowed.least || value > allowed.most)
    ? [{ path, value, code: 'out-of-range', allowed }]
    : [];
}

/** Two days of one week would set it twice. */
function weeksTwice(byHand: NonNullable<SeasonShape['byHand']>): Problem[] {
  const mondays = byHand.map(({ start }) => mondayOf(dayOf(start) ?? NaN));
  return byHand.flatMap(({ start }, index) =>
    mondays.indexOf(mondays[index] ?? NaN) < index && !Number.isNaN(mondays[index])
      ? [duplicate(`byHand[${index}].start`, start)]
      : [],
  );
}
