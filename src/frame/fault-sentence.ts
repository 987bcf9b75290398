import type { Fault } from './fault.js';
import { languages, type Language } from './parameters.js';
import { primary } from './read-query.js';
import { texts } from './texts.js';

const longestShown = 60;

/** The language that the page speaks: that of the tag where there are words for it, else English. */
export const languageOf = (tag: string): Language => languages.find((each) => each === primary(tag)) ?? 'en';

/**
 * A fault as a sentence, in the form that the planner's own have.
 *
 * @example faultSentence('en', { name: 'scheme', value: 'dim', code: 'not-one-of', allowed: ['light', 'dark'] })
 *   // 'scheme is "dim"; allowed: light, dark.'
 */
export function faultSentence(language: Language, { name, value, code, allowed }: Fault): string {
  const { [code]: sentence, expected } = texts[language];
  const choices = typeof allowed === 'string' ? expected[allowed] : allowed.join(', ');
  const values: Readonly<Record<string, string>> = { field: name, value: shown(value), choices, fields: choices };
  return sentence.replace(/\{(\w+)\}/g, (_, place: string) => values[place] ?? '');
}

/** As the planner shows what was given: in quotes, long values cut. */
function shown(value: string): string {
  const text = JSON.stringify(value);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
