import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/strength.json' with { type: 'json' };
import method from '../../../shared/methods/default.json' with { type: 'json' };
import { singleTime, workSeconds } from '../../../src/training/strength/session-time.js';

const { time } = method.strength;
const plain = { held: false, each_side: false, loaded: true };
/** Seconds of one set of so many repetitions. */
const work = (repetitions: number): number => workSeconds(plain, { repetitions, seconds: 30 }, time);
/** Minutes of movements one after the other, with as much rest between movements as between sets. */
const minutes = (exercises: number, sets: number, [repetitions, rest]: readonly [number, number]): number =>
  (exercises * singleTime({ sets, work: work(repetitions), rest }).seconds + (exercises - 1) * rest) / 60;

describe(`how long sets take: ${published.duration.source.cite}`, () => {
  const sessions = published.duration.cases.flatMap(({ in: { setsPerExercise, exercises, restS }, out }) =>
    setsPerExercise !== undefined && exercises !== undefined && restS !== undefined
      ? [{ setsPerExercise, exercises, restS, printed: out.sessionMin ?? NaN }]
      : [],
  );
  const computed = published.duration.cases.flatMap(({ in: { sets, reps, sPerRep, rest }, out }) =>
    sets !== undefined && typeof reps === 'number' && rest !== undefined
      ? [{ sets, reps, sPerRep, rest, printed: out.minutes ?? NaN }]
      : [],
  );

  test('has every case of the print', () => {
    expect(sessions.length + computed.length).toBe(published.duration.cases.length);
  });

  // 8 to 12 repetitions: the printed minutes lie between those of 8 and of 12, and within half a minute of those of 10.
  test.each(sessions)(
    '$exercises movements of $setsPerExercise sets with $restS seconds of rest take $printed minutes',
    ({ exercises, setsPerExercise, restS, printed }) => {
      expect(minutes(exercises, setsPerExercise, [8, restS])).toBeLessThan(printed);
      expect(minutes(exercises, setsPerExercise, [12, restS])).toBeGreaterThan(printed);
      expect(Math.abs(minutes(exercises, setsPerExercise, [10, restS]) - printed)).toBeLessThanOrEqual(0.5);
    },
  );

  test.each(computed)('$sets sets of $reps with $rest seconds of rest take $printed minutes', (example) => {
    expect(example.sPerRep).toBe(time.seconds_a_repetition);
    const { seconds } = singleTime({ sets: example.sets, work: work(example.reps), rest: example.rest });
    expect(seconds / 60).toBeCloseTo(example.printed, 9);
  });

  test('a set takes 21 to 27 seconds of work by the print, as 7 to 9 of our repetitions do', () => {
    expect(published.duration.note).toContain('21–27 s of work');
    expect([work(7), work(9)]).toEqual([21, 27]);
  });
});
