import { sweep } from '../../src/sheet/explore/sweep.js';
import { createColumn, createSheet } from '../../src/sheet/sheet.js';
import { builtInFormulas } from '../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { categoryQuantity } from '../../src/training/method/names.js';
import { roundWeek, week } from './hand-written.js';
import type { Race, Runner } from './measure.js';

const points = 200;
const caps = [90, 95, 100, 105, 110, 115, 120];
const hours = Array.from({ length: points }, (_, index) => 0.5 + (index * 19.5) / (points - 1));
const cells = [
  ...categoryIds.flatMap((id) => (['share', 'minutes', 'rounded'] as const).map((what) => categoryQuantity(id, what))),
  ...['weekly_minutes', 'planned_minutes', 'running_minutes', 'running_share', 'total_rounded'],
];

/** One array for each of `cells`, in their order. */
function byHand(strengthCap: number): Float64Array[] {
  const series = cells.map(() => new Float64Array(points));
  hours.forEach((each, index) => {
    const inputs = { hours: each, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap } as const;
    const { shares, minutes, ...totals } = week(inputs);
    const rounded = roundWeek(minutes);
    let place = 0;
    const put = (value: number): void => {
      series[place]![index] = value;
      place += 1;
    };
    for (const id of categoryIds) {
      put(shares[id]);
      put(minutes[id]);
      put(rounded[id]);
    }
    put(totals.weeklyMinutes);
    put(totals.plannedMinutes);
    put(totals.runningMinutes);
    put(totals.runningShare);
    put(rounded.slow + rounded.tempo + rounded.intervals + rounded.cross + rounded.strength);
  });
  return series;
}

function ours(): (strengthCap: number) => Float64Array[] {
  const column = createColumn(createSheet(expandMethod(builtInMethod), builtInFormulas));
  return (strengthCap) => {
    column.set({ strength_cap: strengthCap });
    return [...sweep(column, { input: 'weekly_hours', values: hours, cells }).series.values()];
  };
}

function runnerOf(name: string, seriesFor: (strengthCap: number) => Float64Array[]): Runner {
  const result = (event: number): Float64Array[] => seriesFor(caps[event % caps.length] ?? NaN);
  return { name, run: (event) => result(event)[0]?.at(-1) ?? NaN, result };
}

/** The curves of a chart: the whole sheet at 200 values of the hours, for one cap of strength after another. */
export function sweepRace(): Race {
  return {
    title: `The built-in method swept over ${points} values of the hours, ${cells.length} quantities recorded`,
    runners: [runnerOf('by hand', byHand), runnerOf("weekwright's engine", ours())],
    events: caps.length,
  };
}
