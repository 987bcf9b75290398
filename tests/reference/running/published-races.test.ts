import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/running.json' with { type: 'json' };
import method from '../../../shared/methods/default.json' with { type: 'json' };
import { speedOf } from '../../../src/training/running/distance.js';
import { equalTimes } from '../../../src/training/running/equal-times.js';
import { heldShare, oxygenCost, speedAt, uptakeOf } from '../../../src/training/running/oxygen.js';
import { riegelSeconds } from '../../../src/training/running/riegel.js';
import { builtInRunning } from '../../../src/training/method/built-in-running.js';
import { costByPrint, heldByPrint } from './race-reference.js';

const { riegel, cost, held, speed, table, marathon } = published;
/** Ten digits are printed of what was computed from a formula. */
const toItsDigits = (found: number, printed: number): void =>
  expect(Math.abs(found / printed - 1)).toBeLessThanOrEqual(1e-9);

describe(`the law of endurance: ${riegel.source.cite}`, () => {
  test.each(riegel.cases)('$in.D1 m in $in.T1 s are $out.T2 s over $in.D2 m', ({ in: { D1, D2, T1 }, out }) => {
    toItsDigits(riegelSeconds({ metres: D1, seconds: T1 }, D2), out.T2);
  });

  test('was found for 3.5 to 230 minutes, the limits of the method', () => {
    expect(riegel.range).toContain('3.5–230 min');
    const { least_seconds, most_seconds } = method.running.equal_times;
    expect([least_seconds, most_seconds]).toEqual([3.5 * 60, 230 * 60]);
  });
});

describe(`oxygen of running: ${cost.source.cite}`, () => {
  test.each(cost.cases)('$in.v m a minute take $out.vo2 ml a kilogram a minute', ({ in: { v }, out }) => {
    toItsDigits(oxygenCost(v), out.vo2);
  });

  test.each(held.cases)('for $in.t minutes $out.F of the greatest is held', ({ in: { t }, out }) => {
    toItsDigits(heldShare(t), out.F);
  });

  test('the share held begins at 1.2883951, is 1 at 11.0304 minutes and ends at 0.8: the note of the print', () => {
    expect(held.note).toContain('F(0)=1.2883951, F(∞)=0.8; F(t)=1 at t≈11.0304 min');
    expect(heldShare(0)).toBeCloseTo(1.2883951, 7);
    expect(heldShare(1e6)).toBeCloseTo(0.8, 12);
    expect(heldShare(11.0304)).toBeCloseTo(1, 6);
  });
});

// The exact inverse only: the regression that the authors print beside it is not ours.
describe(`the speed for an oxygen uptake, exactly: ${speed.source.cite}`, () => {
  const uptakes = speed.cases.map(({ in: given, out }) => ({
    oxygen: given.vo2 ?? (given.vo2max ?? NaN) * (given.fraction ?? NaN),
    ...out,
  }));

  test.each(uptakes)('$oxygen ml a kilogram a minute are $exact m a minute', ({ oxygen, exact, secPerKmExact }) => {
    toItsDigits(speedAt(oxygen), exact);
    if (secPerKmExact !== undefined) toItsDigits(speedOf(speedAt(oxygen)), secPerKmExact);
  });

  test('five of them have their pace beside them, and every one is read', () => {
    expect(uptakes.filter(({ secPerKmExact }) => secPerKmExact !== undefined)).toHaveLength(5);
    expect(uptakes.filter(({ oxygen }) => Number.isNaN(oxygen))).toEqual([]);
  });
});

/*
 * The table is printed with the regression, ours is the exact inverse, so times differ by up to half a minute. As its
 * note says, it is read the other way round: the index that a printed time implies is the printed one within 0.2.
 *
 * Two of the 72 cells ask for 96 ml a kilogram a minute, where the regression is not made (20 to 85): there it is the
 * regression that is off, as the second test shows. Asked for the regression's own speed, ours agrees in every cell.
 */
