import fc from 'fast-check';
import { fieldIds, type Field, type Vocabulary } from '../../../../src/exchange/record/mapping.js';
import { kindKey } from '../../../../src/exchange/record/kinds-in.js';
import { byCategory, categoryIds, type CategoryId } from '../../../../src/training/method/ids.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import { isoDate, knownDay } from '../../../../src/training/season/iso-date.js';

const effort = fc.oneof(
  fc.constant(null),
  fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2),
  fc.double({ min: 0, max: 10, noNaN: true }).map((value) => value + 0), // a zero has no sign
);

export const doneSession: fc.Arbitrary<DoneSession> = fc.record({
  date: fc.integer({ min: knownDay('1900-01-01'), max: knownDay('2199-12-31') }).map(isoDate),
  category: fc.constantFrom(...categoryIds),
  minutes: fc.oneof(fc.integer({ min: 1, max: 1440 }), fc.integer({ min: 1, max: 12 })),
  effort,
});

/** A word that may be run as a formula, has to be quoted, or is guarded already; it has a letter. */
const word = fc
  .tuple(
    fc.constantFrom('', '', '=', '-', '@', '\t', '\0', '＋', "'", "'=", "''=", '"', ' '),
    fc.string({ unit: fc.constantFrom('a', 'é', '7', '"', ',', ';', '\t', '\r', '\n', ' ', '.', '_'), maxLength: 6 }),
  )
  .map(([front, rest]) => `${front}w${rest}`);

const words = (count: number): fc.Arbitrary<string[]> =>
  fc.uniqueArray(word, { minLength: count, maxLength: count, selector: kindKey });

/** How a table is written: a title for every field, a word for every kind. */
export interface Writing {
  readonly head: Readonly<Record<Field, string>>;
  readonly kinds: Readonly<Record<CategoryId, string>>;
}

export const writing: fc.Arbitrary<Writing> = fc.tuple(words(4), words(5)).map(([titles, names]) => ({
  head: {
    date: titles[fieldIds.indexOf('date')] ?? '',
    category: titles[fieldIds.indexOf('category')] ?? '',
    minutes: titles[fieldIds.indexOf('minutes')] ?? '',
    effort: titles[fieldIds.indexOf('effort')] ?? '',
  },
  kinds: byCategory((id) => names[categoryIds.indexOf(id)] ?? ''),
}));

/** What a page has to know to read what it wrote. */
export const vocabularyOf = ({ head, kinds }: Writing): Vocabulary => ({
  fields: { date: [head.date], category: [head.category], minutes: [head.minutes], effort: [head.effort] },
  kinds: byCategory((id) => [kinds[id]]),
});
