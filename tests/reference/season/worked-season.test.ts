import { describe, expect, test } from 'vitest';
import { categoryIds, type PhaseId } from '../../../src/training/method/ids.js';
import { rowsOf } from '../tables.js';
import { referenceWeek } from '../week-reference.js';
import { worked } from '../worked.js';
import { seasonOf } from './season-door.js';

/*
 * A half marathon on Sunday 11 April 2027, sixteen weeks, from 4 hours a week: worked out by hand.
 *
 * The most is 1.5 × 4 h = 6 h, 360 minutes. 14 weeks come before the taper of 2: half of them in base, 0.3 in build, 0.2
 * in peak are 7, 4.2 and 2.8, by Sainte-Laguë 7, 4 and 3. Every fourth week is easier by 30 %, but in the taper and after.
 * Hours rise in base and build: in the weeks 2, 3, 5, 6, 7, 9, 10 and 11, eight of them. Each adds the n-th root of what
 * is left to the most, n being the weeks that rise from it on, but 10 % at most; up to the next whole five. Easier
 * weeks, taper and rest are rounded to the nearest five. The taper keeps r and r² of the 360 minutes before it, with
 * r + r² = 2 × 0.5: r = (√5 − 1) / 2. Rest is half of what was before the taper.
 *
 * `root`: what is left to the most, and which root of it is taken. `factor`: what the base is multiplied with, to six
 * digits. `minutes`: of slow running, tempo running, intervals, cross-training and strength, by the shares of the phase
 * (30, 15, 10, 15 and 30 %; in the taper 45, 15, 15, 10 and 15 %; at rest 40, 0, 0, 35 and 25 %), in fives: each its
 * whole fives, and what is left of them one after the other to the largest minutes / (2 × fives + 1); at a tie strength,
 * slow, tempo, intervals, cross. So 330 minutes are 19.8, 9.9, 6.6, 9.9 and 19.8 fives, and intervals have none of the four left. In week 4,
 * 19 minutes of intervals are too short and go to tempo; in week 16, 14 of cross-training go to slow. Strength never reaches its cap of 120 minutes; in the taper 70 would keep it up, and it has less.
 */
const table = `
week | start      | iso      | phase    | why      | base | root        | factor   | product   | hours | minutes
1    | 2026-12-21 | 2026-W52 | base     | start    | 240  |             | 1        | 240       | 240   | 70 35 25 35 75
2    | 2026-12-28 | 2026-W53 | base     | rise     | 240  | 360/240 ^ 8 | 1.051990 | 252.47760 | 255   | 75 40 25 40 75
3    | 2027-01-04 | 2027-W01 | base     | rise     | 255  | 360/255 ^ 7 | 1.050497 | 267.87673 | 270   | 80 40 25 40 85
4    | 2027-01-11 | 2027-W02 | base     | easier   | 270  |             | 0.7      | 189       | 190   | 55 50 0 30 55
5    | 2027-01-18 | 2027-W03 | base     | rise     | 270  | 360/270 ^ 6 | 1.049115 | 283.26105 | 285   | 85 45 30 40 85
6    | 2027-01-25 | 2027-W04 | base     | rise     | 285  | 360/285 ^ 5 | 1.047832 | 298.63212 | 300   | 90 45 30 45 90
7    | 2027-02-01 | 2027-W05 | base     | rise     | 300  | 360/300 ^ 4 | 1.046635 | 313.99050 | 315   | 95 50 30 45 95
8    | 2027-02-08 | 2027-W06 | build    | easier   | 315  |             | 0.7      | 220.5     | 220   | 65 35 20 35 65
9    | 2027-02-15 | 2027-W07 | build    | rise     | 315  | 360/315 ^ 3 | 1.045516 | 329.33754 | 330   | 100 50 30 50 100
10   | 2027-02-22 | 2027-W08 | build    | rise     | 330  | 360/330 ^ 2 | 1.044466 | 344.67378 | 345   | 105 50 35 50 105
11   | 2027-03-01 | 2027-W09 | build    | rise     | 345  | 360/345 ^ 1 | 1.043478 | 359.99991 | 360   | 105 55 35 55 110
12   | 2027-03-08 | 2027-W10 | peak     | easier   | 360  |             | 0.7      | 252       | 250   | 75 40 25 35 75
13   | 2027-03-15 | 2027-W11 | peak     | hold     | 360  |             | 1        | 360       | 360   | 105 55 35 55 110
14   | 2027-03-22 | 2027-W12 | peak     | hold     | 360  |             | 1        | 360       | 360   | 105 55 35 55 110
15   | 2027-03-29 | 2027-W13 | taper    | taper    | 360  | r           | 0.618034 | 222.49224 | 220   | 100 35 30 20 35
16   | 2027-04-05 | 2027-W14 | taper    | taper    | 360  | r * r       | 0.381966 | 137.50776 | 140   | 80 20 20 0 20
17   | 2027-04-12 | 2027-W15 | recovery | recovery | 360  |             | 0.5      | 180       | 180   | 70 0 0 65 45
18   | 2027-04-19 | 2027-W16 | recovery | recovery | 360  |             | 0.5      | 180       | 180   | 70 0 0 65 45
`;

