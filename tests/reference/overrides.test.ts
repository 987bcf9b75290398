import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newSheet, setOverride } from '../../src/plan/scenarios/change.js';
import { ScenarioPlanner } from '../../src/plan/scenarios/scenario-planner.js';
import type { Plan } from '../../src/plan/document.js';
import type { Outcome } from '../../src/problem.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { categoryIds, levelIds, phaseIds } from '../../src/training/method/ids.js';
import { apportionByQuotients } from './apportionment-reference.js';
import { capSteps, quarterHours } from './athletes.js';
import { awardByQuotients, weekByHand, type HandAnswer, type HandQuestion } from './by-hand-reference.js';
import { fraction, sumOf, toNumber } from './fractions.js';
import { patience, runs } from './runs.js';
import { referenceWeek, type WeekQuestion } from './week-reference.js';

const splits = ['in_season', 'off_season', 'taper', 'recovery'] as const;
const named = (suffix: string): readonly string[] => categoryIds.map((id) => `${id}${suffix}`);
const hundredths = (most: number) => fc.integer({ min: 0, max: 100 * most }).map((each) => each / 100);
const fives = (most: number) => fc.integer({ min: 0, max: most / 5 }).map((each) => 5 * each);

/** Some of the quantities with values put over them; now and then with more than there is. */
const some = (names: readonly string[], values: fc.Arbitrary<number>, most = 2) =>
  fc.dictionary(fc.constantFrom(...names), values, { maxKeys: most });
const overrides: fc.Arbitrary<Readonly<Record<string, number>>> = fc
  .tuple(
    some(['weekly_hours'], fc.constantFrom(...quarterHours), 1),
    some(['weekly_minutes'], hundredths(900), 1),
    some(['strength_cap'], fc.constantFrom(...capSteps), 1),
    some(
      splits.flatMap((split) => named(`_share`).map((name) => `${split}_${name}`)),
      hundredths(1),
      3,
    ),
    some(named('_share'), fc.oneof(fc.constantFrom(0, 0.1, 0.2), hundredths(1))),
    some(named('_minutes'), fc.oneof(fives(120), hundredths(200))),
    some([...named('_rounded'), 'total_rounded'], fives(120)),
    some(named('_shortest'), fc.constantFrom(5, 10, 15, 30, 35), 1),
  )
  .chain((kinds) => fc.subarray(kinds, { minLength: 1, maxLength: 3 }))
  .map((kinds) => Object.fromEntries(kinds.flatMap((kind) => Object.entries(kind))));

const questions: fc.Arbitrary<HandQuestion> = fc.record({
  hours: fc.constantFrom(...quarterHours),
  phase: fc.constantFrom(...phaseIds),
  level: fc.constantFrom(...levelIds),
  strengthCap: fc.constantFrom(...capSteps),
  over: overrides,
  givesWay: fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, fc.subarray([...categoryIds])),
});

/** The planner's answer, by way of a sheet with one scenario. */
async function planned({ over, givesWay, ...inputs }: HandQuestion, planner: ScenarioPlanner): Promise<Outcome<Plan>> {
  const method = { ...builtInMethod, gives_way: givesWay };
  const first = newSheet(method, { ...inputs, event: 'half-marathon' });
  const sheet = Object.entries(over).reduce(
    (each, [quantity, value]) => setOverride(each, 'a', { quantity, formula: String(value) }),
    first,
  );
  await planner.learn(sheet);
  const [only] = planner.plan(sheet);
  if (!only) throw new Error('no scenario');
  return only.outcome;
}

/** Every way in which a plan is not the reference's answer. */
function differences(plan: Plan, answer: HandAnswer): readonly string[] {
  const differ = (what: string, found: number, expected: number, hair = 0): readonly string[] =>
    Math.abs(found - expected) <= hair * Math.max(1, expected)
      ? []
      : [`${what}: ${String(found)}, not ${String(expected)}`];
  return [
    ...(plan.split.id === answer.split ? [] : [`split ${plan.split.id}`]),
    ...differ('total rounded', plan.total.rounded, Number(answer.totalRounded)),
    ...differ('total', plan.total.exact, toNumber(sumOf(Object.values(answer.minutes))), 1e-9),
    ...categoryIds.flatMap((id) => [
      ...differ(`share of ${id}`, plan.split.shares[id], toNumber(answer.shares[id]), 1e-9),
      ...differ(`minutes of ${id}`, plan.minutes[id], toNumber(answer.minutes[id]), 1e-9),
      ...differ(`rounded ${id}`, plan.rounded[id], Number(answer.rounded[id])),
    ]),
  ];
}

