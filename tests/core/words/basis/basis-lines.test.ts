import { describe, expect, test } from 'vitest';
import evidence from '../../../../shared/evidence/evidence.json';
import defaultMethod from '../../../../shared/methods/default.json';
import { areaIds } from '../../../../src/plan/basis/foundations.js';
import { statusIds } from '../../../../src/training/method/ids.js';
import { basisAreas, basisHeadline, differences } from '../../../../src/words/basis/basis-lines.js';
import { documentWith, objectOf, plannerOf } from '../../training/method/documents.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const known = new Set(evidence.map(({ id }) => id));

/** Everything of a document that says how well it is founded, wherever it stands. */
function foundedIn(value: unknown): readonly Record<string, unknown>[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'status' in value ? [objectOf(value)] : [];
  return [...own, ...Object.values(value).flatMap(foundedIn)];
}

const sourcesOf = ({ sources }: Record<string, unknown>): readonly string[] =>
  Array.isArray(sources) ? sources.map(String) : [];

/** Of two things no status stands in the document: the published rounding, and the order of a run and strength on a day. */
const inCode = 2;

/** Counts of a headline, in the order of the statuses. */
const countsOf = (text: string): readonly number[] => (text.match(/\d+/g) ?? []).map(Number);

describe('basisHeadline(words, method)', () => {
  test('counts every number and rule of the method by its status', () => {
    const founded = foundedIn(defaultMethod);
    const counts = countsOf(basisHeadline(english, method));
    expect(counts).toHaveLength(3);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(founded.length + inCode);
    const stated = statusIds.map((id) => founded.filter(({ status }) => status === id).length);
    // Both of those are published.
    expect(counts).toEqual(statusIds.map((id, place) => (stated[place] ?? 0) + (id === 'published' ? inCode : 0)));
    expect(countsOf(basisHeadline(german, method))).toEqual(counts);
  });

  test('is a sentence in both languages', () => {
    expect(basisHeadline(english, method)).toMatch(
      /^Numbers and rules of this method: \d+ published, \d+ common practice, and \d+ assumptions\.$/,
    );
    expect(basisHeadline(german, method)).toMatch(
      /^Zahlen und Regeln dieser Methode: \d+ veröffentlicht, \d+ gängige Praxis und \d+ Annahmen\.$/,
    );
  });

  test('follows the method', async () => {
    const before = countsOf(basisHeadline(english, method));
    const own = await plannerOf(documentWith('checks.list', defaultMethod.checks.list.slice(1)));
    // The first check is published.
    expect(defaultMethod.checks.list[0]?.limits.map(({ status }) => status)).toEqual(['published']);
    expect(countsOf(basisHeadline(english, own.method))).toEqual(
      statusIds.map((id, place) => (before[place] ?? NaN) - (id === 'published' ? 1 : 0)),
    );
  });
});

describe('basisAreas(words, method)', () => {
  const reasons = basisAreas(english, method).flatMap((area) => area.reasons);

  test('has every part, in the order in which a plan is made', () => {
    expect(basisAreas(english, method).map(({ id }) => id)).toEqual([...areaIds]);
  });

  test('lists everything that the method founds, with status, reason and sources', () => {
    for (const each of foundedIn(defaultMethod)) {
      const key = 'reason' in each ? String(objectOf(each['reason'])['key']) : 'basis.session';
      const status = english.say(`status.${String(each['status'])}`);
      const found = reasons.filter(({ text }) => text.endsWith(english.say(key)));
      expect([key, found.map((reason) => reason.status)]).toEqual([key, expect.arrayContaining([status])]);
      expect([key, found.map((reason) => reason.sources)]).toEqual([key, expect.arrayContaining([sourcesOf(each)])]);
    }
    expect(reasons).toHaveLength(foundedIn(defaultMethod).length + inCode);
  });

  test('begins with the name of what it is about', () => {
    const texts = reasons.map(({ text }) => text);
    for (const { name } of [...defaultMethod.splits, ...defaultMethod.rules, ...defaultMethod.checks.list]) {
      const begin = `${english.capital(english.say(name.key))}: `;
      expect([begin, texts.some((text) => text.startsWith(begin))]).toEqual([begin, true]);
    }
  });

  test('says the hours between a run and strength as the method has them', async () => {
    const said = (other: typeof method): string | undefined =>
      basisAreas(english, other).find(({ id }) => id === 'week')?.reasons[0]?.text;
    expect(said(method)).toContain('6 hours');
    const own = await plannerOf(documentWith('week.hours_between', 8));
    expect(said(own.method)).toContain('8 hours');
  });

  test('names only sources that are in shared/evidence, and one for all that is published', () => {
    expect(reasons.flatMap(({ sources }) => sources).filter((id) => !known.has(id))).toEqual([]);
    const published = reasons.filter(({ status }) => status === english.say('status.published'));
    expect(published.filter(({ sources }) => sources.length === 0)).toEqual([]);
  });

  test('leaves no gap in either language, and has as much in one as in the other', () => {
    for (const [words, keys] of languages) {
      const areas = basisAreas(words, method);
      expect(areas.flatMap((area) => area.reasons)).toHaveLength(reasons.length);
      for (const { title, reasons: list } of areas)
        for (const text of [title, ...list.flatMap((each) => [each.text, each.status])])
          expect([text, leaksIn(text, keys)]).toEqual([text, []]);
    }
  });

  test("has a coach's own words", async () => {
    const own = await plannerOf(documentWith('rules[0].reason', 'We saw it in our club.'));
    const texts = basisAreas(german, own.method).flatMap((area) => area.reasons.map(({ text }) => text));
    expect(texts).toContain('Obergrenze Kraft: We saw it in our club.');
  });
});

describe('differences(words, method)', () => {
  test('has each of the method with a name, a text and sources in shared/evidence', () => {
    for (const [words, keys] of languages) {
      const found = differences(words, method);
      expect(found).toHaveLength(defaultMethod.checks.differences.length);
      for (const { name, text, sources } of found) {
        expect([name, leaksIn(name, keys), leaksIn(text, keys)]).toEqual([name, [], []]);
        expect(sources.length).toBeGreaterThan(0);
        expect(sources.filter((id) => !known.has(id))).toEqual([]);
      }
    }
  });
});
