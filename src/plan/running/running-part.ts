import type { PlanPart } from '../plan-part.js';
import { makeRunning } from './make-running.js';
import { readRunning } from './read-running.js';

/** Makes the running of a plan concrete, where a request tells of the runner. */
export const runningPart: PlanPart = {
  name: 'running',
  read: (given, method) => {
    const read = readRunning(given);
    if (!read.ok) return read;
    return { ok: true, value: (plan) => ({ ...plan, running: makeRunning(plan, read.value, method) }) };
  },
};
