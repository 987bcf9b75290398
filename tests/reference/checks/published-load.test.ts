import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/load.json' with { type: 'json' };
import { loadSpread } from '../../../src/training/load/load-spread.js';

const { foster } = published;

/** Equal to so many decimal places, or both nothing. */
function nearOrNull(ours: number | null, printed: number | null | undefined, places: number): void {
  if (printed === null || ours === null) expect(ours).toBe(printed);
  else expect(ours).toBeCloseTo(printed ?? NaN, places);
}

describe(`load, monotony and strain of a week: ${foster.source.cite}`, () => {
  const weeks = foster.cases.flatMap(({ in: { daily }, out }) => (daily ? [{ daily, out }] : []));
  const printed = foster.cases.flatMap(({ in: { weekly, monotony }, out: { strain }, printedPrecision }) =>
    weekly !== undefined && monotony !== undefined && typeof strain === 'number' && typeof printedPrecision === 'number'
      ? [{ weekly, monotony, strain, printedPrecision }]
      : [],
  );

  test('has every case of the print', () => {
    expect([weeks.length, printed.length]).toEqual([4, 2]);
    expect(weeks.length + printed.length).toBe(foster.cases.length);
  });

  test.each(weeks)('$daily', ({ daily, out }) => {
    const { week, mean, deviation, sampleDeviation, monotony, sampleMonotony, strain } = loadSpread(daily);
    expect(week).toBe(out.weekly);
    // Ten digits are given.
    expect(mean).toBeCloseTo(out.meanDaily ?? NaN, 6);
    expect(deviation).toBeCloseTo(out.sdPop ?? NaN, 6);
    expect(sampleDeviation).toBeCloseTo(out.sdSample ?? NaN, 6);
    nearOrNull(monotony, out.monotonyPop, 8);
    nearOrNull(sampleMonotony, out.monotonySample, 8);
    nearOrNull(strain, out.strainPop, 5);
    const sampleStrain = sampleMonotony === null ? null : week * sampleMonotony;
    nearOrNull(sampleStrain, out.strainSample, 5);
  });

  // No daily loads are printed: any week with that load and that monotony has to have that strain.
  test.each(printed)('$weekly at a monotony of $monotony is a strain of $strain', (example) => {
    const { weekly, monotony, strain, printedPrecision } = example;
    const mean = weekly / 7;
    // One day above the mean by 6x and six below it by x deviate by x√6.
    const low = mean / monotony / Math.sqrt(6);
    const spread = loadSpread([mean + 6 * low, ...Array.from({ length: 6 }, () => mean - low)]);
    expect(spread.week).toBeCloseTo(weekly, 9);
    expect(spread.monotony).toBeCloseTo(monotony, 9);
    expect(Math.abs((spread.strain ?? NaN) - strain)).toBeLessThanOrEqual(printedPrecision);
  });

  test('the sample form is the other times √(6/7), so that 2.00 is 1.85', () => {
    expect(foster.note).toContain('0.92582');
    for (const { daily } of weeks) {
      const { monotony, sampleMonotony } = loadSpread(daily);
      if (monotony !== null) expect((sampleMonotony ?? NaN) / monotony).toBeCloseTo(0.92582, 5);
      else expect(sampleMonotony).toBeNull();
    }
    expect(2 * Math.sqrt(6 / 7)).toBeCloseTo(1.85, 2);
  });
});
