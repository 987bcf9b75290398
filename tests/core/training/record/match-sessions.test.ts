import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { matchSessions, type MatchedWeek } from '../../../../src/training/record/match-sessions.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import { patience, runs } from '../../../reference/runs.js';
import { anyWeeks, did, plan, type Week } from './week-sessions.js';

/** What was done of each planned session, as places in the list of what was done; null for what is open. */
function placesOf({ planned, done }: Week): (number | null)[] {
  const places = (each: DoneSession | null): number | null => (each ? done.indexOf(each) : null);
  return matchSessions(planned, done).planned.map((session) => places(session.done));
}

describe('what was done of a plan', () => {
  const rows: Readonly<Record<string, readonly [Week, (number | null)[]]>> = {
    'nothing planned, something done': [{ planned: [], done: [did('slow', 30, 'mon')] }, []],
    'something planned, nothing done': [{ planned: [plan('slow', 30, 'mon')], done: [] }, [null]],
    'the session on its day': [{ planned: [plan('slow', 30, 'mon')], done: [did('slow', 30, 'mon')] }, [0]],
    'the session on another day': [{ planned: [plan('slow', 30, 'mon')], done: [did('slow', 30, 'thu')] }, [0]],
    'the session on a day before it': [{ planned: [plan('slow', 30, 'thu')], done: [did('slow', 30, 'mon')] }, [0]],
    'a session for any day': [{ planned: [plan('slow', 30)], done: [did('slow', 30, 'sun')] }, [0]],
    'another kind on its day': [{ planned: [plan('slow', 30, 'mon')], done: [did('tempo', 30, 'mon')] }, [null]],
    'a much shorter one': [{ planned: [plan('slow', 90, 'mon')], done: [did('slow', 5, 'sun')] }, [0]],
    'on its day before the same length on another': [
      { planned: [plan('slow', 30, 'mon')], done: [did('slow', 30, 'tue'), did('slow', 60, 'mon')] },
      [1],
    ],
    'two on one day: the nearest in length': [
      { planned: [plan('slow', 30, 'mon')], done: [did('slow', 50, 'mon'), did('slow', 35, 'mon')] },
      [1],
    ],
    'two planned, the longer one done': [
      { planned: [plan('slow', 30, 'mon'), plan('slow', 90, 'sat')], done: [did('slow', 85, 'wed')] },
      [null, 0],
    ],
    'two planned for one day, one done': [
      { planned: [plan('slow', 30, 'mon'), plan('slow', 60, 'mon')], done: [did('slow', 55, 'mon')] },
      [null, 0],
    ],
    'changed days': [
      {
        planned: [plan('slow', 30, 'mon'), plan('slow', 90, 'sat')],
        done: [did('slow', 90, 'mon'), did('slow', 30, 'sat')],
      },
      [0, 1],
    ],
    'the day before the length, and the rest by length': [
      {
        planned: [plan('slow', 30, 'mon'), plan('slow', 40, 'wed'), plan('slow', 90)],
        done: [did('slow', 90, 'wed'), did('slow', 45, 'thu'), did('slow', 35, 'sun')],
      },
      // Wednesday has its session whatever its length; 35 is nearest to 30; what is left goes to the long one.
      [2, 0, 1],
    ],
    'as near one way as the other: the first that was done': [
      { planned: [plan('slow', 30)], done: [did('slow', 25, 'mon'), did('slow', 35, 'tue')] },
      [0],
    ],
    'as near to one as to the other: the first that is planned': [
      { planned: [plan('slow', 30), plan('slow', 40)], done: [did('slow', 35, 'mon')] },
      [0, null],
    ],
    'kinds apart': [
      {
        planned: [plan('tempo', 30, 'tue'), plan('strength', 40, 'tue'), plan('slow', 60, 'sun')],
        done: [did('slow', 30, 'tue'), did('strength', 40, 'wed')],
      },
      [null, 1, 0],
    ],
  };
  test.each(Object.entries(rows))('%s', (_, [week, places]) => {
    expect(placesOf(week)).toEqual(places);
  });

  test('beyond it is told in the order in which it was done', () => {
    const done = [did('tempo', 20, 'mon'), did('slow', 30, 'tue'), did('cross', 40, 'wed'), did('slow', 60, 'thu')];
    expect(matchSessions([plan('slow', 30)], done).extra).toEqual([done[0], done[2], done[3]]);
  });

  test('is told with the planned session as it is', () => {
    const [planned, done] = [plan('slow', 30, 'mon'), did('slow', 25, 'tue', 4)];
    expect(matchSessions([planned], [done])).toEqual({ planned: [{ ...planned, done }], extra: [] });
  });

  test('counts once, also where one and the same session stands twice in a list', () => {
    const [session, done] = [plan('slow', 30, 'mon'), did('slow', 30, 'mon')];
    const once = matchSessions([session, session], [done]);
    expect([once.planned.map((each) => each.done), once.extra]).toEqual([[done, null], []]);
    const twice = matchSessions([session], [done, done]);
    expect([twice.planned.map((each) => each.done), twice.extra]).toEqual([[done], [done]]);
  });
});

