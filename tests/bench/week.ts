import { lay } from '../../src/training/week/lay.js';
import type { WeekProblem } from '../../src/training/week/week-problem.js';
import { createWeekSolver } from '../reference/week/milp.js';
import { costOf } from '../reference/week/week-check.js';
import { full, justTooTight, plain, wished } from './weeks.js';

/** How long weeks took. */
export interface WeekFinish {
  readonly title: string;
  readonly weeks: number;
  /** Milliseconds of ours. */
  readonly median: number;
  readonly worst: number;
  /** Share of the weeks that took us less than 50 ms. */
  readonly underFifty: number;
  /** A general solver's time over ours: the median of all weeks, and of all weeks together; null where it did not run. */
  readonly peer: { readonly median: number; readonly total: number } | null;
}

interface Time {
  readonly fits: boolean;
  /** Milliseconds of the processor. */
  readonly ours: number;
  readonly peer: number | null;
}

/** Lays weeks with ours and some of them with a general solver for integer programmes: the costs must be the same. */
export async function* weekFinishes(): AsyncGenerator<WeekFinish> {
  const solver = await createWeekSolver();
  const weeks = plain(200);
  for (const problem of weeks) lay(problem);
  const times = weeks.map(race);
  yield finish('weeks of any runners', times);
  const fitting = weeks.filter((_, index) => times[index]?.fits);
  yield finish('  with just too little room', fitting.map(justTooTight).map(race));
  yield finish('weeks with any wishes', wished(1000).map(timeOf));
  const fullWeeks = full(200);
  yield finish('weeks of 14 sessions', fullWeeks.map(timeOf));
  yield finish('  with just too little room', fullWeeks.map(justTooTight).map(timeOf));

  function race(problem: WeekProblem): Time {
    const [laid, ours] = timed(() => lay(problem));
    const [solved, peer] = timed(() => solver.leastCost(problem));
    if ((laid && costOf(problem, laid)) !== (solved && solved.cost)) throw new Error('the solver finds another cost');
    return { fits: laid !== null, ours, peer };
  }
}

function timeOf(problem: WeekProblem): Time {
  const [laid, ours] = timed(() => lay(problem));
  return { fits: laid !== null, ours, peer: null };
}

/** What a function gives, and its milliseconds of the processor. */
function timed<T>(run: () => T): [result: T, milliseconds: number] {
  const start = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(start);
  return [result, Math.max(1, user + system) / 1000];
}

function finish(title: string, times: readonly Time[]): WeekFinish {
  const ours = times.map((time) => time.ours);
  const raced = times.flatMap(({ ours, peer }) => (peer === null ? [] : [{ ours, peer }]));
  const total = sum(raced.map(({ peer }) => peer)) / sum(raced.map(({ ours }) => ours));
  return {
    title,
    weeks: times.length,
    median: median(ours),
    worst: Math.max(...ours),
    underFifty: ours.filter((each) => each < 50).length / ours.length,
    peer: raced.length > 0 ? { median: median(raced.map(({ ours, peer }) => peer / ours)), total } : null,
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);
const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor((values.length - 1) / 2)] ?? NaN;
