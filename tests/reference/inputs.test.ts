import { describe, expect, it } from 'vitest';
import { builtInPlanner, planWeek } from '../../src/plan.js';
import { planOf } from './plan-door.js';

/* Ranges and starting values of the inputs of the default method. Status: assumption; caps: common practice. */

describe('inputs of the default method', () => {
  it('are hours from 0.5 to 20 by quarters and a cap from 90 to 120 minutes by fives', () => {
    const { inputs } = builtInPlanner().method;
    expect(inputs.weekly_hours).toEqual({ least: 0.5, most: 20, step: 0.25, start: 4 });
    expect(inputs.strength_cap).toEqual({ least: 90, most: 120, step: 5, start: 120 });
  });

  it('start at four hours and a cap of 120 minutes where nothing is given', () => {
    expect(planOf({}).inputs).toMatchObject({ hours: 4, strengthCap: 120 });
  });

  it.each([
    { field: 'hours', least: 0.5, most: 20 },
    { field: 'strengthCap', least: 90, most: 120 },
  ])('take $field from $least to $most and refuse what is outside', ({ field, least, most }) => {
    for (const value of [least, most]) expect(planOf({ [field]: value }).inputs).toMatchObject({ [field]: value });
    for (const value of [least - 0.001, most + 0.001, -least, Number.MAX_VALUE]) {
      expect(planWeek({ [field]: value })).toEqual({
        ok: false,
        problems: [{ path: field, value, code: 'out-of-range', allowed: { least, most } }],
      });
    }
  });

  it.each(['hours', 'strengthCap'])('refuse %s that are no number', (field) => {
    for (const value of [NaN, Infinity, -Infinity]) {
      const outcome = planWeek({ [field]: value });
      expect(outcome.ok ? [] : outcome.problems.map(({ path }) => path)).toEqual([field]);
    }
  });
});
