import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import { asTimes } from '../../../../src/words/running/as-times.js';
import { effortSpan } from '../../../../src/words/running/effort-span.js';
import { energyText } from '../../../../src/words/running/energy-text.js';
import { raceName } from '../../../../src/words/running/race-name.js';
import { runningHeadline } from '../../../../src/words/running/running-headline.js';
import { uptakeLine } from '../../../../src/words/running/uptake-line.js';
import { runningOf } from '../../../reference/running/running-door.js';
import { english, german, plain } from '../sheet/languages.js';

describe('raceName(words, metres)', () => {
  test.each([
    [1500, '1,500 m', '1.500 m'],
    [1609.344, 'mile', 'Meile'],
    [2999, '2,999 m', '2.999 m'],
    [3000, '3 km', '3 km'],
    [5000, '5 km', '5 km'],
    [7500, '7.5 km', '7,5 km'],
    [10_000, '10 km', '10 km'],
    [21_097.5, 'half marathon', 'Halbmarathon'],
    [21_100, '21.1 km', '21,1 km'],
    [42_195, 'marathon', 'Marathon'],
    [100_000, '100 km', '100 km'],
  ])('%s', (metres, expected, other) => {
    expect([raceName(english, metres), raceName(german, metres)]).toEqual([expected, other]);
  });
});

describe('effortSpan(words, span)', () => {
  test('is one number where both ends are the same', () => {
    expect(effortSpan(english, { from: 5, to: 6 })).toBe('5 to 6');
    expect(effortSpan(german, { from: 5, to: 6.5 })).toBe('5 bis 6,5');
    expect(effortSpan(english, { from: 7, to: 7 })).toBe('7');
  });
});

describe('energyText(words, span)', () => {
  test('is in tens', () => {
    expect(energyText(english, { from: 433, to: 507.6 })).toBe('430 to 510 kcal');
    expect(energyText(german, { from: 2838, to: 3581 })).toBe('2.840 bis 3.580 kcal');
  });
});

describe('uptakeLine(words, basis)', () => {
  // 0.8880 held for an hour, 53.45 ml for 15 km in it: tests/core/plan/running/running-plan.test.ts, by the print.
  const { basis } = runningOf({ thresholdPace: 240 });
  test('has the uptake in whole millilitres, and the share held in whole per cent', () => {
    if (!basis) throw new Error('there is no basis');
    expect(uptakeLine(english, basis)).toBe(
      'It implies a greatest oxygen uptake of about 53 ml a kilogram a minute; 89% of it is held for 1:00:00.',
    );
    expect(plain(uptakeLine(german, basis))).toBe(
      'Daraus folgt eine größte Sauerstoffaufnahme von etwa 53 ml je Kilogramm und Minute; 89 % davon lassen sich 1:00:00 lang halten.',
    );
  });
});

describe('runningHeadline(words, running)', () => {
  const known = runningOf({ thresholdPace: 240 });

  test('has the pace of slow runs and the distance of the week', () => {
    // 4:38.2 to 5:29.2, by the print; distances as told.
    const week = { ...known, metres: { from: 21_600, to: 26_400 } };
    expect(runningHeadline(english, week)).toBe('Slow runs at 4:40 to 5:30 a kilometre: 22 to 26 km this week.');
    expect(runningHeadline(german, week)).toBe(
      'Langsame Läufe in 4:40 bis 5:30 je Kilometer: 22 bis 26 km in dieser Woche.',
    );
    const inMiles = { ...week, wishes: { ...week.wishes, unit: 'mile' as const } };
    // 278.2 and 329.2 × 1.609344 are 447.6 and 529.8; 21.6 and 26.4 km are 13.4 and 16.4 miles.
    expect(runningHeadline(english, inMiles)).toBe('Slow runs at 7:30 to 8:50 a mile: 13 to 16 mi this week.');
  });

  test('says where there are no runs, and where no pace is known', () => {
    const none = { ...known, metres: { from: 0, to: 0 } };
    expect(runningHeadline(english, none)).toBe('Slow runs at 4:40 to 5:30 a kilometre; no runs this week.');
    expect(runningHeadline(english, runningOf({}))).toBe(
      'A race or a threshold pace gives paces and distances; until then runs go by feel.',
    );
    expect(runningHeadline(german, runningOf({ age: 40 }))).toMatch(/nach Gefühl\.$/);
  });
});

describe('asTimes(problem, unit)', () => {
  const problem = (path: string, value: unknown, allowed: Problem['allowed'] = {}): Problem => ({
    path,
    value,
    code: 'out-of-range',
    allowed,
  });

  test('tells seconds of a race as times', () => {
    expect(asTimes(problem('running.race.seconds', 30, { least: 60, most: 172_800 }), 'mile')).toEqual(
      problem('running.race.seconds', '0:30', { least: '1:00', most: '48:00:00' }),
    );
  });

  test('tells a pace as a time of its unit', () => {
    const pace = problem('running.thresholdPace', 100, { least: 150, most: 720 });
    expect(asTimes(pace, 'km')).toEqual(problem('running.thresholdPace', '1:40', { least: '2:30', most: '12:00' }));
    // 100 × 1.609344 = 160.9.
    expect(asTimes(pace, 'mile').value).toBe('2:41');
  });

  test('leaves everything else as it is, and what is no number', () => {
    const metres = problem('running.race.metres', 500, { least: 800, most: 100_000 });
    expect(asTimes(metres, 'km')).toBe(metres);
    const text = problem('running.race.seconds', 'soon', { expected: 'number' });
    expect(asTimes(text, 'km')).toEqual(text);
  });
});