const gap = (session: { readonly minutes: number }, each: { readonly minutes: number }): number =>
  Math.abs(session.minutes - each.minutes);

/** How well they fit: below 0 on the day, the nearest in length least. */
const fit = ({ planned, done }: Week, [at, of]: readonly [number, number]): number => {
  const [session, each] = [planned[at], done[of]];
  if (!session || !each || session.category !== each.category) return Infinity;
  return gap(session, each) - (session.date === each.date ? 10_000 : 0);
};

/**
 * Every way to give the sessions that were done to those that are planned, and among them the one in which no two that are
 * apart would both rather be together. Where all fits differ there is only one (Gale and Shapley 1962, with one measure for
 * both sides).
 */
function byBruteForce(week: Week): (number | null)[][] {
  const { planned, done } = week;
  const ways = (at: number, taken: readonly number[]): (number | null)[][] => {
    if (at === planned.length) return [[]];
    const mine = done.map((_, of) => of).filter((of) => !taken.includes(of) && fit(week, [at, of]) < Infinity);
    return [
      ...ways(at + 1, taken).map((rest) => [null, ...rest]),
      ...mine.flatMap((of) => ways(at + 1, [...taken, of]).map((rest) => [of, ...rest])),
    ];
  };
  return ways(0, []).filter((way) => isSettled(week, way));
}

function isSettled(week: Week, way: readonly (number | null)[]): boolean {
  const ofPlanned = (at: number): number => fit(week, [at, way[at] ?? -1]);
  const ofDone = (of: number): number => fit(week, [way.indexOf(of), of]);
  return week.planned.every((_, at) =>
    week.done.every((__, of) => {
      const together = fit(week, [at, of]);
      return together === Infinity || together >= ofPlanned(at) || together >= ofDone(of);
    }),
  );
}

/** True where no two pairs fit equally well. */
function allDiffer(week: Week): boolean {
  const fits = week.planned
    .flatMap((_, at) => week.done.map((__, of) => fit(week, [at, of])))
    .filter((each) => each < Infinity);
  return new Set(fits).size === fits.length;
}

describe('a week at random', { timeout: patience }, () => {
  test('has every session that was done once, planned or beyond, and every planned one in its place', () => {
    fc.assert(
      fc.property(anyWeeks, ({ planned, done }) => {
        const before = structuredClone({ planned, done });
        const matched: MatchedWeek = matchSessions(planned, done);
        const found = matched.planned.flatMap((each) => each.done ?? []);
        expect(new Set([...found, ...matched.extra])).toEqual(new Set(done));
        expect(found.length + matched.extra.length).toBe(done.length);
        expect(matched.planned.map(({ done: _, ...session }) => session)).toEqual(planned);
        expect(matched.extra).toEqual(done.filter((each) => matched.extra.includes(each)));
        for (const { category, done: each } of matched.planned) if (each) expect(each.category).toBe(category);
        // Nothing is open while something of its kind is beyond the plan.
        const open = matched.planned.filter((each) => each.done === null).map(({ category }) => category);
        expect(matched.extra.filter(({ category }) => open.includes(category))).toEqual([]);
        expect({ planned, done }).toEqual(before);
      }),
      runs(1000, 50_000),
    );
  });

  test('is matched as by trying all ways', () => {
    let tried = 0;
    fc.assert(
      fc.property(anyWeeks, (week) => {
        fc.pre(allDiffer(week));
        tried += 1;
        expect(byBruteForce(week)).toEqual([placesOf(week)]);
      }),
      runs(500, 20_000),
    );
    expect(tried).toBeGreaterThan(20);
  });

  test('is matched alike in whatever order it is told', () => {
    const shuffled = anyWeeks.chain((week) =>
      fc.record({
        week: fc.constant(week),
        planned: fc.shuffledSubarray([...week.planned], { minLength: week.planned.length }),
        done: fc.shuffledSubarray([...week.done], { minLength: week.done.length }),
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ week, planned, done }) => {
        fc.pre(allDiffer(week));
        const inPairs = (one: Week): Map<unknown, unknown> =>
          new Map(matchSessions(one.planned, one.done).planned.map((each, at) => [one.planned[at], each.done]));
        const pairs = inPairs({ planned, done });
        expect(week.planned.map((each) => pairs.get(each))).toEqual([...inPairs(week).values()]);
      }),
      runs(500, 20_000),
    );
  });
});
