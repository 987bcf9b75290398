import type { Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryIds } from '../training/method/ids.js';
import { actedRules } from './acted-rules.js';
import { categoryName } from './category-name.js';
import { hoursInWords } from './headline.js';
import type { Words } from './words.js';

/**
 * The whole week in one sentence, for those who hear it: what a picture of the week shows, or what has changed.
 *
 * @example 'Four hours in build: 70 minutes of slow running, 35 minutes of tempo running, …, and 75 minutes of strength.'
 */
export function weekSentence(words: Words, method: Method, plan: Plan): string {
  const parts = categoryIds
    .filter((id) => plan.rounded[id] > 0)
    .map((id) =>
      words.say('summary.part', { minutes: words.minutes(plan.rounded[id]), kind: categoryName(words, method, id) }),
    );
  return words.say('summary', {
    hours: words.capital(hoursInWords(words, plan.inputs.hours)),
    phase: words.say(`headline.phase.${plan.inputs.phase}`),
    parts: words.list(parts),
  });
}

/** What a listener is told once a change has settled: the week, and how much there is to read below. */
export function statusMessage(words: Words, method: Method, plan: Plan): string {
  const rules = actedRules(plan).length;
  const notices = plan.notices.length;
  return [
    weekSentence(words, method, plan),
    ...(rules > 0 ? [words.say('summary.rules', { count: rules })] : []),
    ...(notices > 0 ? [words.say('summary.notices', { count: notices })] : []),
  ].join(' ');
}
