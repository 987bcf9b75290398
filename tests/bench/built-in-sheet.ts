import type { PlanInputs } from '../../src/plan/document.js';
import { createColumn, createSheet } from '../../src/sheet/sheet.js';
import { builtInFormulas } from '../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { roundWeek, week, type Week } from './hand-written.js';
import type { Race } from './measure.js';
import { peersOf } from './peers.js';
import { hoursAt, sliderEvents } from './slider.js';

const model = expandMethod(builtInMethod);
const person: Omit<PlanInputs, 'hours'> = {
  phase: 'build',
  level: 'developing',
  event: 'half-marathon',
  strengthCap: 120,
};
const weekAt = (event: number): Week => week({ hours: hoursAt(event), ...person });

/** The numbers of a week in the order of the sheet. */
function numbersOf({ split, shares, weeklyMinutes, minutes, due, ...running }: Week): number[] {
  return [
    ...['off_season', 'taper', 'recovery'].map((id) => Number(split === id)),
    ...categoryIds.map((id) => shares[id]),
    weeklyMinutes,
    ...categoryIds.map((id) => minutes[id]),
    ...[running.plannedMinutes, running.runningMinutes, running.runningShare],
    ...Object.values(due).map(Number),
  ];
}

/** One step of the hours: the formulas and rules of the built-in method, without rounding, which is no formula. */
export function formulasRace(): Race {
  const watched = model.formulas.map(({ id }) => id);
  const peers = peersOf({
    model: { ...model, blocks: [] },
    book: builtInFormulas,
    input: 'weekly_hours',
    values: (event) => [hoursAt(event)],
    watched,
  });
  return {
    title: `The built-in method, ${watched.length} formulas and ${model.rules.length} rules: one step of the hours`,
    runners: [
      {
        name: 'by hand',
        run: (event) => weekAt(event).minutes.slow,
        result: (event) => numbersOf(weekAt(event)),
      },
      ...peers,
    ],
    events: sliderEvents,
  };
}

/** The same with rounding; both sides share out the minutes by the same function. */
export function roundedRace(): Race {
  const column = createColumn(createSheet(model, builtInFormulas));
  const watched = categoryIds.map((id) => `${id}_rounded`);
  const run = (event: number): number => {
    column.set({ weekly_hours: hoursAt(event) });
    return column.value('slow_rounded');
  };
  return {
    title: 'The same, with minutes rounded to whole steps by the same function',
    runners: [
      {
        name: 'by hand',
        run: (event) => roundWeek(weekAt(event).minutes).slow,
        result: (event) => Object.values(roundWeek(weekAt(event).minutes)),
      },
      {
        name: "weekwright's engine",
        run,
        result: (event) => {
          run(event);
          return watched.map((id) => column.value(id));
        },
      },
    ],
    events: sliderEvents,
  };
}
