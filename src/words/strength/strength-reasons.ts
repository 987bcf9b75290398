import { strengthGround } from '../../plan/strength/strength-ground.js';
import type { Founded } from '../../training/method/founded.js';
import type { Method } from '../../training/method/document.js';
import { reasonOf, type Reason } from '../reason.js';
import type { Words } from '../words.js';

/** What the strength sessions rest on: the stage in use first, then what all have in common. */
export function strengthReasons(words: Words, method: Method, stage: string): readonly Reason[] {
  const { rules } = strengthGround(method);
  const inUse = rules.stages.filter(({ id }) => id === stage);
  const parts: readonly Founded[] = [...inUse, rules.dose, rules.time, rules.spared, rules.maximum, rules.progress];
  return parts.map((part) => reasonOf(words, part));
}
