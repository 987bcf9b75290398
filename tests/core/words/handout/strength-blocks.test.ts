import { describe, expect, test } from 'vitest';
import type { Exercise, StrengthSession } from '../../../../src/plan/strength/document.js';
import { strengthBlocks, strengthLines } from '../../../../src/words/handout/strength-blocks.js';
import { planner } from '../planned.js';
import { english, german } from '../sheet/languages.js';

const { method } = planner;

const squat: Exercise = {
  ...{ movement: 'goblet-squat', pattern: 'squat', role: 'main', sets: 3, wishedSets: 3 },
  ...{ repetitions: 8, seconds: null, eachSide: false, effort: 7, inHand: 3, rest: 90 },
  ...{ share: 0.7, kilograms: null, next: null },
};
const plank: Exercise = {
  ...squat,
  ...{ movement: 'plank', pattern: 'trunk', role: 'support', sets: 2, repetitions: null, seconds: 30 },
  ...{ effort: 5, inHand: null, share: null },
};

/** The words do not look at what else a session has. */
const session: StrengthSession = {
  ...{ minutes: 30, plannedMinutes: 30, day: 1, legs: 'full', seconds: 1500, spare: 300, leftOut: [], landings: 0 },
  warmUp: 300,
  blocks: [
    { exercises: [squat], rest: 90, seconds: 500 },
    { exercises: [{ ...squat, kilograms: 12.5, next: { least: 15, most: 15 } }, plank], rest: 60, seconds: 400 },
  ],
  coolDown: 150,
};

describe('the sets of a strength session, to be followed without the planner', () => {
  test('are lines, from the warm-up to the cool-down', () => {
    expect(strengthLines(english, strengthBlocks(english, method, session))).toEqual([
      'Warm-up 5 minutes',
      'Goblet squat 3 × 8, effort 7 of 10; 90 seconds of rest',
      'Goblet squat 3 × 8, 12.5 kg, effort 7 of 10 + Plank 2 × 30 seconds, effort 5 of 10; in turn, 60 seconds of rest after both',
      'Cool-down 2.5 minutes',
    ]);
  });

  test('are lines in German', () => {
    expect(strengthLines(german, strengthBlocks(german, method, session)).slice(0, 3)).toEqual([
      'Aufwärmen 5 Minuten',
      expect.stringMatching(/ 3 × 8, Anstrengung 7 von 10; 90 Sekunden Pause$/),
      expect.stringMatching(
        / 3 × 8, 12,5 kg, Anstrengung 7 von 10 \+ Unterarmstütz 2 × 30 Sekunden, Anstrengung 5 von 10; im Wechsel, nach beiden 60 Sekunden Pause$/,
      ),
    ]);
  });

  test('are parts for a table, each apart', () => {
    const [warmUp, first] = strengthBlocks(english, method, session);
    expect([warmUp, first]).toEqual([
      { exercises: [{ name: 'Warm-up', sets: '5 minutes', effort: '' }], rest: '' },
      { exercises: [{ name: 'Goblet squat', sets: '3 × 8', effort: 'effort 7 of 10' }], rest: '90 seconds of rest' },
    ]);
  });

  test('have no warm-up and no cool-down where there is none', () => {
    const bare = { ...session, warmUp: 0, coolDown: 0 };
    expect(strengthBlocks(english, method, bare)).toEqual(strengthBlocks(english, method, session).slice(1, -1));
    expect(strengthLines(english, strengthBlocks(english, method, { ...bare, blocks: [] }))).toEqual([]);
  });
});
