import { createWords, type Words } from '../words/words.js';
import { languages, loadWords } from '../words/load-words.js';
import type { Messages } from '../words/phrases.js';
import { arabic } from './texts/ar.js';
import { german } from './texts/de.js';
import { english } from './texts/en.js';
import { spanish } from './texts/es.js';
import { french } from './texts/fr.js';

/** Words of one language: those every surface shares, and the command's own. */
export interface Speech {
  readonly words: Words;
  readonly texts: Words;
}

const ownTexts: Readonly<Record<string, Messages>> = {
  ar: arabic,
  de: german,
  en: english,
  es: spanish,
  fr: french,
};

/** Languages that the command speaks. */
export const spokenLanguages: readonly string[] = languages.filter((language) => Object.hasOwn(ownTexts, language));

/** The speech of a language; English where the command does not speak it. */
export async function loadSpeech(language: string): Promise<Speech> {
  const known = spokenLanguages.includes(language) ? language : 'en';
  return { words: await loadWords(known), texts: createWords(known, ownTexts[known] ?? english, english) };
}