const causeOf = (cause: unknown): unknown =>
  typeof cause === 'object' && cause !== null && 'cause' in cause ? causeOf(cause.cause) : cause;

describe('the planner and the reference, with values put over quantities', { timeout: patience }, () => {
  it('agree on random athletes', async () => {
    const planner = new ScenarioPlanner();
    const seen = { planned: 0, refused: 0 };
    await fc.assert(
      fc.asyncProperty(questions, async (question) => {
        const [outcome, answer] = [await planned(question, planner), weekByHand(question)];
        seen[answer ? 'planned' : 'refused'] += 1;
        if (answer) return void expect(outcome.ok ? differences(outcome.value, answer) : outcome.problems).toEqual([]);
        const causes = outcome.ok ? [] : outcome.problems.map(({ allowed }) => causeOf(allowed['cause']));
        const isTooMuch = causes.some(
          (cause) =>
            typeof cause === 'object' &&
            cause !== null &&
            'code' in cause &&
            ['nothing-left', 'not-a-number'].includes(String(cause.code)),
        );
        expect({ ok: outcome.ok, isTooMuch }).toEqual({ ok: false, isTooMuch: true });
      }),
      runs(600, 100_000),
    );
    expect(seen.planned).toBeGreaterThan(seen.refused);
    expect(seen.refused).toBeGreaterThan(10);
  });

  it('agree on weeks worked by hand', () => {
    const four = { hours: 4, phase: 'build', level: 'developing', strengthCap: 120, givesWay: [] } as const;
    const minutes = (over: HandQuestion['over'], givesWay: HandQuestion['givesWay'] = []): readonly number[] => {
      const answer = weekByHand({ ...four, over, givesWay });
      return answer ? categoryIds.map((id) => Math.round(1e9 * toNumber(answer.minutes[id])) / 1e9) : [];
    };
    // 72, 36, 24, 36, 72; the others × (240 - 100) / 168, or slow and cross (108) less 28.
    expect(minutes({ strength_minutes: 100 })).toEqual([60, 30, 20, 30, 100]);
    expect(minutes({ strength_minutes: 100, weekly_hours: 4 }, ['slow'])).toEqual([44, 36, 24, 36, 100]);
    // Of 240: slow .65, the others half of what they had; then intervals (12) go to tempo, cross-training (18) to slow.
    expect(minutes({ in_season_slow_share: 0.65 })).toEqual([156 + 18, 18 + 12, 0, 0, 36]);
    expect(minutes({ strength_minutes: 300 })).toEqual([]);
  });
});

describe('the reference itself', () => {
  it('is the week of the other reference where nothing is put over anything', () => {
    const plain = fc.record({
      hours: fc.constantFrom(...quarterHours),
      phase: fc.constantFrom(...phaseIds),
      level: fc.constantFrom(...levelIds),
      strengthCap: fc.constantFrom(...capSteps),
    });
    fc.assert(
      fc.property(plain, (athlete) => {
        const question: WeekQuestion = { ...athlete, grains: 60 * athlete.hours, grainsPerMinute: 1, event: 'none' };
        const expected = referenceWeek(question);
        const answer = weekByHand({ ...athlete, over: {}, givesWay: [] });
        if (!answer) throw new Error('no answer');
        expect(answer.split).toBe(expected.split);
        for (const id of categoryIds) {
          expect(answer.minutes[id]).toEqual(fraction(Math.round(expected.parts[id]), expected.partsPerMinute));
          expect(Number(answer.rounded[id])).toBe(expected.rounded[id]);
        }
      }),
      runs(200, 10_000),
    );
  });

  it('awards by the table of quotients', () => {
    const weights = fc
      .array(fc.nat({ max: 40 }), { minLength: 5, maxLength: 5 })
      .filter((list) => list.some((each) => each > 0));
    fc.assert(
      fc.property(weights, fc.nat({ max: 60 }), fc.integer({ min: 1, max: 99 }), (list, seats, under) => {
        const award = awardByQuotients(
          list.map((weight) => fraction(weight, under)),
          seats,
        );
        expect(award).toEqual(apportionByQuotients(list, seats, [4, 0, 1, 2, 3]));
      }),
      runs(200, 10_000),
    );
  });
});
