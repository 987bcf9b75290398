import fc from 'fast-check';
import type { PlanInputs } from '../../src/plan/document.js';
import { eventIds, levelIds, phaseIds } from '../../src/training/method/ids.js';
import type { WeekQuestion } from './week-reference.js';

const person = {
  phase: fc.constantFrom(...phaseIds),
  level: fc.constantFrom(...levelIds),
  event: fc.constantFrom(...eventIds),
};

/** Caps on the slider's steps, minutes. */
export const capSteps = [90, 95, 100, 105, 110, 115, 120] as const;

/** Hours on the slider's steps: 0.5 to 20 by quarters. */
export const quarterHours: readonly number[] = Array.from({ length: 79 }, (_, step) => 0.5 + step / 4);

/** Athletes on the slider's steps. */
export const athletesOnSteps: fc.Arbitrary<PlanInputs> = fc.record({
  hours: fc.constantFrom(...quarterHours),
  strengthCap: fc.constantFrom(...capSteps),
  ...person,
});

/** Athletes with any hours and any cap that may be typed. */
export const anyAthletes: fc.Arbitrary<PlanInputs> = fc.record({
  hours: fc.oneof(fc.constantFrom(...quarterHours), fc.double({ min: 0.5, max: 20, noNaN: true })),
  strengthCap: fc.oneof(fc.constantFrom(...capSteps), fc.double({ min: 90, max: 120, noNaN: true })),
  ...person,
});

/**
 * Athletes between the steps, for the reference: hours in thousandths (in grains of a thousandth of a minute), or in
 * fractions that a binary number holds exactly, and caps to match.
 */
export const athletesBetweenSteps: fc.Arbitrary<WeekQuestion> = fc.oneof(
  fc.record({
    grains: fc.integer({ min: 500, max: 20_000 }).map((thousandths) => 60 * thousandths),
    grainsPerMinute: fc.constant(1000),
    strengthCap: fc.integer({ min: 900, max: 1200 }).map((tenths) => tenths / 10),
    ...person,
  }),
  fc.record({
    grains: fc.integer({ min: 512, max: 20 * 1024 }).map((parts) => 15 * parts),
    grainsPerMinute: fc.constant(256),
    strengthCap: fc.integer({ min: 90 * 4, max: 120 * 4 }).map((quarters) => quarters / 4),
    ...person,
  }),
);
