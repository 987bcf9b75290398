import { describe, expect, test } from 'vitest';
import type { ConcreteSession } from '../../../../src/plan/running/document.js';
import type { RunPart } from '../../../../src/training/running/run-session.js';
import { runLine } from '../../../../src/words/running/run-line.js';
import { runningOf } from '../../../reference/running/running-door.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

/*
 * 4:00 a kilometre for an hour are 278.15 to 329.22 seconds a kilometre slow, 239.56 to 251.05 at tempo, 217.97 to 231.18
 * in intervals: tests/core/plan/running/running-plan.test.ts, worked out apart from the source.
 */
const running = runningOf({ thresholdPace: 240 });
const byFeel = runningOf({});

const session = (category: ConcreteSession['category'], parts: readonly RunPart[]): ConcreteSession => ({
  ...{ category, minutes: parts.reduce((sum, { minutes, times }) => sum + minutes * times, 0) },
  ...{ day: null, parts, metres: null, energy: null },
});
const part = (kind: RunPart['kind'], minutes: number, times = 1): RunPart => ({ kind, minutes, times });

const slow = session('slow', [part('work', 60)]);
const tempo = session('tempo', [part('warm-up', 13), part('work', 26), part('cool-down', 6)]);
const longTempo = session('tempo', [part('warm-up', 15), part('work', 20, 2), part('rest', 2), part('cool-down', 8)]);
const intervals = session('intervals', [
  ...[part('warm-up', 7), part('work', 3, 4), part('rest', 2, 3), part('cool-down', 3.5)],
]);

describe('runLine(words, running, session)', () => {
  test.each([
    [slow, '60 minutes at 4:40 to 5:30 a kilometre.', '60 Minuten in 4:40 bis 5:30 je Kilometer.'],
    [
      tempo,
      'Warm-up 13 minutes; 26 minutes at 4:00 to 4:10 a kilometre; cool-down 6 minutes.',
      'Einlaufen 13 Minuten; 26 Minuten in 4:00 bis 4:10 je Kilometer; Auslaufen 6 Minuten.',
    ],
    [
      longTempo,
      // 20 minutes at 251.05 and 239.56 are 4779.8 and 5009.1 metres.
      'Warm-up 15 minutes; 2 × 20 minutes at 4:00 to 4:10 a kilometre, 4,780 to 5,010 m each, with 2 minutes easy between; cool-down 8 minutes.',
      'Einlaufen 15 Minuten; 2 × 20 Minuten in 4:00 bis 4:10 je Kilometer, jeweils 4.780 bis 5.010 m, dazwischen 2 Minuten locker; Auslaufen 8 Minuten.',
    ],
    [
      intervals,
      // 3 minutes at 231.18 and 217.97 are 778.6 and 825.8 metres.
      'Warm-up 7 minutes; 4 × 3 minutes at 3:40 to 3:50 a kilometre, 780 to 830 m each, with 2 minutes easy between; cool-down 3.5 minutes.',
      'Einlaufen 7 Minuten; 4 × 3 Minuten in 3:40 bis 3:50 je Kilometer, jeweils 780 bis 830 m, dazwischen 2 Minuten locker; Auslaufen 3,5 Minuten.',
    ],
  ])('%#', (given, expected, other) => {
    expect(runLine(english, running, given)).toBe(expected);
    expect(runLine(german, running, given)).toBe(other);
  });

  test('goes by feel where no pace is known, and tells no metres', () => {
    expect(runLine(english, byFeel, intervals)).toBe(
      'Warm-up 7 minutes; 4 × 3 minutes so that single words are all that can be spoken, with 2 minutes easy between; cool-down 3.5 minutes.',
    );
    expect(runLine(german, byFeel, slow)).toBe('60 Minuten so, dass ganze Sätze möglich sind.');
  });

  test('counts paces in miles where that is asked for, and bouts in metres', () => {
    const inMiles = runningOf({ thresholdPace: 240, unit: 'mile' });
    // 217.97 and 231.18 × 1.609344 are 350.8 and 372.1.
    expect(runLine(english, inMiles, intervals)).toContain('4 × 3 minutes at 5:50 to 6:10 a mile, 780 to 830 m each,');
  });

  test('is empty for what is no run', () => {
    expect(runLine(english, running, session('strength', []))).toBe('');
  });

  test('leaves no gap for any run of any week', () => {
    for (const hours of [1, 3, 6, 12])
      for (const told of [{}, { race: { metres: 5000, seconds: 1500 } }])
        for (const run of runningOf(told, { hours }).sessions.filter(({ parts }) => parts.length > 0))
          for (const [words, keys] of languages) {
            const line = runLine(words, runningOf(told, { hours }), run);
            expect(leaksIn(line, keys)).toEqual([]);
            expect(line).toMatch(/^[\dA-Z].*\.$/);
          }
  });
});
