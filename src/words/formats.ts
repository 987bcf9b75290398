import { once } from './once.js';

/** Numbers, lists and capitals as a language writes them. */
export interface Formats {
  /** Fit for a `dir` attribute. */
  readonly direction: 'ltr' | 'rtl';
  /** What leads from one thing to the next. */
  readonly arrow: string;
  /** At most `digits` decimals, 2 by default: `number(7.5)` is "7.5", in German "7,5". */
  readonly number: (value: number, digits?: number) => string;
  /** Whole or exact minutes in full, at most one decimal: "72 minutes". */
  readonly minutes: (value: number) => string;
  /** A share of 1 in per cent, at most one decimal: "30%". */
  readonly share: (value: number) => string;
  /** "a, b, and c" */
  readonly list: (items: readonly string[]) => string;
  /** "a, b, or c" */
  readonly alternatives: (items: readonly string[]) => string;
  /** The text with its first letter large, for the beginning of a sentence or a line. */
  readonly capital: (text: string) => string;
}

/** Makes the formats of a language (a BCP 47 tag); every Intl object is made once, when it is first needed. */
export function createFormats(language: string): Formats & { readonly hoursLong: (value: number) => string } {
  const formats = new Map<string, Intl.NumberFormat>();
  const format = (options: Intl.NumberFormatOptions, value: number): string => {
    const key = JSON.stringify(options);
    const known = formats.get(key) ?? new Intl.NumberFormat(language, options);
    formats.set(key, known);
    return known.format(value);
  };
  const unit = (name: string, value: number): string =>
    format({ style: 'unit', unit: name, unitDisplay: 'long', maximumFractionDigits: 1, ...unsignedZero }, value);
  const lists = createLists(language);
  const isRightToLeft = rightToLeft.test(language);
  return {
    direction: isRightToLeft ? 'rtl' : 'ltr',
    arrow: isRightToLeft ? ' ← ' : ' → ',
    number: (value, digits = 2) => format({ maximumFractionDigits: digits, ...unsignedZero }, value),
    minutes: (value) => unit('minute', value),
    hoursLong: (value) => unit('hour', value),
    share: (value) => format({ style: 'percent', maximumFractionDigits: 1, ...unsignedZero }, value),
    ...lists,
    capital: ([first = '', ...rest]) => first.toLocaleUpperCase(language) + rest.join(''),
  };
}

// Intl knows the direction of a language, but not in every browser.
const rightToLeft = /^(?:ar|fa|he|ur)\b/;

// What rounds to nothing is written "0", never "-0".
const unsignedZero = { signDisplay: 'negative' } as const;

function createLists(language: string): Pick<Formats, 'list' | 'alternatives'> {
  const conjunction = once(() => new Intl.ListFormat(language, { type: 'conjunction' }));
  const disjunction = once(() => new Intl.ListFormat(language, { type: 'disjunction' }));
  return { list: (items) => conjunction().format(items), alternatives: (items) => disjunction().format(items) };
}
