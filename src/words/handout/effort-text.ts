import type { ConcretePlan } from '../../plan/handout/concrete-plan.js';
import { effortsOf } from '../../training/load/efforts-of.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import { effortSpan } from '../running/effort-span.js';
import type { Words } from '../words.js';

/** How hard a kind of training should feel, 0 to 10: as the running has it for runs, else as the load counts it. */
export function effortText(
  words: Words,
  method: Method,
  { plan, category }: { readonly plan: ConcretePlan; readonly category: CategoryId },
): string {
  const guide = plan.running.guides.find((each) => each.category === category);
  return guide ? effortSpan(words, guide.effort) : words.number((plan.load?.efforts ?? effortsOf(method))[category]);
}
