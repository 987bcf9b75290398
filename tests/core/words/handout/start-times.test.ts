import { describe, expect, test } from 'vitest';
import { startTimes } from '../../../../src/words/handout/start-times.js';

const of = (minutes: readonly number[], usual: string, early: string): readonly string[] =>
  startTimes(
    minutes.map((each) => ({ minutes: each })),
    { usual, early },
  );

describe('when sessions of a day begin', () => {
  test.each([
    ['none', [], '18:00', '07:00', []],
    ['the only one at the usual time', [45], '18:00', '07:00', ['18:00']],
    ['the first of two early', [45, 30], '18:00', '07:00', ['07:00', '18:00']],
    ['a third one when the second ends', [45, 30, 20], '18:00', '07:00', ['07:00', '18:00', '18:30']],
    ['the second not before the first ends', [120, 30], '08:00', '07:00', ['07:00', '09:00']],
    ['nothing beyond midnight', [30, 60, 60], '23:30', '07:00', ['07:00', '23:30', '23:59']],
  ] as const)('%s', (_, minutes, usual, early, starts) => {
    expect(of(minutes, usual, early)).toEqual(starts);
  });
});
