import { checksPart } from './checks/checks-part.js';
import type { Outcome, Problem } from '../problem.js';
import type { Plan } from './document.js';
import type { PlanCompletion, PlanPart } from './plan-part.js';
import { Planner } from './planner.js';
import type { RawRequest } from './read-request.js';
import { runningPart } from './running/running-part.js';
import { strengthPart } from './strength/strength-part.js';

const parts: readonly PlanPart[] = [runningPart, strengthPart, checksPart];

const names: readonly string[] = parts.map(({ name }) => name);

/** A planner that also makes minutes concrete, running by pace and strength by sets, and holds plans against what is known. */
export class FullPlanner extends Planner {
  override plan(request: RawRequest): Outcome<Plan> {
    if (!isRecord(request)) return super.plan(request);
    const outcome = super.plan(Object.fromEntries(Object.entries(request).filter(([field]) => !names.includes(field))));
    const asked = parts.filter(({ name }) => request[name] != null);
    return completed(
      outcome,
      asked.map(({ name, read }) => read(request[name], this.method)),
    );
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function completed(outcome: Outcome<Plan>, read: readonly Outcome<PlanCompletion>[]): Outcome<Plan> {
  const faults = read.flatMap((each) => (each.ok ? [] : each.problems));
  if (!outcome.ok) return { ok: false, problems: [...outcome.problems.map(withParts), ...faults] };
  if (faults.length > 0) return { ok: false, problems: faults };
  const completions = read.flatMap((each) => (each.ok ? [each.value] : []));
  return { ok: true, value: completions.reduce((plan, complete) => complete(plan), outcome.value) };
}

/** Where a field of a request is not known, the parts are among those that are. */
function withParts(problem: Problem): Problem {
  const { fields } = problem.allowed;
  if (problem.code !== 'unknown-field' || problem.path.includes('.') || !Array.isArray(fields)) return problem;
  const known: readonly unknown[] = fields;
  return { ...problem, allowed: { fields: [...known, ...names] } };
}
