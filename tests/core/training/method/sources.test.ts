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

  test('by the splits, the rules, the clashes and the order within a day', () => {
    const { splits, rules, week } = defaultMethod;
    expect([sourcesIn(splits), sourcesIn(rules), sourcesIn(week.clashes), week.order_sources]).toEqual([
      ['C11', 'C13', 'A25'],
      [],
      ['A22', 'A19', 'A20', 'A22', 'A23'],
      ['A19', 'A20', 'A23', 'A24'],
    ]);
  });

  test('by the derivations of the built-in method', () => {
    const named = builtInMethod.splits.flatMap((split) =>
      quantityIds(expandMethod(builtInMethod)).flatMap((id) => provenanceOf(builtInMethod, id, split.id).sources),
    );
    expect(named).toContain('sainte-lague');
    expect(named.filter((id) => !known.has(id))).toEqual([]);
  });
});
