import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { matchSessions } from '../../../../src/training/record/match-sessions.js';
import { tallyWeek, type KindTally } from '../../../../src/training/record/week-tally.js';
import { patience, runs } from '../../../reference/runs.js';
import { anyWeeks, did, plan, type Week } from './week-sessions.js';

const tally = ({ planned, done }: Week) => tallyWeek(matchSessions(planned, done));
const nothing: KindTally = { planned: 0, done: 0, left: 0, sessions: { planned: 0, done: 0, left: 0 } };

describe('a week in sums', () => {
  test('is nothing for every kind where nothing is planned or done', () => {
    expect(Object.keys(tally({ planned: [], done: [] }))).toEqual([...categoryIds]);
    for (const id of categoryIds) expect(tally({ planned: [], done: [] })[id]).toEqual(nothing);
  });

  test('counts what was planned, what was done and what is left, each kind by itself', () => {
    const planned = [
      plan('slow', 30, 'mon'),
      plan('slow', 90, 'sat'),
      plan('tempo', 35, 'tue'),
      plan('strength', 40, 'thu'),
    ];
    const done = [
      did('slow', 45, 'mon'),
      did('strength', 30, 'tue'),
      did('cross', 60, 'wed'),
      did('strength', 20, 'fri'),
    ];
    expect(tally({ planned, done })).toEqual({
      // 45 minutes instead of 30 leave the 90 as they are.
      slow: { planned: 120, done: 45, left: 90, sessions: { planned: 2, done: 1, left: 1 } },
      tempo: { planned: 35, done: 0, left: 35, sessions: { planned: 1, done: 0, left: 1 } },
      intervals: nothing,
      cross: { planned: 0, done: 60, left: 0, sessions: { planned: 0, done: 1, left: 0 } },
      // One of the two is beyond the plan, and was done all the same.
      strength: { planned: 40, done: 50, left: 0, sessions: { planned: 1, done: 2, left: 0 } },
    });
  });

  test('adds up, whatever was planned and done', { timeout: patience }, () => {
    fc.assert(
      fc.property(anyWeeks, (week) => {
        const matched = matchSessions(week.planned, week.done);
        const tallies = tallyWeek(matched);
        for (const id of categoryIds) {
          const planned = week.planned.filter(({ category }) => category === id);
          const done = week.done.filter(({ category }) => category === id);
          const { sessions, ...minutes } = tallies[id];
          const open = matched.planned.filter((each) => each.category === id && each.done === null);
          expect(minutes).toEqual({ planned: sum(planned), done: sum(done), left: sum(open) });
          // As many as can are done: one planned session for each that was.
          const left = Math.max(0, planned.length - done.length);
          expect(sessions).toEqual({ planned: planned.length, done: done.length, left });
        }
      }),
      runs(1000, 50_000),
    );
  });
});

function sum(sessions: readonly { readonly minutes: number }[]): number {
  let minutes = 0;
  for (const each of sessions) minutes += each.minutes;
  return minutes;
}
