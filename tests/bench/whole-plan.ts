import { builtInPlanner } from '../../src/plan.js';
import type { Plan, PlanInputs } from '../../src/plan/document.js';
import { handWrittenPlan, noOptions, optionsOf } from './hand-written-plan.js';
import type { Race } from './measure.js';
import { hoursAt, sliderEvents } from './slider.js';

const person: Omit<PlanInputs, 'hours'> = {
  phase: 'build',
  level: 'developing',
  event: 'half-marathon',
  strengthCap: 120,
};

/** One step of the hours, the whole plan with derivations, against the same plan without them by hand. */
export function planRace(): Race {
  const planner = builtInPlanner();
  const request = (event: number): PlanInputs => ({ hours: hoursAt(event), ...person });
  const plan = (event: number): Plan => {
    const outcome = planner.plan(request(event));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };
  return {
    title: 'The whole plan: one step of the hours',
    runners: [
      {
        name: 'written by hand, without derivations',
        run: (event) => handWrittenPlan(request(event), optionsOf).rounded.slow,
        result: (event) => handWrittenPlan(request(event), optionsOf),
      },
      {
        name: 'weekwright, with all derivations',
        run: (event) => plan(event).rounded.slow,
        result: (event) => {
          const { derivations: _, ...rest } = plan(event);
          return rest;
        },
      },
    ],
    events: sliderEvents,
  };
}
