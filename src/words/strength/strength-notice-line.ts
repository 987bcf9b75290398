import type { PlanStrength, StrengthNotice } from '../../plan/strength/document.js';
import type { Method } from '../../training/method/document.js';
import type { Words } from '../words.js';
import { movementName } from './movement-text.js';
import { sessionTitle } from './session-text.js';

/** What there is to say of strength, as a sentence. */
export function strengthNoticeLine(
  words: Words,
  method: Method,
  { notice, strength }: { readonly notice: StrengthNotice; readonly strength: PlanStrength },
): string {
  const { code, level, movement, pattern, session, values } = notice;
  const about = session === undefined ? undefined : strength.sessions[session];
  const text = words.say(`strength-notice.${code}`, {
    ...values,
    ...(values['minutes'] === undefined ? {} : { count: values['minutes'], minutes: words.minutes(values['minutes']) }),
    ...(movement === undefined ? {} : { movement: movementName(words, method, movement) }),
    ...(pattern === undefined ? {} : { pattern: words.say(`strength.pattern.${pattern}`) }),
    ...(about && session !== undefined ? { session: sessionTitle(words, about, session) } : {}),
  });
  return level === 'caution' ? words.say('planner.caution', { text }) : text;
}
