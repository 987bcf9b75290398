import { describe, expect, it } from 'vitest';
import { categoryIds } from '../../src/training/method/ids.js';
import type { PhaseId } from '../../src/training/method/ids.js';
import { planOf } from './plan-door.js';
import { rowsOf } from './tables.js';
import { referenceWeek } from './week-reference.js';
import { worked } from './worked.js';

/*
 * What coaches commonly do, worked by hand: common practice, no source.
 * At 3 h in season the intervals (18 minutes) are too small for a session and go to tempo running: assumption.
 */
const weeks = rowsOf(`
phase      | hours | slow           | tempo                | intervals        | cross          | strength       | rounded
build      | 3     | .30*180 = 54   | .15*180 + 18 = 45    | .10*180 - 18 = 0 | .15*180 = 27   | .30*180 = 54   | 55 45 0 25 55
build      | 4     | .30*240 = 72   | .15*240 = 36         | .10*240 = 24     | .15*240 = 36   | .30*240 = 72   | 70 35 25 35 75
build      | 4.5   | .30*270 = 81   | .15*270 = 40.5       | .10*270 = 27     | .15*270 = 40.5 | .30*270 = 81   | 80 40 25 40 85
build      | 5     | .30*300 = 90   | .15*300 = 45         | .10*300 = 30     | .15*300 = 45   | .30*300 = 90   | 90 45 30 45 90
build      | 6     | .30*360 = 108  | .15*360 = 54         | .10*360 = 36     | .15*360 = 54   | .30*360 = 108  | 105 55 35 55 110
off-season | 3     | .25*180 = 45   | .15*180 = 27         | 0                | .20*180 = 36   | .40*180 = 72   | 45 25 0 35 75
off-season | 4     | .25*240 = 60   | .15*240 = 36         | 0                | .20*240 = 48   | .40*240 = 96   | 60 35 0 50 95
off-season | 4.5   | .25*270 = 67.5 | .15*270 = 40.5       | 0                | .20*270 = 54   | .40*270 = 108  | 65 40 0 55 110
off-season | 5     | .25*300 = 75   | .15*300 = 45         | 0                | .20*300 = 60   | .40*300 = 120  | 75 45 0 60 120
off-season | 6     | .25*360 = 90   | .15*360 = 54         | 0                | .20*360 = 72   | .40*360 = 144  | 90 55 0 70 145
`).slice(1);

const person = { level: 'developing', event: 'half-marathon', strengthCap: 120 } as const;

describe('common practice, no source', () => {
  it.each(weeks)('in %s, %s hours', (phase, hours, ...cells) => {
    const rounded = cells.pop();
    const minutes = cells.map(worked);
    const question: typeof person & { readonly phase: PhaseId } = {
      ...person,
      phase: phase === 'build' ? phase : 'off-season',
    };

    const answer = referenceWeek({ ...question, grains: worked(hours ?? '') * 60, grainsPerMinute: 1 });
    expect(categoryIds.map((category) => answer.parts[category] / answer.partsPerMinute)).toEqual(minutes);
    expect(categoryIds.map((category) => answer.rounded[category]).join(' ')).toBe(rounded);

    const plan = planOf({ ...question, hours: Number(hours) });
    categoryIds.forEach((category, index) => {
      expect(plan.minutes[category]).toBeCloseTo(minutes[index] ?? NaN, 9);
    });
    expect(categoryIds.map((category) => plan.rounded[category]).join(' ')).toBe(rounded);
  });

  it('running is 55 % of four hours in season, the rest 45 %', () => {
    const { minutes } = planOf({ ...person, phase: 'base', hours: 4 });
    expect(minutes.slow + minutes.tempo + minutes.intervals).toBeCloseTo(0.55 * 240, 9);
    expect(minutes.cross + minutes.strength).toBeCloseTo(0.45 * 240, 9);
  });

  it('72 minutes of strength can be 30 + 45 or 3 × 25; 36 of cross-training can be 30', () => {
    const { options } = planOf({ ...person, phase: 'build', hours: 4 });
    expect(options.strength).toContainEqual([30, 45]);
    expect(options.strength).toContainEqual([25, 25, 25]);
    expect(options.cross).toContainEqual([30]);
  });

  it('strength is capped at 90 to 120 minutes above six hours, not at six, and slow running gets what is freed', () => {
    const strengthAndSlow = (hours: number, strengthCap: number) => {
      const { minutes } = planOf({
        ...person,
        phase: 'off-season',
        level: 'elite',
        event: 'longer',
        hours,
        strengthCap,
      });
      return [minutes.strength, minutes.slow].map((value) => Math.round(value * 1e9) / 1e9);
    };
    expect(strengthAndSlow(6, 90)).toEqual([144, 90]);
    expect(strengthAndSlow(6.25, 90)).toEqual([90, 93.75 + 60]);
    expect(strengthAndSlow(6.25, 120)).toEqual([120, 93.75 + 30]);
  });

  it('a category folded away is offered every second week, with the minutes of two weeks', () => {
    const offers = (hours: number) =>
      planOf({ ...person, phase: 'build', hours })
        .notices.filter(({ code }) => code === 'every-second-week')
        .map(({ category, values }) => ({ category, session: values['session'] }));
    // 2 × 19.5 = 39, to the nearest 5
    expect(offers(3.25)).toEqual([{ category: 'intervals', session: 40 }]);
    // 2 × 9 = 18, but no session is shorter than 20; 2 × 13.5 = 27
    expect(offers(1.5)).toEqual([
      { category: 'intervals', session: 20 },
      { category: 'cross', session: 25 },
    ]);
  });

  it('a new runner has the off-season split in every phase', () => {
    for (const phase of ['off-season', 'base', 'build', 'peak', 'taper', 'recovery'] as const) {
      const { split } = planOf({ ...person, phase, level: 'new', hours: 4 });
      expect(split.shares).toEqual({ slow: 0.25, tempo: 0.15, intervals: 0, cross: 0.2, strength: 0.4 });
    }
  });
});
