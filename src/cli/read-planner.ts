import { builtInPlanner, createPlanner, type Planner } from '../plan.js';
import type { Outcome } from '../problem.js';

/** A planner by the coach's method in a document's text, or by the built-in one where there is none. */
export async function readPlanner(document: string | null): Promise<Outcome<Planner>> {
  if (document === null) return { ok: true, value: builtInPlanner() };
  try {
    return await createPlanner(JSON.parse(document.replace(/^\uFEFF/, '')));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const problem = { path: '', value: null, code: 'not-json', allowed: { message: error.message } } as const;
    return { ok: false, problems: [problem] };
  }
}
