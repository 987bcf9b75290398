import { builtInPlanner } from '../../src/plan/built-in-planner.js';
import type { Plan, PlanRequest } from '../../src/plan/document.js';
import { FullPlanner } from '../../src/plan/full-planner.js';
import type { Race, Runner } from './measure.js';
import { hoursAt, sliderEvents } from './slider.js';

const runner = { race: { metres: 10_000, seconds: 2700 }, age: 40, restingHeart: 55, weight: 70 };
const gear = { equipment: ['band', 'dumbbells', 'barbell'] } as const;

/** What differs is what the parts add: the rest of the plan has to be the same. */
function runnerOf(name: string, parts: Pick<PlanRequest, 'running' | 'strength' | 'checks'>): Runner {
  const planner = builtInPlanner(FullPlanner);
  const plan = (event: number): Plan => {
    const outcome = planner.plan({ hours: hoursAt(event), phase: 'build', level: 'trained', ...parts });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };
  return {
    name,
    run: (event) => {
      const { rounded, running, strength, checks } = plan(event);
      return rounded.slow + (running?.sessions.length ?? 0) + (strength?.sessions.length ?? 0) + checks.length;
    },
    result: (event) => plan(event).rounded,
  };
}

/** One step of the hours: what it costs that minutes become concrete, and that the plan is checked. */
export function concreteRace(): Race {
  return {
    title: 'Made concrete: one step of the hours',
    runners: [
      runnerOf('the plan alone', {}),
      runnerOf('with paces and runs', { running: runner }),
      runnerOf('with strength by sets', { strength: gear }),
      runnerOf('with checks', { checks: { hoursBefore: 4, longestRun: 60 } }),
    ],
    events: sliderEvents,
  };
}
