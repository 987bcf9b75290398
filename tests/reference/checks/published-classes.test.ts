import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/load.json' with { type: 'json' };
import running from '../../../shared/checks/running.json' with { type: 'json' };
import method from '../../../shared/methods/default.json' with { type: 'json' };
import { activityClass } from '../../../src/training/checks/activity-facts.js';
import { builtInChecks } from '../../../src/training/method/built-in-checks.js';

/*
 * Moderate is 3.0 to 5.9 and vigorous 6.0 and more multiples of the energy at rest, as the World Health Organization and
 * the guidelines of the United States have it; these two numbers stand here from memory. The classes in the file were
 * set by hand with them.
 */
const { activity } = builtInChecks;

describe.each([
  [published.compendium2024, running.compendium2024],
  [published.compendium2011, running.compendium2011],
])('classes of activities: $source.cite', ({ cases }, whole) => {
  test.each(cases)('$in.activity is $class', ({ in: { code, activity: name }, out, class: expected }) => {
    expect(activityClass(out.METs, activity)).toBe(expected);
    expect(whole.cases.find(({ in: given }) => given.code === code)).toMatchObject({ in: { activity: name }, out });
  });

  test('every run and every jog on the ground is vigorous', () => {
    const runs = whole.cases.filter(({ in: { code, activity: name } }) => code.startsWith('12') && !/tramp/.test(name));
    expect(runs.length).toBeGreaterThan(15);
    expect(runs.filter(({ out }) => activityClass(out.METs, activity) !== 'vigorous')).toEqual([]);
  });

  test('lifting with 8 to 15 repetitions is moderate', () => {
    expect(cases.find(({ in: { code } }) => code === '02054')).toMatchObject({ out: { METs: 3.5 }, class: 'moderate' });
  });
});

describe('the classes of the built-in method', () => {
  const multiples = new Map(method.checks.activity.kinds.map(({ id, multiple }) => [id, multiple]));
  const met = (code: string) => published.compendium2024.cases.find(({ in: given }) => given.code === code)?.out.METs;

  test('have the multiples of the 2024 table: jogging, 7.5 miles an hour, an elliptical trainer', () => {
    expect(multiples.get('slow')).toBe(met('12020'));
    expect(multiples.get('intervals')).toBe(met('12080'));
    expect(multiples.get('cross')).toBe(met('02048'));
  });

  test('have tempo as at 6 miles an hour, which no row of the file has: its note has 9.3', () => {
    expect(published.compendium2024.note).toContain('6 mph 9.8 → 9.3');
    expect(multiples.get('tempo')).toBe(9.3);
  });

  test('leave strength out', () => {
    expect([...multiples.keys()]).toEqual(['slow', 'tempo', 'intervals', 'cross']);
  });

  test('have two moderate minutes for a vigorous one (A06, US guidelines 2018)', () => {
    const { moderate, vigorous, vigorous_counts: counts } = method.checks.activity;
    expect({ moderate, vigorous, counts }).toEqual({ moderate: 3, vigorous: 6, counts: 2 });
  });

  test.each([
    [2.99, null],
    [3, 'moderate'],
    [3.01, 'moderate'],
    [5.99, 'moderate'],
    [6, 'vigorous'],
    [6.01, 'vigorous'],
  ])('%d times the energy at rest is %s', (multiple, expected) => {
    expect(activityClass(multiple, activity)).toBe(expected);
  });
});
