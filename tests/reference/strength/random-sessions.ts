import fc from 'fast-check';
import { builtInStrength } from '../../../src/training/method/built-in-strength.js';
import { patternIds, roleIds, type Dose, type StrengthRules } from '../../../src/training/method/strength-rules.js';
import type { Candidate } from '../../../src/training/strength/candidates.js';
import type { Filling } from '../../../src/training/strength/fill-session.js';

const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

const doses: fc.Arbitrary<Dose> = fc.record({
  sets: fc.tuple(whole(1, 4), whole(0, 3)).map(([least, more]) => ({ least, most: least + more })),
  repetitions: whole(1, 15),
  in_hand: fc.constantFrom(null, 0, 2, 3),
  seconds: whole(5, 60),
  rest: whole(0, 240),
  effort: whole(0, 10),
});

const areas = ['legs', 'calves', 'hips', 'trunk', 'upper'] as const;

/** A movement for one pattern, whatever it is like. */
const candidate = (pattern: Candidate['pattern']): fc.Arbitrary<Candidate> =>
  fc
    .record({
      role: fc.constantFrom(...roleIds),
      area: fc.constantFrom(...areas),
      flags: fc.tuple(fc.boolean(), fc.boolean()),
      dose: doses,
      spared: fc.boolean(),
    })
    .map(({ role, area, flags: [each_side, held], dose, spared }) => ({
      ...{ pattern, role, area, dose },
      mostSets: spared ? dose.sets.least : dose.sets.most,
      movement: {
        id: `a-${pattern}`,
        name: 'a movement',
        how: 'so',
        pattern,
        grade: 1,
        equipment: [],
        each_side,
        held,
        loaded: false,
      },
    }));

const easyPart = fc.record({ minutes: whole(0, 20), most_share: whole(0, 40).map((per) => per / 100) });

const times: fc.Arbitrary<StrengthRules['time']> = fc.oneof(
  fc.constant(builtInStrength.time),
  fc
    .record({
      warm_up: easyPart,
      cool_down: easyPart,
      seconds_a_repetition: fc.constantFrom(1, 2.5, 3, 6),
      change_over: whole(0, 120),
      between: whole(0, 120),
    })
    .map((time) => ({ ...builtInStrength.time, ...time })),
);

/** Sessions of every kind, those that no method would have included. */
export const fillings: fc.Arbitrary<Filling> = fc.shuffledSubarray([...patternIds]).chain((patterns) =>
  fc.record({
    minutes: fc.oneof(whole(5, 60), whole(1, 180)),
    candidates: fc.tuple(...patterns.map(candidate)),
    order: fc.shuffledSubarray([...roleIds], { minLength: roleIds.length }),
    pairs: fc.boolean(),
    time: times,
  }),
);
