import type { ConcretePlan } from '../../plan/handout/concrete-plan.js';
import type { Method } from '../../training/method/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../category-name.js';
import { joined } from '../joined.js';
import { distancesOf } from '../running/distances.js';
import type { Words } from '../words.js';
import { effortText } from './effort-text.js';

/** How a kind of training goes. */
export interface KindLine {
  /** "Slow running" */
  readonly name: string;
  /** "2 to 4 of 10, so that whole sentences can be spoken; 5:40 to 6:40 a kilometre" */
  readonly how: string;
}

/** How each kind goes that the sessions of a plan are made of. */
export function kindLines(words: Words, method: Method, plan: ConcretePlan): readonly KindLine[] {
  const { guides, wishes } = plan.running;
  return categoryIds.map((id) => {
    const guide = guides.find(({ category }) => category === id);
    const effort = words.say('handout.effort', { effort: effortText(words, method, { plan, category: id }) });
    const feel = joined(words, [effort, guide ? words.say(`running.feel.${id}`) : ''], 'comma');
    const pace = guide?.pace ? distancesOf(words, wishes.unit).pace(guide.pace) : '';
    return { name: categoryTitle(words, method, id), how: joined(words, [feel, pace], 'semicolon') };
  });
}
