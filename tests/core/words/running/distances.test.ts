import { describe, expect, test } from 'vitest';
import { distancesOf, metresIn, shortMetres } from '../../../../src/words/running/distances.js';
import { english, german } from '../sheet/languages.js';

describe('distances in kilometres', () => {
  const { span, pace, paceAlone, per, toUnit, toKilometre } = distancesOf(english, 'km');

  test('have one digit, or as many as are asked for, and one number where both ends are the same', () => {
    expect(span({ from: 5640, to: 6620 })).toBe('5.6 to 6.6 km');
    expect(span({ from: 5640, to: 6620 }, 0)).toBe('6 to 7 km');
    expect(span({ from: 5640, to: 5649 })).toBe('5.6 km');
    expect(span({ from: 21_600, to: 26_400 }, 0)).toBe('22 to 26 km');
    expect(distancesOf(german, 'km').span({ from: 5640, to: 6620 })).toBe('5,6 bis 6,6 km');
  });

  test('have paces in steps of five seconds', () => {
    expect(per).toBe('a kilometre');
    expect(pace({ from: 278.2, to: 329.2 })).toBe('4:40 to 5:30 a kilometre');
    expect(paceAlone({ from: 278.2, to: 329.2 })).toBe('4:40–5:30');
    expect(pace({ from: 239, to: 241 })).toBe('4:00 a kilometre');
    expect(pace({ from: 3596, to: 3598 })).toBe('59:55 to 1:00:00 a kilometre');
    expect(distancesOf(german, 'km').pace({ from: 278.2, to: 329.2 })).toBe('4:40 bis 5:30 je Kilometer');
  });

  test('are what paces are counted in', () => {
    expect([toUnit(280), toKilometre(280), metresIn.km]).toEqual([280, 280, 1000]);
  });
});

describe('distances in miles of 1,609.344 metres', () => {
  const { span, pace, per, toUnit, toKilometre } = distancesOf(english, 'mile');

  test('have one digit', () => {
    // 10 miles and 13.1 miles; a marathon is 26.2.
    expect(span({ from: 16_093.44, to: 21_097.5 })).toBe('10 to 13.1 mi');
    expect(span({ from: 42_195, to: 42_195 })).toBe('26.2 mi');
    expect(distancesOf(german, 'mile').span({ from: 16_093.44, to: 21_097.5 })).toBe('10 bis 13,1 mi');
  });

  test('have paces a mile', () => {
    expect(per).toBe('a mile');
    // 240 × 1.609344 = 386.2; 300 × 1.609344 = 482.8.
    expect(pace({ from: 240, to: 300 })).toBe('6:25 to 8:05 a mile');
    expect(distancesOf(german, 'mile').pace({ from: 240, to: 300 })).toBe('6:25 bis 8:05 je Meile');
  });

  test('go there and back', () => {
    expect(toUnit(1000)).toBeCloseTo(1609.344, 9);
    expect(toKilometre(1609.344)).toBeCloseTo(1000, 9);
    for (const seconds of [150, 240.5, 720]) expect(toKilometre(toUnit(seconds))).toBeCloseTo(seconds, 9);
  });
});

describe('shortMetres(words, span)', () => {
  test('is in tens, one number where both ends come to the same', () => {
    expect(shortMetres(english, { from: 786, to: 844 })).toBe('790 to 840 m');
    expect(shortMetres(english, { from: 796, to: 804 })).toBe('800 m');
    expect(shortMetres(english, { from: 4996, to: 6004 })).toBe('5,000 to 6,000 m');
    expect(shortMetres(german, { from: 4996, to: 6004 })).toBe('5.000 bis 6.000 m');
  });
});
