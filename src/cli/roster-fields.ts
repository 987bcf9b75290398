import type { PlanInputs } from '../plan.js';

/** Columns of a CSV roster, and the field of a request that each stands for. */
export const columnFields = {
  hours: 'hours',
  phase: 'phase',
  level: 'level',
  event: 'event',
  strength_cap: 'strengthCap',
} as const satisfies Readonly<Record<string, keyof PlanInputs>>;

export const rosterColumns: readonly string[] = ['name', ...Object.keys(columnFields)];

/** Fields of a line of an NDJSON roster: those of a request, and a name. */
export const rosterFields: readonly string[] = ['name', ...Object.values(columnFields), 'sessions'];