describe(`the table of times: ${table.source.cite}`, () => {
  const metresOf: Readonly<Record<string, number>> = {
    ...{ '1500': 1500, '3000': 3000, '5000': 5000, '10000': 10_000, '15000': 15_000 },
    ...{ mile: 1609.344, '2mile': 3218.688, half: 21_097.5, marathon: 42_195 },
  };
  const cells = table.cases.flatMap(({ in: { index }, out, printedPrecision }) =>
    Object.entries(out).map(([over, seconds]) => ({
      ...{ index, over, seconds, printedPrecision },
      metres: metresOf[over] ?? NaN,
    })),
  );
  const beyond = cells.filter(({ index, over }) => index === 85 && (over === '1500' || over === 'mile'));
  const within = cells.filter((cell) => !beyond.includes(cell));
  const regression = (oxygen: number): number => 29.54 + 5.000663 * oxygen - 0.007546 * oxygen ** 2;

  test('has nine distances for each of eight indices', () => {
    expect(table.note).toContain('0.2 tolerance on the INDEX');
    expect([within.length, beyond.length]).toEqual([70, 2]);
  });

  test.each(within)('$over in $seconds s implies $index', ({ index, metres, seconds }) => {
    expect(Math.abs(uptakeOf({ metres, seconds }) - index)).toBeLessThanOrEqual(0.2);
  });

  test.each(beyond)('$over in $seconds s is beyond the regression', ({ index, seconds }) => {
    expect(speed.range).toBe('20–85 ml/kg/min');
    expect(index * heldByPrint(seconds / 60)).toBeGreaterThan(95);
  });

  test.each(cells)('$over in $seconds s implies the regression’s $index', (cell) => {
    const { index, metres, seconds, printedPrecision } = cell;
    const share = heldByPrint(seconds / 60);
    const asPrinted = costByPrint(regression(index * share)) / share;
    expect(speed.formula).toContain('v = 29.54 + 5.000663·VO2 − 0.007546·VO2²');
    expect(uptakeOf({ metres, seconds: seconds + printedPrecision })).toBeLessThan(asPrinted);
    expect(uptakeOf({ metres, seconds: seconds - printedPrecision })).toBeGreaterThan(asPrinted);
  });
});

describe(`the marathon of people who have run shorter races: ${marathon.source.cite}`, () => {
  const minutes = method.running.equal_times.marathon_minutes;
  const rules = builtInRunning.equal_times;
  const over = (metres: number, race: { readonly metres: number; readonly seconds: number }) => {
    const found = equalTimes(race, rules).find((each) => each.metres === metres);
    if (!found) throw new Error(`nothing over ${metres} m`);
    return found;
  };

  test('the ten minutes of the print are those of the method', () => {
    expect(marathon.cases.map(({ in: { claim } }) => claim)).toEqual([
      expect.stringContaining('well calibrated up to half-marathon; marathon at least 10 min too fast for half'),
    ]);
    expect(minutes).toBe(10);
  });

  test('the slower end is ten minutes or more after the law of endurance, from every shorter race', () => {
    for (const [metres, slowest] of [
      [1500, 780],
      [5000, 2700],
      [10_000, 5700],
      [21_097.5, 12_600],
      [42_000, 13_700],
    ] as const)
      for (let seconds = slowest * 0.35; seconds <= slowest; seconds += slowest / 40) {
        const found = over(42_195, { metres, seconds });
        expect(found.widened).toBe('marathon');
        expect(found.to - found.riegel).toBeGreaterThanOrEqual(600);
        const widest = Math.max(found.riegel + 600, Math.max(found.riegel, found.uptake) * 1.05);
        expect(found.to - widest).toBeLessThan(60);
      }
  });

  test('a marathon and longer races are as good as they are', () => {
    expect(over(42_195, { metres: 42_195, seconds: 13_000 })).toMatchObject({
      from: 13_000,
      to: 13_000,
      widened: null,
    });
    const longer = over(42_195, { metres: 45_000, seconds: 13_000 });
    expect(longer.widened).toBeNull();
    expect(longer.to - Math.max(longer.riegel, longer.uptake)).toBeLessThan(60);
  });

  test('the half marathon is as good as the equations', () => {
    for (const metres of [3000, 5000, 10_000]) {
      const found = over(21_097.5, { metres, seconds: (metres / 1000) * 280 });
      expect(found.widened).toBeNull();
      expect(found.to - Math.max(found.riegel, found.uptake)).toBeLessThan(60);
    }
  });
});
