import { describe, expect, test } from 'vitest';
import evidence from '../../../../shared/evidence/evidence.json';
import defaultMethod from '../../../../shared/methods/default.json';
import clubMethod from '../../../../demo/club-method.json';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { provenanceOf } from '../../../../src/training/method/provenance.js';
import { quantityIds } from '../../../../src/sheet/sheet.js';
import { expandMethod } from '../../../../src/training/method/expand.js';

/** Every id under a name such as `sources` or `order_sources`, however deep it lies. */
function sourcesIn(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]: [string, unknown]) =>
    /(?:^|_)sources$/.test(key) && Array.isArray(each) ? each.map(String) : sourcesIn(each),
  );
}

const known = new Set(evidence.map(({ id }) => id));

/** Every list of sources with what it stands by, however deep it lies. */
function foundedIn(
  value: unknown,
  path = '',
): readonly { readonly path: string; readonly sources: readonly string[] }[] {
  if (typeof value !== 'object' || value === null) return [];
  const own =
    'status' in value || 'sources' in value
      ? [{ path, sources: 'sources' in value ? sourcesIn({ sources: value.sources }) : [] }]
      : [];
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, each]: [string, unknown]) => foundedIn(each, `${path}.${key}`)),
  ];
}

const entry = (id: string) => evidence.find((each) => each.id === id);

describe('every source that is named is in shared/evidence', () => {
  test.each([
    ['the built-in method', defaultMethod],
    ['the method of the example club', clubMethod],
  ])('by %s', (_, method) => {
    expect(sourcesIn(method).filter((id) => !known.has(id))).toEqual([]);
  });

  test('by splits, clashes and the order within a day', () => {
    const { splits, week } = defaultMethod;
    expect(sourcesIn(splits)).toContain('C11');
    expect(sourcesIn(week.clashes)).toContain('A22');
    expect(sourcesIn({ order_sources: week.order_sources })).toContain('A24');
  });

  test('by every number of the season', () => {
    const { season } = defaultMethod;
    expect(sourcesIn(season.rise)).toEqual(['C01', 'C02', 'C03', 'C04']);
    expect(sourcesIn(season.taper)).toEqual(['C11', 'C12', 'C13']);
    expect(sourcesIn(season.single_run)).toEqual(['C05']);
    expect(sourcesIn(season).filter((id) => !known.has(id))).toEqual([]);
  });

  test('by the derivations of the built-in method', () => {
    const named = builtInMethod.splits.flatMap((split) =>
      quantityIds(expandMethod(builtInMethod)).flatMap((id) => provenanceOf(builtInMethod, id, split.id).sources),
    );
    expect(named).toContain('sainte-lague');
    expect(named.filter((id) => !known.has(id))).toEqual([]);
  });
});

describe('every entry of shared/evidence that the built-in method uses', () => {
  const used = [...new Set(sourcesIn(defaultMethod))].sort();

  test('is one of many', () => {
    expect(used.length).toBeGreaterThan(60);
    expect(sourcesIn(defaultMethod.checks).length).toBeGreaterThan(60);
  });

  test.each(used)('%s is there once, with a claim, a citation, what was read, and a DOI or none', (id) => {
    expect(evidence.filter((each) => each.id === id)).toHaveLength(1);
    const { claim = '', cite = '', read = '', doi = '' } = entry(id) ?? {};
    expect(claim).toMatch(/^\S.{15,}[.…]$/);
    expect(cite).toMatch(/\b(?:19|20)\d\d\b/);
    expect(read).toMatch(/read|memory/);
    if (doi !== null) expect(doi).toMatch(/^10\.\d{4,9}\/\S+$/);
  });

  test('has no twin with other ids', () => {
    expect(new Set(evidence.map(({ id }) => id)).size).toBe(evidence.length);
  });
});

describe('every check of the built-in method', () => {
  const { checks } = defaultMethod;
  const limits = checks.list.flatMap((check) => check.limits.map((each) => ({ id: check.id, ...each })));

  test.each(limits)('$id rests on sources where it is published, and says what they do not say', (each) => {
    if (each.status === 'published') expect(sourcesIn(each).length).toBeGreaterThan(0);
    expect(each.reason.key).toMatch(/^check-reason\./);
    expect(each.not_said.key).toMatch(/^check-not\./);
  });

  test('names no source twice, and the activity and the screening have theirs', () => {
    for (const { path, sources } of foundedIn(checks))
      expect([path, new Set(sources).size]).toEqual([path, sources.length]);
    expect(sourcesIn(checks.activity)).toContain('A04');
    expect(sourcesIn(checks.screening)).toEqual(expect.arrayContaining(['E01', 'E02', 'E05']));
  });

  test.each(checks.differences)('$id, where studies and practice differ, names the studies', ({ sources }) => {
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.filter((id) => !known.has(id))).toEqual([]);
  });
});
