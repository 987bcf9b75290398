import type { PlanInputs } from '../plan.js';

/** Columns of a CSV roster, and the field of a request that each stands for. */
export const columnFields = {
  hours: 'hours',
  phase: 'phase',
  level: 'level',
  event: 'event',
  strength_cap: 'strengthCap',
} as const satisfies Readonly<Record<string, keyof PlanInputs>>;

/** Who it is, and the inputs of the week: these come back in the table of plans. */
export const inputColumns: readonly string[] = ['name', ...Object.keys(columnFields)];

export const rosterColumns: readonly string[] = [...inputColumns, 'days'];

/** Fields of a line of an NDJSON roster: those of a request, a name, and `days` for a week of which no more is said. */
export const rosterFields: readonly string[] = ['name', ...Object.values(columnFields), 'sessions', 'days', 'week'];
