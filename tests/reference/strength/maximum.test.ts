import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/strength.json' with { type: 'json' };
import method from '../../../shared/methods/default.json' with { type: 'json' };
import { brzycki, epley } from '../../../src/training/strength/one-repetition-maximum.js';
import { shareOfMaximum } from '../../../src/training/strength/share-of-maximum.js';

const { table, most_repetitions: most } = method.strength.maximum;

describe(`the heaviest single from a set: ${published.maximum.source.cite}`, () => {
  const cases = published.maximum.cases.map(({ in: { w, r }, out }) => ({ w, r, ...out }));

  test.each(cases)('$w kg lifted $r times is $brzycki kg by Brzycki', ({ w, r, brzycki: printed }) => {
    expect(brzycki(w, r)).toBeCloseTo(printed, 6);
  });

  test.each(cases.filter(({ r }) => r > 1))('$w kg lifted $r times is $epley kg by Epley', (example) => {
    expect(epley(example.w, example.r)).toBeCloseTo(example.epley, 6);
  });

  test('a single is the maximum itself, where the bare equation of Epley adds a thirtieth', () => {
    const single = cases.find(({ r }) => r === 1);
    expect(single).toEqual({ w: 100, r: 1, epley: 103.3333333, brzycki: 100, lombardi: 100 });
    expect(epley(100, 1)).toBe(100);
  });

  // The file has Lombardi's equation too: weight times repetitions to the power of 0.10. We use it as a bound only.
  test.each(cases)('$w kg lifted $r times is $lombardi kg by Lombardi, within a tenth of ours', (example) => {
    expect(example.w * example.r ** 0.1).toBeCloseTo(example.lombardi, 6);
    const used = Math.min(epley(example.w, example.r), brzycki(example.w, example.r));
    expect(Math.abs(used / example.lombardi - 1)).toBeLessThan(0.1);
  });

  test('both equations are equal at ten repetitions, Brzycki’s is lower before and higher after', () => {
    expect(epley(75, 10)).toBeCloseTo(100, 9);
    expect(brzycki(75, 10)).toBeCloseTo(100, 9);
    for (let repetitions = 2; repetitions < 10; repetitions += 1)
      expect(brzycki(75, repetitions)).toBeLessThan(epley(75, repetitions));
    expect(brzycki(75, 11)).toBeGreaterThan(epley(75, 11));
  });

  test('sets of up to ten repetitions tell it, the range of the equations', () => {
    expect(published.maximum.range).toContain('1 ≤ r ≤ 10');
    expect(most).toBe(10);
  });
});

describe(`shares by Epley’s chart: ${published.epleyTable.source.cite}`, () => {
  // The chart has 0.0333 for a thirtieth, and whole per cent, some of them cut and some rounded.
  test.each(published.epleyTable.cases)('$in.n repetitions are $out.pct %', ({ in: { n }, out, printedPrecision }) => {
    expect(Math.abs(100 / (epley(100, n) / 100) - out.pct)).toBeLessThanOrEqual(printedPrecision);
  });

  test.each(published.epleyTable.cases)('our table is within 3 of its $out.pct % for $in.n', ({ in: { n }, out }) => {
    expect(Math.abs((shareOfMaximum(n, table) ?? NaN) * 100 - out.pct)).toBeLessThanOrEqual(3);
  });
});

describe(`loads and repetitions: ${published.loadTable.source.cite}`, () => {
  const rows = published.loadTable.cases.flatMap(({ in: { RM }, out: { pct } }) =>
    typeof RM === 'number' && pct !== undefined ? [{ RM, pct }] : [],
  );
  const loads = published.loadTable.cases.flatMap(({ in: { oneRM, RM }, out }) =>
    Array.isArray(RM) && oneRM !== undefined
      ? RM.map((repetitions, index) => ({ oneRM, repetitions, load: out.loads?.[index] ?? NaN }))
      : [],
  );

  test('has every row of the print', () => {
    expect([rows.length, loads.length]).toEqual([9, 30]);
    expect(rows.length + 3).toBe(published.loadTable.cases.length);
  });

  test.each(rows)('$RM repetitions can be done with $pct %', ({ RM, pct }) => {
    expect(shareOfMaximum(RM, table)).toBe(pct / 100);
  });

  test.each(loads)('$repetitions repetitions can be done with $load of $oneRM', ({ oneRM, repetitions, load }) => {
    expect((shareOfMaximum(repetitions, table) ?? NaN) * oneRM).toBeCloseTo(load, 9);
  });
});
