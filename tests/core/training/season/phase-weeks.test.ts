import { describe, expect, test } from 'vitest';
import { phaseWeeks, type AskedPhase, type PhaseLengths } from '../../../../src/training/season/phase-weeks.js';

const shared = (share: number, least = 1): AskedPhase => ({ weeks: null, share, least });
const settled = (weeks: number): AskedPhase => ({ weeks, share: 0, least: 1 });
/** Half, three tenths and a fifth of the weeks: common practice, no source. */
const usual = [shared(0.5), shared(0.3), shared(0.2)];

type Row = readonly [
  asked: readonly AskedPhase[],
  room: number,
  weeks: readonly number[],
  rest?: Partial<PhaseLengths>,
];

describe('phaseWeeks(phases, room)', () => {
  const rows: readonly Row[] = [
    // 14 weeks are 7, 4.2 and 2.8: 7, 4 and 3.
    [usual, 14, [7, 4, 3]],
    [usual, 10, [5, 3, 2]],
    [usual, 3, [1, 1, 1]],
    // One more than the least: the claims are 0.5 / 3, 0.3 / 3 and 0.2 / 3.
    [usual, 4, [2, 1, 1]],
    // Then 0.5 / 5 against 0.3 / 3, both 0.1: the first has it.
    [usual, 5, [3, 1, 1]],
    [usual, 6, [3, 2, 1]],
    // Settled lengths are kept; what is left is shared, 8 : 3 of the shares 0.5 and 0.2 among 11.
    [[shared(0.5), settled(3), shared(0.2)], 14, [8, 3, 3]],
    [[settled(4), settled(5), settled(6)], 15, [4, 5, 6]],
    [[settled(0), shared(1)], 6, [0, 6]],
    // A least that the share alone would not reach.
    [[shared(0.9), shared(0.1, 4)], 10, [6, 4]],
    // Shares need not add up to 1: a coach's 3 : 1.
    [[shared(3), shared(1)], 8, [6, 2]],
    [[shared(1)], 0, [0], { missing: 1 }],
    [[settled(0)], 0, [0]],
    // Too few weeks: those next to the event are whole, the first ones are cut.
    [usual, 2, [0, 1, 1], { missing: 1 }],
    [usual, 0, [0, 0, 0], { missing: 3 }],
    [[settled(4), settled(5), settled(6)], 12, [1, 5, 6], { missing: 3 }],
    [[settled(4), settled(5), settled(6)], 8, [0, 2, 6], { missing: 7 }],
    [[shared(0.5, 2), settled(6)], 7, [1, 6], { missing: 1 }],
    // Weeks that nobody asked for are the first phase's.
    [[settled(4), settled(5)], 12, [7, 5], { spare: 3 }],
    [[settled(0), settled(5)], 6, [1, 5], { spare: 1 }],
    [[shared(0, 1), shared(0, 2)], 5, [3, 2], { spare: 2 }],
    [[settled(4), settled(5)], 9, [4, 5]],
  ];

  const whole = rows.map(([asked, room, weeks, rest = {}]) => [asked, room, weeks, rest] as const);
  test.each(whole)('phaseWeeks(%j, %d) is %j, %j', (asked, room, weeks, rest) => {
    expect(phaseWeeks(asked, room)).toEqual({ missing: 0, spare: 0, weeks, ...rest });
  });

  test('adds up to the room, or says what it does not have', () => {
    for (let room = 0; room <= 40; room += 1)
      for (const asked of [usual, [shared(0.5), settled(3), shared(0.2)], [settled(4), settled(5)]]) {
        const { weeks, missing } = phaseWeeks(asked, room);
        const least = asked.reduce((sum, each) => sum + (each.weeks ?? each.least), 0);
        expect(weeks.reduce((sum, each) => sum + each, 0)).toBe(room);
        expect(missing).toBe(Math.max(0, least - room));
      }
  });
});
