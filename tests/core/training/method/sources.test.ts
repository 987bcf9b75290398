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
