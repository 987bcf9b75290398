import type { AdviceId } from '../../training/method/check-rules.js';
import type { Method } from '../../training/method/document.js';
import type { Text } from '../../training/method/ids.js';
import { checkRules } from './checks-ground.js';

/** What is said where the answers lead to this advice: in a clinic's own wording where its method has one. */
export const adviceText = (method: Pick<Method, 'checks'>, advice: AdviceId): Text =>
  checkRules(method).screening.advice?.[advice] ?? { key: `advice.${advice}` };
