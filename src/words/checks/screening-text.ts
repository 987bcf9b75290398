import { adviceText } from '../../plan/checks/advice-text.js';
import type { Screening } from '../../training/checks/screening.js';
import type { Method } from '../../training/method/document.js';
import type { Words } from '../words.js';

/** What the questions before the start lead to: the advice, in a clinic's wording where it has one, and cautions. */
export function screeningLines(
  words: Words,
  method: Method,
  { advice, stops, cautions }: Screening,
): readonly string[] {
  return [
    // That nothing stands against starting is no word for somebody who has something to mind.
    ...(advice === 'go' && cautions.length > 0 ? [] : [words.text(adviceText(method, advice))]),
    ...(stops ? [words.say('screening.no-plan')] : []),
    ...cautions.map((id) => words.say(`screening-help.${id}`)),
    words.say('screening.local'),
  ];
}
