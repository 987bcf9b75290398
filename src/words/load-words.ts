import { first } from './english-first.js';
import { gaps } from './gaps.js';
import type { Messages } from './phrases.js';
import { createWords, type Words } from './words.js';

/** English words of the first screen, at hand without waiting. Texts of derivations and of problems are not among them. */
export const firstWords: Words = createWords('en', first);

// A language is a file of shared/locales and a line here; each is a chunk of its own.
const loaders: Readonly<Record<string, () => Promise<Messages>>> = {
  ar: async () => (await import('../../shared/locales/ar.json')).default,
  de: async () => (await import('../../shared/locales/de.json')).default,
  es: async () => (await import('../../shared/locales/es.json')).default,
  fr: async () => (await import('../../shared/locales/fr.json')).default,
};

/** The languages there are words for, as BCP 47 tags. */
export const languages: readonly string[] = ['en', ...Object.keys(loaders)];

/**
 * The language of ours that fits a tag best: its first part where there are words for it, else English.
 *
 * @example matchLanguage('de-AT') // 'de'
 */
export function matchLanguage(tag: string): string {
  const [primary = ''] = tag.toLowerCase().split(/[-_]/);
  return languages.includes(primary) ? primary : 'en';
}

const loaded = new Map<string, Promise<Words>>();

/** All words of a language tag; rejects where a file cannot be fetched (and may be asked again). */
export function loadWords(tag: string): Promise<Words> {
  const language = matchLanguage(tag);
  const known = loaded.get(language);
  if (known) return known;
  const words = load(language);
  loaded.set(language, words);
  words.catch(() => loaded.delete(language));
  return words;
}

async function load(language: string): Promise<Words> {
  const messages = await loaders[language]?.();
  if (messages) return createWords(language, messages, gaps[language]);
  const { rest } = await import('./english-rest.js');
  return createWords('en', { ...first, ...rest });
}
