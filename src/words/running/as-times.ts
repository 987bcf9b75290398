import type { DistanceUnit } from '../../plan/running/wishes.js';
import type { Problem } from '../../problem.js';
import { clockTime } from './clock-time.js';
import { metresIn } from './distances.js';

/** A problem with a time or a pace as people write them: seconds become "45:00", a pace is told in its unit. */
export function asTimes(problem: Problem, unit: DistanceUnit): Problem {
  const isPace = problem.path.endsWith('thresholdPace');
  if (!isPace && !problem.path.endsWith('seconds')) return problem;
  const times = isPace ? metresIn[unit] / 1000 : 1;
  const told = (value: unknown, round: (seconds: number) => number): unknown =>
    typeof value === 'number' ? clockTime(round(Math.round(value * times * 1e6) / 1e6)) : value;
  // What is told as allowed has to be.
  const inwards = (name: string): ((seconds: number) => number) => (name === 'least' ? Math.ceil : Math.floor);
  const allowed = Object.entries(problem.allowed).map(([name, value]) => [name, told(value, inwards(name))] as const);
  return { ...problem, value: told(problem.value, Math.round), allowed: Object.fromEntries(allowed) };
}
