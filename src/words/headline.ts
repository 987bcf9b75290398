import type { Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from './category-name.js';
import type { Piece } from './phrases.js';
import type { Words } from './words.js';

/** A stretch of the headline; `strong` ones carry the numbers. */
export interface HeadlinePart {
  readonly text: string;
  readonly strong?: boolean;
}

const strongNames: ReadonlySet<string> = new Set(['hours', 'minutes', 'sessions']);

/**
 * The answer as a sentence, in parts.
 *
 * @example headlineText(headline(words, method, plan)) // 'Four hours in build: 75 minutes of strength, as 30 + 45.'
 */
export function headline(words: Words, method: Method, plan: Plan): readonly HeadlinePart[] {
  const sessions = plan.sessions.strength;
  const pieces = words.pieces(headlineKey(plan), {
    hours: words.capital(hoursInWords(words, plan.inputs.hours)),
    phase: words.say(`headline.phase.${plan.inputs.phase}`),
    minutes: words.minutes(plan.rounded.strength),
    kind: categoryName(words, method, 'strength'),
    sessions: words.sessions(sessions),
  });
  return pieces.map(asPart);
}

/** The parts as one text. */
export function headlineText(parts: readonly HeadlinePart[]): string {
  return parts.map(({ text }) => text).join('');
}

/** Whole hours up to twelve are written out, as a sentence would: "four hours"; others in figures. */
export function hoursInWords(words: Words, hours: number): string {
  const isWrittenOut = Number.isInteger(hours) && hours >= 1 && hours <= 12;
  return isWrittenOut ? words.say(`hours-in-words.${String(hours)}`) : words.hours(hours);
}

function headlineKey({ rounded, sessions }: Plan): string {
  if (rounded.strength === 0) return 'headline.none';
  return sessions.strength.length > 1 ? 'headline' : 'headline.one-session';
}

function asPart({ text, name }: Piece): HeadlinePart {
  return name !== undefined && strongNames.has(name) ? { text, strong: true } : { text };
}
