import type { Problem } from '../../problem.js';
import { screen, type AnswerId } from '../../training/checks/screening.js';
import type { Method } from '../../training/method/document.js';
import type { PlanPart } from '../plan-part.js';
import { adviceText } from './advice-text.js';
import { makeChecks } from './make-checks.js';
import { answersIn, readChecks } from './read-checks.js';

/** Holds a plan against what is known. Where the answers say stop, there is no plan at all. */
export const checksPart: PlanPart = {
  name: 'checks',
  read: (given, method) => {
    const read = readChecks(given);
    const problems = [...stopped(answersIn(given), method), ...(read.ok ? [] : read.problems)];
    if (!read.ok || problems.length > 0) return { ok: false, problems };
    const { wishes } = read.value;
    return { ok: true, value: (plan) => ({ ...plan, ...makeChecks(plan, wishes, method) }) };
  },
};

function stopped(answers: readonly AnswerId[], method: Method): readonly Problem[] {
  const { stops, advice, because } = screen(answers);
  if (!stops) return [];
  return [
    { path: 'checks.answers', value: because, code: 'no-plan', allowed: { advice, text: adviceText(method, advice) } },
  ];
}
