import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { Exercise, PlanStrength, StrengthSession } from '../../../src/plan/strength/document.js';
import { strengthPlanSchema } from '../../../src/plan/strength/strength-plan-schema.js';
import type { DaySession } from '../../../src/plan/week/wishes.js';
import { builtInStrength } from '../../../src/training/method/built-in-strength.js';
import { levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { equipmentIds, patternIds } from '../../../src/training/method/strength-rules.js';
import { builtInMovements } from '../../../src/training/strength/built-in-movements.js';
import { patience, runs } from '../runs.js';
import { strengthOf, type MadeUpWeek } from './strength-door.js';

const plain = { noNullPrototype: true } as const;
const minutes = fc.integer({ min: 3, max: 18 }).map((steps) => 5 * steps);
const session = (category: DaySession['category']): fc.Arbitrary<DaySession> =>
  minutes.map((each) => ({ category, minutes: each }));
const maybe = (category: DaySession['category']): fc.Arbitrary<readonly DaySession[]> =>
  fc.option(session(category), { nil: undefined }).map((each) => (each ? [each] : []));

/** Up to three strength sessions on their days, and any runs. */
const days: fc.Arbitrary<readonly (readonly DaySession[])[]> = fc
  .tuple(
    fc.array(fc.tuple(maybe('intervals'), maybe('tempo'), maybe('slow')), { minLength: 7, maxLength: 7 }),
    fc.uniqueArray(fc.nat(6), { maxLength: 3 }),
    fc.array(minutes, { minLength: 3, maxLength: 3 }),
  )
  .map(([runsOf, strengthDays, lengths]) =>
    runsOf.map((sessions, day) => {
      const own = strengthDays.indexOf(day);
      const strength: DaySession[] = own < 0 ? [] : [{ category: 'strength', minutes: lengths[own] ?? NaN }];
      return [...sessions.flat(), ...strength];
    }),
  );

const made: fc.Arbitrary<MadeUpWeek> = fc.record({
  phase: fc.constantFrom(...phaseIds),
  level: fc.constantFrom(...levelIds),
  days,
});

const ids = (pattern: string): string[] =>
  builtInMovements.filter((each) => each.pattern === pattern).map(({ id }) => id);
const loaded = builtInMovements.filter((each) => each.loaded).map(({ id }) => id);
const wishes = fc.record(
  {
    equipment: fc.subarray([...equipmentIds]),
    minutes: fc.option(fc.integer({ min: 5, max: 180 })),
    forms: fc.record(
      Object.fromEntries(patternIds.map((pattern) => [pattern, fc.constantFrom(...ids(pattern))] as const)),
      { requiredKeys: [], ...plain },
    ),
    lifted: fc.subarray(loaded).chain((chosen) =>
      fc.tuple(
        ...chosen.map((movement) =>
          fc.record(
            {
              movement: fc.constant(movement),
              kilograms: fc.integer({ min: 1, max: 300 }),
              repetitions: fc.integer({ min: 1, max: 10 }),
            },
            plain,
          ),
        ),
      ),
    ),
    age: fc.option(fc.integer({ min: 5, max: 110 })),
  },
  { requiredKeys: [], ...plain },
);

const exercises = ({ blocks }: StrengthSession): readonly Exercise[] => blocks.flatMap((block) => block.exercises);
const check = (holds: (strength: PlanStrength, week: readonly (readonly DaySession[])[]) => void): void => {
  fc.assert(
    fc.property(made, wishes, (week, wished) => {
      holds(strengthOf(wished, week), week.days ?? []);
    }),
    runs(300, 30_000),
  );
};

/** True where a day has a hard run; told from the words of the rule. */
function isHard(week: readonly (readonly DaySession[])[], day: number): boolean {
  const today = week[day % 7] ?? [];
  if (today.some(({ category }) => category === 'tempo' || category === 'intervals')) return true;
  const slow = today.find(({ category }) => category === 'slow');
  const others = week
    .filter((each) => each !== today)
    .flat()
    .filter(({ category }) => category === 'slow');
  return slow !== undefined && others.every((each) => each.minutes < slow.minutes);
}

describe('the strength of any week by the built-in method', () => {
  test(
    'has the shape that is published',
    () => {
      const schema = strengthPlanSchema(v.record(v.string(), v.number()));
      check((strength) => {
        const result = v.safeParse(schema, JSON.parse(JSON.stringify(strength)));
        expect(result.issues).toBeUndefined();
      });
    },
    patience,
  );

  test(
    'has a session for each that is planned, which fits',
    () => {
      check(({ sessions, wishes: { minutes: given } }, week) => {
        const planned = week.flatMap((day, index) =>
          day.filter(({ category }) => category === 'strength').map((each) => [index, each.minutes]),
        );
        expect(sessions.map(({ day, plannedMinutes }) => [day, plannedMinutes])).toEqual(planned);
        for (const each of sessions) {
          expect(each.minutes).toBe(given ?? each.plannedMinutes);
          expect(each.spare).toBeGreaterThanOrEqual(0);
          expect(each.seconds + each.spare).toBeCloseTo(60 * each.minutes, 6);
        }
      });
    },
    patience,
  );

  test(
    'spares legs on the day of a hard run and on the day before, the week being a circle',
    () => {
      check(({ sessions, notices }, week) => {
        sessions.forEach(({ day, legs, ...each }, index) => {
          const isSpared = isHard(week, day ?? NaN) || isHard(week, (day ?? NaN) + 1);
          expect(legs).toBe(isSpared ? 'spared' : 'full');
          expect(notices.some(({ code, session: about }) => code === 'legs-spared' && about === index)).toBe(isSpared);
          if (!isSpared) return;
          expect(each.landings).toBe(0);
          const done = exercises({ day, legs, ...each });
          expect(done.map(({ role }) => role)).not.toContain('jump');
          for (const { role, sets, wishedSets } of done) if (role === 'main') expect(sets).toBe(wishedSets);
        });
      });
    },
    patience,
  );

  test(
    'has every pattern of a list in a block or left out, once',
    () => {
      check(({ sessions, stage }) => {
        const doses = builtInStrength.stages.find(({ id }) => id === stage)?.doses;
        const jumpless = (patterns: readonly string[], legs: string): readonly string[] =>
          doses?.jump === null || legs === 'spared' ? patterns.filter((pattern) => pattern !== 'jump') : patterns;
        for (const each of sessions) {
          const found = [...exercises(each), ...each.leftOut].map(({ pattern }) => pattern).sort();
          const lists = builtInStrength.sessions.map((list) => [...jumpless(list, each.legs)].sort());
          expect(lists).toContainEqual(found);
        }
      });
    },
    patience,
  );

  test(
    'has no two sessions that are copies',
    () => {
      check(({ sessions }) => {
        // Where nothing fits there is nothing that could be a copy.
        const filled = sessions.filter(({ blocks }) => blocks.length > 0);
        const contents = filled.map((each) =>
          JSON.stringify(exercises(each).map(({ movement, sets }) => [movement, sets])),
        );
        expect(new Set(contents).size).toBe(contents.length);
      });
    },
    patience,
  );

  test(
    'uses only what is at hand, and wished forms where it can',
    () => {
      check(({ sessions, wishes: { equipment, forms } }) => {
        for (const { movement, pattern } of sessions.flatMap((each) => [...exercises(each), ...each.leftOut])) {
          const used = builtInMovements.find(({ id }) => id === movement);
          const wished = builtInMovements.find(({ id }) => id === forms[pattern]);
          expect(used?.pattern).toBe(pattern);
          expect(used?.equipment.filter((each) => !equipment.includes(each))).toEqual([]);
          if (wished?.equipment.every((each) => equipment.includes(each))) expect(movement).toBe(wished.id);
        }
      });
    },
    patience,
  );

  test(
    'has weights for movements with a set of their own: whole steps, not above the share, and more to go on with',
    () => {
      const { step } = builtInStrength.maximum;
      check(({ sessions, maxima }) => {
        for (const { movement, share, kilograms, next } of sessions.flatMap(exercises)) {
          const maximum = maxima.find((each) => each.movement === movement);
          expect(kilograms === null).toBe(!maximum || share === null);
          expect(next === null).toBe(kilograms === null);
          if (!maximum || share === null || kilograms === null || next === null) continue;
          expect(kilograms / step).toBeCloseTo(Math.round(kilograms / step), 9);
          expect(kilograms).toBeLessThanOrEqual(maximum.used * share + 1e-9);
          expect(kilograms + step).toBeGreaterThan(maximum.used * share - 1e-9);
          expect(next.least).toBeGreaterThanOrEqual(kilograms + step);
          expect(next.most).toBeGreaterThanOrEqual(next.least);
          if (next.most > next.least) expect(next.most).toBeLessThanOrEqual(kilograms * 1.1 + 1e-9);
        }
      });
    },
    patience,
  );
});
