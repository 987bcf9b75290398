import { describe, expect, it } from 'vitest';
import published from '../../shared/checks/apportionment.json' with { type: 'json' };
import { planOf } from './plan-door.js';

const person = { phase: 'build', level: 'trained', event: '10k', strengthCap: 120 } as const;

describe(`a week that is no multiple of 5 minutes: ${published.rounding.source.cite}, rule B`, () => {
  const ties = published.rounding.cases.filter(({ in: { x }, out: { y } }) => y !== undefined && x > 6);

  it('is tried on the printed halves', () => {
    expect(ties.map(({ in: { x } }) => x)).toEqual([12.5, 13.5]);
  });

  it.each(ties)(
    'of $in.x units has the larger whole number of them, not $out.y where that is smaller',
    ({ in: { x } }) => {
      const { total } = planOf({ ...person, hours: (x * 5) / 60 });
      expect(total.rounded).toBe(5 * (x + 0.5));
    },
  );

  it.each([
    { hours: 0.625, minutes: 37.5, rounded: 40 },
    { hours: 0.875, minutes: 52.5, rounded: 55 },
    { hours: 4.375, minutes: 262.5, rounded: 265 },
    { hours: 4.37, minutes: 262.2, rounded: 260 },
    { hours: 3.1, minutes: 186, rounded: 185 },
    { hours: 3.3, minutes: 198, rounded: 200 },
  ])('$minutes minutes become $rounded, and the plan says so', ({ hours, minutes, rounded }) => {
    const { total, notices, rounded: byCategory } = planOf({ ...person, hours });
    expect(total.exact).toBeCloseTo(minutes, 9);
    expect(total.rounded).toBe(rounded);
    expect(Object.values(byCategory).reduce((sum, part) => sum + part, 0)).toBe(rounded);
    const notice = notices.find(({ code }) => code === 'total-rounded');
    expect(notice?.values['exact']).toBeCloseTo(minutes, 9);
    expect(notice?.values['rounded']).toBe(rounded);
  });

  it.each([0.5, 3.25, 4, 19.75])('nothing is said of %s hours', (hours) => {
    expect(planOf({ ...person, hours }).notices.map(({ code }) => code)).not.toContain('total-rounded');
  });
});
