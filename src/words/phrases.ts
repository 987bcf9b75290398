import { once } from './once.js';

/** Forms of a message by the plural rules of its language; which one is taken depends on the value `count`. */
export type PluralForms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> & { readonly other: string };
export type Message = string | PluralForms;

/** Texts by their keys: one file of shared/locales. `{name}` stands for a value. */
export type Messages = Readonly<Record<string, Message>>;
export type Values = Readonly<Record<string, string | number>>;

/** A stretch of a filled-in text; `name` is the placeholder that it stands for, if it stands for one. */
export interface Piece {
  readonly text: string;
  readonly name?: string;
}

export interface Phrases {
  /** The text for a key with its values filled in; the key itself where no language has it. */
  readonly say: (key: string, values?: Values) => string;
  /** The same, cut at the values. */
  readonly pieces: (key: string, values?: Values) => readonly Piece[];
  /** Fills values into a text from elsewhere. */
  readonly fill: (template: string, values: Values) => string;
}

/** Where the phrases come from, the language first and what stands in for it behind, and how numbers are written. */
export interface PhraseSource {
  readonly language: string;
  readonly messages: readonly Messages[];
  readonly number: (value: number) => string;
}

/** Looks texts up, chooses plural forms and fills in values. */
export function createPhrases({ language, messages, number }: PhraseSource): Phrases {
  const plurals = once(() => new Intl.PluralRules(language));
  const template = (key: string, values: Values): string => {
    const message = messages.find((texts) => Object.hasOwn(texts, key))?.[key] ?? key;
    if (typeof message === 'string') return message;
    return message[plurals().select(Number(values['count']))] ?? message.other;
  };
  const cut = (text: string, values: Values): readonly Piece[] => cutAtValues(text, values, number);
  const fill = (text: string, values: Values): string => join(cut(text, values));
  return {
    say: (key, values = {}) => fill(template(key, values), values),
    pieces: (key, values = {}) => cut(template(key, values), values),
    fill,
  };
}

const join = (pieces: readonly Piece[]): string => pieces.map(({ text }) => text).join('');

/** Splitting at a captured group puts the names of the placeholders at the odd places. */
function cutAtValues(text: string, values: Values, number: PhraseSource['number']): readonly Piece[] {
  const pieces = text.split(/\{(\w+)\}/).map((part, index): Piece => {
    if (index % 2 === 0) return { text: part };
    const value = Object.hasOwn(values, part) ? values[part] : undefined;
    if (value === undefined) return { text: `{${part}}` };
    return { text: typeof value === 'number' ? number(value) : value, name: part };
  });
  return pieces.filter((piece) => piece.text !== '');
}
