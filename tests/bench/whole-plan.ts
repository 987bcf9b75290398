import { PlanDerivations } from '../../src/plan/derivations.js';
import type { Plan, PlanInputs } from '../../src/plan/document.js';
import { Planner } from '../../src/plan/planner.js';
import { Deriver } from '../../src/sheet/derive.js';
import { createColumn, createSheet } from '../../src/sheet/sheet.js';
import { builtInFormulas } from '../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { handWrittenOptions, handWrittenPlan } from './hand-written-plan.js';
import { roundWeek, week } from './hand-written.js';
import type { Race, Runner } from './measure.js';
import { hoursAt, sliderEvents } from './slider.js';

const sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);
const inputsAt = (event: number): PlanInputs => ({
  hours: hoursAt(event),
  phase: 'build',
  level: 'developing',
  event: 'half-marathon',
  strengthCap: 120,
});

function byHand(): Runner {
  const result = (event: number): Omit<Plan, 'derivations'> => handWrittenPlan(inputsAt(event));
  return { name: 'by hand, without derivations', run: (event) => result(event).rounded.slow, result };
}

function ours(): Runner {
  const planner = new Planner({ method: builtInMethod, sheet });
  const plan = (event: number): Plan => {
    const outcome = planner.plan(inputsAt(event));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };
  return {
    name: 'weekwright, with all derivations',
    run: (event) => plan(event).rounded.slow,
    result: (event) => {
      const { derivations: _, ...rest } = plan(event);
      return rest;
    },
  };
}

/** What both have in common, by the same function. */
function options(): Runner {
  const run = (event: number): number => {
    const { minutes } = week(inputsAt(event));
    return handWrittenOptions(minutes, roundWeek(minutes)).slow.length;
  };
  return { name: '  of both: the session options', run };
}

/** What only we have. */
function derivations(): Runner {
  const column = createColumn(sheet);
  const made = new PlanDerivations(builtInMethod, new Deriver(sheet, column));
  const run = (event: number): number => {
    column.set({ weekly_hours: hoursAt(event) });
    return made.all('in_season')['slow_minutes']?.value ?? NaN;
  };
  return { name: '  of ours: the sheet and derivations', run };
}

/** One step of the hours, and everything that the screens and files show. */
export function planRace(): Race {
  return {
    title: 'The whole plan: one step of the hours',
    runners: [byHand(), ours(), options(), derivations()],
    events: sliderEvents,
  };
}
