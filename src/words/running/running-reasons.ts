import { runningRules } from '../../plan/running/running-ground.js';
import type { Founded } from '../../training/method/founded.js';
import type { Method } from '../../training/method/document.js';
import type { Reason } from '../reason.js';
import type { Words } from '../words.js';
import { reasonOf } from '../reason.js';

/** What the numbers of running rest on, the most important first. */
export function runningReasons(words: Words, method: Method): readonly Reason[] {
  const rules = runningRules(method);
  const parts: readonly Founded[] = [...rules.kinds, rules.threshold, rules.equal_times, rules.heart, rules.energy];
  return parts.map((part) => reasonOf(words, part));
}
