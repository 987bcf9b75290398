import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eventIds, levelIds, phaseIds } from '../../src/training/method/ids.js';
import { athletesBetweenSteps, capSteps, quarterHours } from './athletes.js';
import { differences } from './differences.js';
import { planFor } from './plan-door.js';
import { patience, runs, runsFactor } from './runs.js';
import { referenceWeek } from './week-reference.js';
import type { WeekQuestion } from './week-reference.js';

type Person = Pick<WeekQuestion, 'phase' | 'level'>;

/**
 * Every position of the hours and cap sliders for one person. Events, which change only what is said, take turns, so
 * that each meets every hour and every cap; with RUNS_FACTOR above 1 each position is tried with every event.
 */
function everyQuestion(person: Person): readonly WeekQuestion[] {
  return quarterHours.flatMap((hours, row) =>
    capSteps.flatMap((strengthCap, column) => {
      const turn = (row + column) % eventIds.length;
      const events = runsFactor > 1 ? eventIds : eventIds.slice(turn, turn + 1);
      return events.map((event) => ({ grains: hours * 60, grainsPerMinute: 1, ...person, event, strengthCap }));
    }),
  );
}

function disagreement(question: WeekQuestion): readonly string[] {
  const found = differences(planFor(question), referenceWeek(question));
  return found.length === 0 ? [] : [`${JSON.stringify(question)}: ${found.join('; ')}`];
}

describe('the planner and the reference', { timeout: patience }, () => {
  const people = phaseIds.flatMap((phase) => levelIds.map((level) => ({ phase, level })));

  it.each(people)('agree on every position of the sliders, $phase, $level', (person) => {
    const questions = everyQuestion(person);
    expect(questions.length).toBe(79 * 7 * (runsFactor > 1 ? 6 : 1));
    const disagreements = questions.flatMap(disagreement);
    expect({ count: disagreements.length, first: disagreements.slice(0, 5) }).toEqual({ count: 0, first: [] });
  });

  it('agree on hours and caps between the steps', () => {
    fc.assert(
      fc.property(athletesBetweenSteps, (question) => {
        expect(disagreement(question)).toEqual([]);
      }),
      runs(500, 100_000),
    );
  });
});
