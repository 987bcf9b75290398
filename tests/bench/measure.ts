/** One way of doing the work of a race. */
export interface Runner {
  readonly name: string;
  /** Does the work of event number `event` and gives a number of the result, so that no compiler leaves the work out. */
  readonly run: (event: number) => number;
  /** Does the work and gives the whole result, on which all runners of a race must agree; left out for a part of the work. */
  readonly result?: (event: number) => unknown;
}

/** The same work done in several ways; the first runner is what the others are measured against. */
export interface Race {
  readonly title: string;
  readonly runners: readonly [Runner, ...Runner[]];
  /** Events after which the work starts again from the first. */
  readonly events: number;
}

export interface Finish {
  readonly name: string;
  /** Time of an event, over that of the first runner in the same round: the median of all rounds. */
  readonly ratio: number;
  /** Half of the rounds are between these. */
  readonly quartiles: readonly [number, number];
  readonly microseconds: number;
}

interface Batch {
  readonly runner: Runner;
  readonly size: number;
  readonly times: number[];
  event: number;
}

/** Milliseconds of one runner in one round, and of its warming up. */
const patience = { batch: 8, warmUp: 150 };

/**
 * Lets the runners of a race take turns, a batch of events each, in rounds, and compares them round by round, so that
 * whatever else the machine does falls on all of them. Times are those of the processor, not of the clock on the wall.
 */
export function race({ runners, events }: Race, rounds: number): Finish[] {
  const batches = runners.map((runner): Batch => ({ runner, size: batchSize(runner, events), times: [], event: 0 }));
  for (let round = 0; round < rounds; round += 1)
    for (const batch of rotated(batches, round)) batch.times.push(timeOf(batch, events));
  const [first] = batches;
  return batches.map(({ runner, times }) => {
    const ratios = times.map((time, round) => time / (first?.times[round] ?? time));
    return {
      name: runner.name,
      ratio: quantile(ratios, 0.5),
      quartiles: [quantile(ratios, 0.25), quantile(ratios, 0.75)],
      microseconds: quantile(times, 0.5),
    };
  });
}

/** How many events fill a batch; found while the runner warms up. */
function batchSize(runner: Runner, events: number): number {
  const batch: Batch = { runner, size: 1, times: [], event: 0 };
  let [count, spent] = [0, 0];
  while (spent < patience.warmUp * 1000) {
    const size = Math.max(1, count);
    spent += timeOf({ ...batch, size }, events) * size;
    count += size;
  }
  return Math.max(1, Math.round((count * patience.batch * 1000) / spent));
}

/** Microseconds of the processor for an event. */
function timeOf(batch: Batch, events: number): number {
  const { runner, size } = batch;
  const start = process.cpuUsage();
  let sum = 0;
  for (let done = 0; done < size; done += 1) sum += runner.run((batch.event + done) % events);
  const { user, system } = process.cpuUsage(start);
  if (Number.isNaN(sum)) throw new Error(`${runner.name} gives no number`);
  batch.event += size;
  return Math.max(1, user + system) / size;
}

function rotated<T>(list: readonly T[], by: number): T[] {
  const start = by % list.length;
  return [...list.slice(start), ...list.slice(0, start)];
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((left, right) => left - right);
  return sorted[Math.floor((sorted.length - 1) * share)] ?? NaN;
}
