import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../src/training/strength/candidates.js';
import {
  fillSession,
  type FilledSession,
  type FilledSets,
  type Filling,
} from '../../../src/training/strength/fill-session.js';
import { patience, runs } from '../runs.js';
import { fillings } from './random-sessions.js';
import { timeline, type Sets } from './timeline.js';

const setsOf = ({ blocks }: FilledSession): readonly FilledSets[] =>
  blocks.flatMap(({ turn }): readonly FilledSets[] => turn);
const patternsOf = (candidates: readonly Candidate[]): readonly string[] => candidates.map(({ pattern }) => pattern);
const filledPatterns = (filled: FilledSession): readonly string[] =>
  patternsOf(setsOf(filled).map(({ candidate }) => candidate));

/** A set and its rest, counted by hand. */
function sets({ candidate: { pattern, movement, dose }, sets: count }: FilledSets, { time }: Filling): Sets {
  const side = movement.held ? dose.seconds : dose.repetitions * time.seconds_a_repetition;
  return { name: pattern, sets: count, work: movement.each_side ? side + side : side, rest: dose.rest };
}

/** Seconds of a session with just these sets. */
function secondsOf(chosen: readonly FilledSets[], filling: Filling): number {
  const candidates = chosen.map(({ candidate, sets: count }) => ({
    ...candidate,
    dose: { ...candidate.dose, sets: { least: count, most: count } },
    mostSets: count,
  }));
  const { blocks, leftOut } = fillSession({ ...filling, candidates, minutes: 1440 });
  expect(leftOut).toEqual([]);
  return blocks.reduce((sum, { seconds }) => sum + seconds, 0);
}

/** What a session leaves for its movements. */
const room = (filled: FilledSession, { minutes }: Filling): number => 60 * minutes - filled.warmUp - filled.coolDown;

const check = (holds: (filling: Filling, filled: FilledSession) => void): void => {
  fc.assert(
    fc.property(fillings, (filling) => {
      holds(filling, fillSession(filling));
    }),
    runs(400, 40_000),
  );
};

describe('a session of any kind', () => {
  test(
    'fits into its minutes, and adds up',
    () => {
      check(({ minutes, time }, filled) => {
        const { warmUp, blocks, coolDown, seconds } = filled;
        expect(seconds).toBeLessThanOrEqual(60 * minutes);
        expect(seconds).toBeCloseTo(warmUp + blocks.reduce((sum, block) => sum + block.seconds, 0) + coolDown, 6);
        for (const [easy, part] of [
          [warmUp, time.warm_up],
          [coolDown, time.cool_down],
        ] as const) {
          expect(easy % 60).toBe(0);
          expect(easy).toBeGreaterThanOrEqual(0);
          expect(easy).toBeLessThanOrEqual(Math.min(60 * part.minutes, 60 * part.most_share * minutes + 1e-6));
        }
      });
    },
    patience,
  );

  test(
    'has every pattern in a block or left out, once; what is left out is less important than all it has',
    () => {
      check(({ candidates }, filled) => {
        const used = filledPatterns(filled);
        expect([...used, ...patternsOf(filled.leftOut)].sort()).toEqual([...patternsOf(candidates)].sort());
        expect(patternsOf(filled.leftOut)).toEqual(patternsOf(candidates).slice(used.length));
      });
    },
    patience,
  );

  test(
    'has sets between the least and the most',
    () => {
      check((_, filled) => {
        for (const { candidate, sets: count } of setsOf(filled)) {
          expect(count).toBeGreaterThanOrEqual(candidate.dose.sets.least);
          expect(count).toBeLessThanOrEqual(candidate.mostSets);
        }
      });
    },
    patience,
  );

  test(
    'goes by the order of roles, but for who was taken into a pair',
    () => {
      check(({ order, candidates }, { blocks }) => {
        const place = ({ candidate }: FilledSets): number =>
          order.indexOf(candidate.role) * candidates.length + candidates.indexOf(candidate);
        const firsts = blocks.map(({ turn: [first] }) => place(first));
        expect(firsts).toEqual([...firsts].sort((one, other) => one - other));
        for (const {
          turn: [first, second],
        } of blocks)
          if (second) expect(place(first)).toBeLessThan(place(second));
      });
    },
    patience,
  );

  test(
    'has no pair of one part of the body, none with a jump, and none where movements do not take turns',
    () => {
      check(({ pairs }, { blocks }) => {
        for (const { turn } of blocks) {
          const [first, second] = turn;
          if (!second) continue;
          expect(pairs).toBe(true);
          expect(first.candidate.area).not.toBe(second.candidate.area);
          expect(turn.map(({ candidate }) => candidate.role)).not.toContain('jump');
        }
      });
    },
    patience,
  );

  test(
    'by the watch takes as long as it says, and gives every movement its own rest',
    () => {
      check((filling, { blocks }) => {
        const { time } = filling;
        blocks.forEach(({ turn, rest, seconds }, index) => {
          const exercises = turn.map((each) => sets(each, filling));
          const clock = timeline(exercises, rest, time.between);
          const leadOver = index === blocks.length - 1 ? 0 : time.change_over;
          expect((clock.at(-1)?.to ?? NaN) + leadOver).toBeCloseTo(seconds, 6);
          for (const { name, sets: count, rest: own } of exercises) {
            const mine = clock.filter((set) => set.name === name);
            expect(mine.length).toBe(count);
            mine.slice(1).forEach(({ from }, before) => {
              expect(from - (mine[before]?.to ?? NaN)).toBeGreaterThanOrEqual(own - 1e-6);
            });
          }
        });
      });
    },
    patience,
  );

  test(
    'leaves out only what would not have fitted with its least sets',
    () => {
      check((filling, filled) => {
        const { candidates } = filling;
        const used = candidates.length - filled.leftOut.length;
        const { warmUp, coolDown } = fillSession({ ...filling, candidates: [] });
        expect([warmUp, coolDown]).toEqual([0, 0]);
        const atLeast = candidates.map((candidate) => ({ candidate, sets: candidate.dose.sets.least }));
        if (used === 0) return;
        for (let count = used + 1; count <= candidates.length; count += 1)
          expect(secondsOf(atLeast.slice(0, count), filling)).toBeGreaterThan(room(filled, filling) - 1e-6);
      });
    },
    patience,
  );

  test(
    'has no room for one set more of anything',
    () => {
      check((filling, filled) => {
        const chosen = filling.candidates.flatMap((each) =>
          setsOf(filled).filter(({ candidate }) => candidate === each),
        );
        chosen.forEach(({ candidate, sets: count }, index) => {
          if (count === candidate.mostSets) return;
          const more = chosen.map((each, at) => (at === index ? { candidate, sets: count + 1 } : each));
          expect(secondsOf(more, filling)).toBeGreaterThan(room(filled, filling) - 1e-6);
        });
      });
    },
    patience,
  );

  test(
    'with a minute more has never a movement less, and never less time for them',
    () => {
      check((filling, filled) => {
        const longer = fillSession({ ...filling, minutes: filling.minutes + 1 });
        const used = filledPatterns(longer);
        expect(filledPatterns(filled).filter((pattern) => !used.includes(pattern))).toEqual([]);
        if (setsOf(filled).length > 0)
          expect(room(longer, { ...filling, minutes: filling.minutes + 1 })).toBeGreaterThanOrEqual(
            room(filled, filling),
          );
      });
    },
    patience,
  );
});
