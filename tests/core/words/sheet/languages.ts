import germanTexts from '../../../../shared/locales/de.json';
import englishTexts from '../../../../shared/locales/en.json';
import { loadWords } from '../../../../src/words/load-words.js';
import type { Words } from '../../../../src/words/words.js';

export const english = await loadWords('en');
export const german = await loadWords('de');

/** Both languages, with the keys of their locale file. */
export const languages: readonly (readonly [Words, ReadonlySet<string>])[] = [
  [english, new Set(Object.keys(englishTexts))],
  [german, new Set(Object.keys(germanTexts))],
];

/** Wherever a key of the locales, a placeholder or what is no number shows through in a text. */
export function leaksIn(text: string, keys: ReadonlySet<string>): readonly string[] {
  const dotted = text.match(/[a-z][a-z-]*(\.[a-z][a-z_-]*)+/g) ?? [];
  const leaks = [
    ...dotted.filter((each) => keys.has(each) || each.startsWith('sheet.')),
    ...(text.match(/\{\w+\}|NaN|Infinity|undefined|\[object/g) ?? []),
  ];
  return text === '' || keys.has(text) ? [...leaks, `"${text}"`] : leaks;
}

/** No-break spaces, as they stand before German per cent signs, made plain. */
export const plain = (text: string): string => text.replaceAll(/[\u00A0\u202F]/g, ' ');
