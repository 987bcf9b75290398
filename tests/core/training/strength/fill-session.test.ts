import { describe, expect, test } from 'vitest';
import type { PatternId, RoleId } from '../../../../src/training/method/strength-rules.js';
import type { Candidate } from '../../../../src/training/strength/candidates.js';
import { fillSession } from '../../../../src/training/strength/fill-session.js';
import type { Area } from '../../../../src/training/strength/pair-up.js';
import { movementOf } from './movements.js';

const founded = { status: 'assumption', reason: 'a test' } as const;
const none = { minutes: 0, most_share: 0 };
const time = { warm_up: none, cool_down: none, seconds_a_repetition: 3, change_over: 60, between: 10, ...founded };

/** Two to three sets of ten repetitions, 30 seconds, with 90 of rest: 150 seconds or 270. */
const lift = (pattern: PatternId, [role, area]: readonly [RoleId, Area] = ['main', 'legs']): Candidate => ({
  ...{ pattern, role, area, mostSets: 3, movement: movementOf(`a-${pattern}`, pattern) },
  dose: { sets: { least: 2, most: 3 }, repetitions: 10, in_hand: 2, seconds: 30, rest: 90, effort: 7 },
});
const two = [lift('squat'), lift('hinge')];
const order = ['jump', 'main', 'calf', 'support'] as const;
const fill = (minutes: number, candidates: readonly Candidate[], pairs = false) => {
  const { blocks, seconds, leftOut } = fillSession({ minutes, candidates, order, pairs, time });
  return {
    blocks: blocks.map(({ turn }) => turn.map(({ candidate, sets }) => `${candidate.pattern} ${sets}`).join(' + ')),
    seconds,
    leftOut: leftOut.map(({ pattern }) => pattern),
  };
};

describe('a session', () => {
  test.each([
    // 150 + 60 + 150 is six minutes, 270 + 60 + 150 is eight, 270 + 60 + 270 is ten; one lift is 2.5 or 4.5 minutes.
    [2, [], 0, ['squat', 'hinge']],
    [3, ['squat 2'], 150, ['hinge']],
    [4, ['squat 2'], 150, ['hinge']],
    [5, ['squat 3'], 270, ['hinge']],
    [6, ['squat 2', 'hinge 2'], 360, []],
    [7, ['squat 2', 'hinge 2'], 360, []],
    [8, ['squat 3', 'hinge 2'], 480, []],
    [9, ['squat 3', 'hinge 2'], 480, []],
    [10, ['squat 3', 'hinge 3'], 600, []],
    [60, ['squat 3', 'hinge 3'], 600, []],
  ])('of %d minutes has %o', (minutes, blocks, seconds, leftOut) => {
    expect(fill(minutes, two)).toEqual({ blocks, seconds, leftOut });
  });

  test('is done in the order of roles, whatever is more important', () => {
    const jump = lift('jump', ['jump', 'legs']);
    expect(fill(60, [lift('trunk', ['support', 'trunk']), lift('squat'), jump]).blocks).toEqual([
      'jump 3',
      'squat 3',
      'trunk 3',
    ]);
  });

  test('saves time where two take turns', () => {
    // A turn is 30 + 10 + 30 with 50 of rest after it (90 − 30 − 10): 70 + 50 + 70, and 70 + 50 more for a third.
    const candidates = [lift('squat'), lift('trunk', ['support', 'trunk'])];
    expect(fill(60, candidates, true)).toEqual({ blocks: ['squat 3 + trunk 3'], seconds: 310, leftOut: [] });
    expect(fill(4, candidates, true)).toEqual({ blocks: ['squat 2 + trunk 2'], seconds: 190, leftOut: [] });
    expect(fill(60, candidates)).toEqual({ blocks: ['squat 3', 'trunk 3'], seconds: 600, leftOut: [] });
    // For one part of the body there are no turns.
    expect(fill(60, two, true).blocks).toEqual(['squat 3', 'hinge 3']);
  });

  test('that takes an unimportant movement takes every one that is more important', () => {
    const long = { ...lift('single-leg'), dose: { ...lift('single-leg').dose, repetitions: 40 } };
    // The squat fits, the long one does not: then neither does the short one after it.
    expect(fill(5, [lift('squat'), long, lift('push', ['support', 'upper'])]).leftOut).toEqual(['single-leg', 'push']);
  });

  test('in which nothing fits has no warm-up either', () => {
    const easy = { minutes: 5, most_share: 0.2 };
    const filled = fillSession({
      minutes: 3,
      candidates: two,
      order,
      pairs: true,
      time: { ...time, warm_up: { minutes: 1, most_share: 0.4 }, cool_down: easy },
    });
    expect(filled).toMatchObject({ warmUp: 0, coolDown: 0, blocks: [], seconds: 0 });
  });
});
