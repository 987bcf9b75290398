import type { Notice, Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { cellErrorReason } from './cell-error-reason.js';
import { noticeLines, type PlanLine } from './plan-lines.js';
import { quantityName } from './quantity-names.js';
import type { Words } from './words.js';

/** What is worth knowing of this week, as `noticeLines` says it; of a quantity that failed, also why. */
export function noticesWithCauses(words: Words, method: Method, plan: Plan): readonly PlanLine[] {
  const causes = plan.notices.map((notice) => causeSentence(words, method, { plan, notice }));
  return noticeLines(words, method, plan).map((line, index) => {
    const cause = causes[index] ?? null;
    return cause === null ? line : { ...line, text: `${line.text} ${cause}` };
  });
}

function causeSentence(words: Words, method: Method, { plan, notice }: { plan: Plan; notice: Notice }): string | null {
  const error = notice.quantity === undefined ? null : plan.derivations[notice.quantity]?.error;
  if (!error) return null;
  return words.capital(`${cellErrorReason(words, error, (id) => quantityName(words, method, id))}.`);
}
