import type { Plan } from '../plan/document.js';

/** The rules that changed something in a week, in the method's order. */
export function actedRules({ rules }: Pick<Plan, 'rules'>): Plan['rules'] {
  return rules.filter(({ kind, acted }) => kind === 'change' && acted);
}

/** True where a week has something to be said beside its numbers. */
export function hasNotes(plan: Plan | null): boolean {
  return plan !== null && actedRules(plan).length + plan.notices.length > 0;
}
