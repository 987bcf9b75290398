import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../src/words/load-words.js';
import { createWords } from '../../../src/words/words.js';
import { german } from './planned.js';

const words = await loadWords('en');

// German percent signs stand behind a no-break space.
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

describe('words.number(value, digits)', () => {
  it.each([
    [7.5, undefined, '7.5', '7,5'],
    [1234.5, undefined, '1,234.5', '1.234,5'],
    [1 / 3, undefined, '0.33', '0,33'],
    [1 / 3, 4, '0.3333', '0,3333'],
    [-0.001, undefined, '0', '0'],
    [-3, undefined, '-3', '-3'],
    [Number.NaN, undefined, 'no value', 'kein Wert'],
    [Number.POSITIVE_INFINITY, undefined, 'no value', 'kein Wert'],
  ])('%s, %s is "%s" and "%s"', (value, digits, english, other) => {
    expect(words.number(value, digits)).toBe(english);
    expect(german.number(value, digits)).toBe(other);
  });
});

describe('words.minutes(value)', () => {
  it.each([
    [72, '72 minutes', '72 Minuten', '72 min', '72 min'],
    [1, '1 minute', '1 Minute', '1 min', '1 min'],
    [0, '0 minutes', '0 Minuten', '0 min', '0 min'],
    [61.5, '61.5 minutes', '61,5 Minuten', '61.5 min', '61,5 min'],
    [36.94, '36.9 minutes', '36,9 Minuten', '36.9 min', '36,9 min'],
    [Number.NaN, 'no value', 'kein Wert', 'no value', 'kein Wert'],
  ])('%s is "%s", "%s"; short "%s", "%s"', (value, ...expected) => {
    const said = [words.minutes(value), german.minutes(value), words.minutesShort(value), german.minutesShort(value)];
    expect(said).toEqual(expected);
  });
});

describe('words.hours(value)', () => {
  it.each([
    [4, '4 hours', '4 Stunden', '4 h', '4 h'],
    [1, '1 hour', '1 Stunde', '1 h', '1 h'],
    [4.25, '4 hours 15 minutes', '4 Stunden 15 Minuten', '4 h 15 min', '4 h 15 min'],
    [0.5, '30 minutes', '30 Minuten', '30 min', '30 min'],
    [4.1, '4 hours 6 minutes', '4 Stunden 6 Minuten', '4 h 6 min', '4 h 6 min'],
    [4.01, '4 hours 0.6 minutes', '4 Stunden 0,6 Minuten', '4 h 0.6 min', '4 h 0,6 min'],
    [3.99999, '4 hours', '4 Stunden', '4 h', '4 h'],
    [0, '0 minutes', '0 Minuten', '0 min', '0 min'],
    [Number.NaN, 'no value', 'kein Wert', 'no value', 'kein Wert'],
  ])('%s is "%s", "%s"; short "%s", "%s"', (value, ...expected) => {
    const said = [words.hours(value), german.hours(value), words.hoursShort(value), german.hoursShort(value)];
    expect(said).toEqual(expected);
  });

  it('never speaks of sixty minutes', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (hours) => {
        expect(words.hours(hours)).not.toMatch(/\b60 minutes/);
      }),
    );
  });

  it('says hours and minutes that give the value back, within a twentieth of a minute', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (value) => {
        const said = words.hoursShort(value);
        const hours = Number(/([\d.]+) h/.exec(said)?.[1] ?? 0);
        const minutes = Number(/([\d.]+) min/.exec(said)?.[1] ?? 0);
        expect(Math.abs(hours * 60 + minutes - value * 60)).toBeLessThanOrEqual(0.05 + 1e-9);
      }),
    );
  });
});

describe('words.share(value)', () => {
  it.each([
    [0.3, '30%', '30 %'],
    [1 / 3, '33.3%', '33,3 %'],
    [0, '0%', '0 %'],
    [Number.NaN, 'no value', 'kein Wert'],
  ])('%s is "%s" and "%s"', (value, english, other) => {
    expect(words.share(value)).toBe(english);
    expect(plain(german.share(value))).toBe(other);
  });
});

