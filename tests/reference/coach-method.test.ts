import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, Planner, PlanRequest } from '../../src/plan.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { athletesOnSteps } from './athletes.js';
import { coachMethods, plannerFor } from './coach-method.js';
import { differences } from './differences.js';
import { patience, runs } from './runs.js';
import { sessionLimits } from './session-limits.js';
import { optionsByBruteForce } from './session-reference.js';
import { defaultMethod, referenceWeek } from './week-reference.js';

function planBy(planner: Planner, request: PlanRequest): Plan {
  const outcome = planner.plan(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('a method of a coach', { timeout: patience }, () => {
  it('is planned as by the reference, whatever its shares and session limits', async () => {
    await fc.assert(
      fc.asyncProperty(
        coachMethods,
        fc.array(athletesOnSteps, { minLength: 5, maxLength: 5 }),
        async (method, athletes) => {
          const planner = await plannerFor(method);
          const found = athletes.flatMap((athlete) => {
            const answer = referenceWeek({ ...athlete, grains: 60 * athlete.hours, grainsPerMinute: 1 }, method);
            return differences(planBy(planner, athlete), answer, method.limits);
          });
          expect(found).toEqual([]);
        },
      ),
      runs(100, 20_000),
    );
  });

  it('has the session options of brute force', async () => {
    const shortWeeks = athletesOnSteps.filter(({ hours }) => hours <= 4);
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(coachMethods, shortWeeks, async (method, athlete) => {
        const plan = planBy(await plannerFor({ ...method, percentages: defaultMethod.percentages }), athlete);
        for (const category of categoryIds) {
          // Quarter hours and whole percentages make whole hundredths of a minute.
          const parts = Math.round(plan.minutes[category] * 100);
          const question = { parts, partsPerMinute: 100, rounded: plan.rounded[category], ...method.limits[category] };
          const found = { question, options: plan.options[category] };
          expect(found).toEqual({ question, options: optionsByBruteForce(question) });
          compared += 1;
        }
      }),
      runs(400, 4000),
    );
    expect(compared).toBeGreaterThanOrEqual(5 * runs(400, 4000).numRuns);
  });

  it('wishes for two sessions at exactly one and a half typical ones: .35*180 = 63 = 1.5*42', async () => {
    const limits = { ...sessionLimits, cross: { ...sessionLimits.cross, typical: 42 } };
    const planner = await plannerFor({ ...defaultMethod, limits });
    const { options } = planBy(planner, { hours: 3, phase: 'recovery', level: 'trained' });
    // Of the options with the rounded 65 minutes, pairs come before the one session.
    expect(options.cross.slice(0, 4)).toEqual([[30, 35], [25, 40], [20, 45], [65]]);
  });

  it('has no session where a category has no minutes in the rounded week: 1.5 of 45 are 0 of 9 units', async () => {
    const limits = {
      ...sessionLimits,
      slow: { ...sessionLimits.slow, shortest: 10 },
      tempo: { ...sessionLimits.tempo, shortest: 10 },
      strength: { ...sessionLimits.strength, shortest: 30 },
    };
    const planner = await plannerFor({ ...defaultMethod, limits });
    const { minutes, rounded, options } = planBy(planner, { hours: 0.75, phase: 'taper', level: 'trained' });
    // Strength 6.75 is brought up to 30 at the cost of slow running: .45*45 + 4.5 (cross) - 23.25 = 1.5
    expect(minutes.slow).toBeCloseTo(1.5, 9);
    expect(rounded).toEqual({ slow: 0, tempo: 15, intervals: 0, cross: 0, strength: 30 });
    expect(options.slow).toEqual([]);
  });

  it('gives all slow running to strength where both together are less than a session: 2 % and 3 % of 240', async () => {
    const percentages = { ...defaultMethod.percentages, in_season: [3, 40, 30, 25, 2] as const };
    const planner = await plannerFor({ ...defaultMethod, percentages });
    const { minutes, rounded, options, notices } = planBy(planner, { hours: 4, phase: 'build', level: 'trained' });
    expect(minutes.strength).toBeCloseTo(4.8 + 7.2, 9);
    expect(minutes.slow).toBe(0);
    expect(rounded).toEqual({ slow: 0, tempo: 95, intervals: 75, cross: 60, strength: 10 });
    expect(options.slow).toEqual([]);
    expect(notices.map(({ rule }) => rule)).not.toContain('slow-too-small');
  });

  it('says nothing of slow running that is all given away: 2 % and 4 % of 240', async () => {
    const percentages = { ...defaultMethod.percentages, in_season: [4, 40, 30, 24, 2] as const };
    const planner = await plannerFor({ ...defaultMethod, percentages });
    const { minutes, notices } = planBy(planner, { hours: 4, phase: 'build', level: 'trained' });
    expect(minutes.strength).toBeCloseTo(4.8 + 9.6, 9);
    expect(minutes.slow).toBe(0);
    expect(notices.map(({ rule }) => rule)).not.toContain('slow-too-small');
  });

  it('offers two weeks of minutes, halves up, every second week: 2 * (.01*45 + .24*45) = 22.5', async () => {
    const percentages = { ...defaultMethod.percentages, taper: [5, 1, 24, 7, 63] as const };
    const limits = { ...sessionLimits, tempo: { ...sessionLimits.tempo, shortest: 15 } };
    const planner = await plannerFor({ limits, percentages });
    const { notices } = planBy(planner, { hours: 0.75, phase: 'taper', level: 'trained' });
    const offers = notices.filter(({ code }) => code === 'every-second-week');
    expect(offers.find(({ category }) => category === 'tempo')?.values['session']).toBe(25);
  });
});
