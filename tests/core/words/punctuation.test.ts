import { describe, expect, test } from 'vitest';
import arabicTexts from '../../../shared/locales/ar.json';
import frenchTexts from '../../../shared/locales/fr.json';
import { arabic as arabicCommand } from '../../../src/cli/texts/ar.js';
import { french as frenchCommand } from '../../../src/cli/texts/fr.js';
import { texts as frame } from '../../../src/frame/texts.js';
import type { Message } from '../../../src/words/phrases.js';

type Line = readonly [key: string, text: string];

const lines = (texts: object): Line[] =>
  Object.entries(texts).flatMap(([key, text]: [string, Message]) =>
    typeof text === 'string'
      ? [[key, text] as const]
      : lines(text).map(([form, each]) => [`${key} ${form}`, each] as const),
  );

const odd = (all: readonly Line[], pattern: RegExp): readonly Line[] => all.filter(([, text]) => pattern.test(text));

describe('French', () => {
  const all = [...lines(frenchTexts), ...lines(frenchCommand), ...lines(frame.fr)];

  // A colon within a clock time or an address has nothing before it.
  test('has a narrow no-break space before a colon, a semicolon and a question mark', () => {
    expect(all.length).toBeGreaterThan(1000);
    expect(odd(all, /[^\u202F][;?]|[^\u202F\d]:(?!\/\/)|\d:(?!\d)/)).toEqual([]);
  });

  test('has a no-break space within quotation marks', () => {
    expect(odd(all, /«[^\u00A0\u202F]|[^\u00A0\u202F]»/)).toEqual([]);
  });
});

describe('Arabic', () => {
  const all = [...lines(arabicTexts), ...lines(frame.ar)].filter(([key]) => !key.startsWith('record.words.'));

  test('has commas, semicolons and question marks of its own', () => {
    expect(all.length).toBeGreaterThan(1000);
    expect(odd(all, /[,;?]/)).toEqual([]);
  });

  test('writes short units as Arabic does, but for what can be typed', () => {
    expect(odd(all, /(?:\d|\}) ?(?:km|mi|m|min|h|kg|kcal|ml)\b/).map(([key]) => key)).toEqual([
      'problem.expected.duration',
    ]);
  });

  // What is typed in a terminal has the marks of its own.
  test('has them in the texts of the command, too', () => {
    expect(odd(lines(arabicCommand), /[,;?]/).map(([key]) => key)).toEqual(['option.race']);
  });
});