const [, ...rows] = rowsOf(table);
const golden = (Math.sqrt(5) - 1) / 2;
const season = seasonOf(
  { date: '2027-04-11', weeks: 16 },
  { hours: 4, phase: 'off-season', level: 'developing', event: 'half-marathon', strengthCap: 120 },
);

describe.each(rows)('week %s of the season by hand, %s', (...row) => {
  const [number, start, iso, phase, why, base = '', root = '', factor = '', product = '', hours = '', minutes] = row;
  const week = season.weeks[Number(number) - 1];

  test('is as it is worked out', () => {
    expect({
      ...{ number: week?.number, start: week?.start, iso: week?.week, phase: week?.phase, why: week?.why.reason },
      ...{ base: Math.round((week?.why.base ?? NaN) * 60), minutes: Math.round((week?.hours ?? NaN) * 60) },
    }).toEqual({ number: Number(number), start, iso, phase, why, base: Number(base), minutes: Number(hours) });
    expect(categoryIds.map((id) => week?.rounded[id]).join(' ')).toBe(minutes);
  });

  test('has an arithmetic that is right', () => {
    expect(Number(factor)).toBeCloseTo(factorOf(root, Number(factor)), 6);
    expect(Number(base) * Number(factor)).toBeCloseTo(Number(product), 4);
    const isRise = why === 'rise';
    // The last rise ends at the most, not five minutes over it: six digits are not exact.
    const fives = (Number(product) - (isRise ? 1e-3 : 0)) / 5;
    expect(5 * (isRise ? Math.ceil(fives) : Math.round(fives))).toBe(Number(hours));
    if (isRise) expect(Number(hours)).toBeLessThanOrEqual(1.1 * Number(base) + 1e-9);
  });

  test('has minutes that the reference divides alike', () => {
    const question = { grains: Number(hours), grainsPerMinute: 1, strengthCap: 120, level: 'developing' } as const;
    const { rounded } = referenceWeek({
      ...question,
      ...{ phase: week?.phase ?? 'base', event: 'half-marathon' },
      ...(week?.phase === 'taper' ? { strengthUpkeep: 70 } : {}),
    });
    expect(categoryIds.map((id) => rounded[id]).join(' ')).toBe(minutes);
  });
});

/** `360/240 ^ 8` is the eighth root of 1.5; without a root the factor is the one given. */
function factorOf(root: string, given: number): number {
  if (root === 'r') return golden;
  if (root === 'r * r') return golden * golden;
  const [ratio = '', degree] = root.split(' ^ ');
  return degree === undefined ? given : worked(ratio) ** (1 / Number(degree));
}

describe('the season by hand', () => {
  test('has 18 weeks, and phases of 7, 4 and 3', () => {
    const phases: readonly { readonly phase: PhaseId; readonly weeks: number }[] = [
      { phase: 'base', weeks: 7 },
      { phase: 'build', weeks: 4 },
      { phase: 'peak', weeks: 3 },
    ];
    expect(season.phases).toEqual(phases);
    expect(season.weeks).toHaveLength(rows.length);
  });

  test('never rises by more than a tenth above the four weeks before, and loses half in the taper', () => {
    const hours = season.weeks.map((week) => week.hours * 60);
    hours.slice(1).forEach((minutes, index) => {
      const before = hours.slice(Math.max(0, index - 3), index + 1);
      expect(minutes).toBeLessThanOrEqual(1.1 * Math.max(...before) + 1e-9);
    });
    expect((hours[14] ?? NaN) + (hours[15] ?? NaN)).toBe(360); // half of twice 360
  });

  test('has its event in the last week of the taper, and nothing to mind', () => {
    expect(season.weeks[15]?.events).toEqual([{ date: '2027-04-11', event: 'half-marathon', isMain: true }]);
    expect(season.notices).toEqual([]);
  });
});