describe('words.sessions(minutes)', () => {
  it.each([
    [[], ''],
    [[60], '60'],
    [[30, 45], '30 + 45'],
    [[25, 25, 25], '3 × 25'],
    [[30, 35, 35], '30 + 2 × 35'],
  ])('%j is "%s"', (durations, expected) => {
    expect(words.sessions(durations)).toBe(expected);
  });
});

describe('words.list(items), words.alternatives(items), words.capital(text)', () => {
  it('join as the language does', () => {
    expect(words.list(['a', 'b'])).toBe('a and b');
    expect(german.list(['a', 'b', 'c'])).toBe('a, b und c');
    expect(words.alternatives(['a', 'b'])).toBe('a or b');
    expect(german.alternatives(['a', 'b', 'c'])).toBe('a, b oder c');
  });

  it.each([
    ['slow running', 'Slow running'],
    ['übung', 'Übung'],
    ['ß', 'SS'],
    ['', ''],
    ['30 minutes', '30 minutes'],
  ])('%j begins a line as %j', (text, expected) => {
    expect(german.capital(text)).toBe(expected);
  });
});

describe('words.say(key, values)', () => {
  const messages = {
    greeting: '{name} runs {count} km',
    days: { one: '{count} day', other: '{count} days' },
    twice: '{name}, {name}',
  };
  const small = createWords('en', messages, { spare: 'from the fallback', greeting: 'unused' });

  it('fills values in, numbers as the language writes them', () => {
    expect(small.say('greeting', { name: 'Mira', count: 1200.5 })).toBe('Mira runs 1,200.5 km');
    expect(small.say('twice', { name: 'Mira' })).toBe('Mira, Mira');
  });

  it('chooses the plural form by the count', () => {
    expect([0, 1, 2].map((count) => small.say('days', { count }))).toEqual(['0 days', '1 day', '2 days']);
    expect(small.say('days')).toBe('{count} days');
  });

  it('leaves a placeholder without a value where it is, so that the gap is seen', () => {
    expect(small.say('greeting', { name: 'Mira' })).toBe('Mira runs {count} km');
    expect(small.say('twice', { constructor: 'x' })).toBe('{name}, {name}');
  });

  it('falls back to the second language, then to the key', () => {
    expect(small.say('spare')).toBe('from the fallback');
    expect(small.say('no.such.text')).toBe('no.such.text');
    expect(small.say('constructor')).toBe('constructor');
    expect(small.say('__proto__')).toBe('__proto__');
  });

  it('does not fill in what a value itself says', () => {
    expect(small.say('twice', { name: '{count}', count: 5 })).toBe('{count}, {count}');
  });

  it('gives the pieces of a sentence, those from values by their names', () => {
    expect(small.pieces('greeting', { name: 'Mira', count: 2 })).toEqual([
      { text: 'Mira', name: 'name' },
      { text: ' runs ' },
      { text: '2', name: 'count' },
      { text: ' km' },
    ]);
  });

  it('never throws and never shows NaN, whatever it is given', () => {
    fc.assert(
      fc.property(fc.string(), fc.dictionary(fc.string(), fc.oneof(fc.string(), fc.double())), (key, values) => {
        const { count, ...rest } = values;
        expect(small.say(key, values)).toBe(key.replace(/\{(\w+)\}/g, (whole) => small.say(whole, values)));
        expect(small.say('days', { ...rest, count: Number(count) })).not.toContain('NaN');
      }),
    );
  });
});

describe('words.text(text, values)', () => {
  it("shows a coach's own words as they are", () => {
    expect(words.text('Hügel {x}!')).toBe('Hügel {x}!');
    expect(words.text({ key: 'category.slow' })).toBe('slow running');
    expect(words.text({ key: 'no.such.text' })).toBe('no.such.text');
  });

  it("fills values into a coach's own sentence", () => {
    expect(words.text('Held at {after}.', { after: '90 minutes' })).toBe('Held at 90 minutes.');
  });
});
