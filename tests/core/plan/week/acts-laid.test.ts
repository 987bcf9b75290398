import { describe, expect, test } from 'vitest';
import * as acts from '../../../../src/plan/week/acts.js';
import { byCategory, categoryIds, type CategoryId } from '../../../../src/training/method/ids.js';
import type { Laid } from '../../../../src/training/week/week-problem.js';
import { costOf, faultsOf, movesOf } from '../../../reference/week/week-check.js';
import { session, sevenDays, wished } from './seven-days.js';
import { ascending, daysOf, placesOf, problemOf, weekOf, type DayLists } from './weeks.js';

const tempo = session('tempo', 35, 0);
const strength = session('strength', 35, 1);
const slow = session('slow', 35, 2);
const heavy = session('strength', 40, 4);
const cross = session('cross', 35, 6);
const daysWith = (days: DayLists, category: CategoryId): number[] =>
  days.flatMap((sessions, day) => (sessions.some((each) => each.category === category) ? [day] : []));

describe('the week after an act', () => {
  test('is the same where nothing is wanted otherwise: nothing costs less, and nothing has to move', () => {
    const week = weekOf(acts.releaseCard(sevenDays, tempo));
    expect(week.cost).toBe(0);
    for (const id of categoryIds) expect(daysWith(daysOf(week), id)).toEqual(daysWith(sevenDays.days, id));
  });

  test('has a session that was moved on its day', () => {
    const week = weekOf(acts.moveCard(sevenDays, tempo, 5));
    expect(placesOf(week, 'tempo')).toEqual([[5, 35]]);
    // Cross-training beside a slow run, tempo running on Saturday, strength on Monday and Thursday, intervals on Wednesday.
    expect(week.cost).toBe(0);
  });

  test('has another session of the kind elsewhere, where one was moved onto its day', () => {
    const week = weekOf(acts.moveCard(wished({ pinned: [heavy] }), strength, 4));
    const places = placesOf(week, 'strength');
    expect(places).toContainEqual([4, 35]);
    expect(places.filter(([day]) => day !== 4).map(([, minutes]) => minutes)).toEqual([40]);
  });

  test('has what is done where it was, and a missed session on a later day', () => {
    const week = weekOf(acts.missCard(sevenDays, heavy));
    expect(daysOf(week).slice(0, 4)).toEqual(sevenDays.days.slice(0, 4));
    expect(daysOf(week)[4]).toEqual([]);
    expect(placesOf(week, 'strength').map(([day]) => day)[1]).toBeGreaterThan(4);
  });

  test('is none where the last session is missed, and says which minutes are in the way', () => {
    const week = weekOf(acts.missCard(sevenDays, cross));
    expect(week).toMatchObject({ state: 'nothing-fits', days: null });
    expect(week.conflict?.wishes).toMatchObject([{ kind: 'minutes', category: 'cross', amount: 35 }]);
    // All seven steps are missed, and the session.
    expect(week.conflict?.waysOut).toMatchObject([
      { changes: [{ kind: 'settle-sessions', sessions: [] }], cost: 7 + 2 },
    ]);
  });

  // Minutes: 45 + 35 are two steps over 70; 70 in one session is one fewer; of strength 15 + 20 + 40 see hand-made weeks.
  test.each([
    ['resized', acts.resizeCard(sevenDays, slow, 45), 'slow', [35, 45], 2],
    ['merged', acts.mergeCards(sevenDays, slow, session('slow', 35, 5)), 'slow', [70], 2],
    ['split', acts.splitCard(sevenDays, strength, 5), 'strength', [15, 20, 40], 2 + 1 + 2],
    ['taken away', acts.removeCard(sevenDays, cross), 'cross', [], 7 + 2],
    ['added', acts.addSession(sevenDays, 'cross', 30), 'cross', [30, 35], 6 + 2 + 1],
    ['left to the week', acts.settleSessions(wished({ sessions: { cross: [] } }), 'cross', null), 'cross', [35], 0],
  ] as const)('has the lengths of a kind of which a session was %s', (_, wishes, category, lengths, cost) => {
    const week = weekOf(wishes);
    expect([week.sessions[category], week.cost]).toEqual([lengths, cost]);
    for (const { day, minutes } of wishes.pinned) expect(placesOf(week, category)).toContainEqual([day, minutes]);
  });
});

describe('a day that falls out', () => {
  const daySets = (count: number, days: readonly number[]): number[][] =>
    count === 1
      ? days.map((day) => [day])
      : days.flatMap((day, index) => days.slice(index + 1).map((other) => [day, other]));
  const lengths = { slow: [7, 7], tempo: [7], intervals: [5], cross: [7], strength: [7, 8] };
  const stepsOn = (category: CategoryId, days: readonly number[]): number[] =>
    Array.from({ length: 7 }, (_, day) => lengths[category][days.indexOf(day)] ?? 0);

  /** Every week of the wished sessions on some days: with two hours a day their lengths always have room. */
  function allWeeks(days: readonly number[]): Laid[] {
    return daySets(1, days).flatMap((tempoDays) =>
      daySets(
        1,
        days.filter((day) => !tempoDays.includes(day)),
      ).flatMap((intervalDays) =>
        daySets(2, days).flatMap((strengthDays) =>
          daySets(2, days).flatMap((slowDays) =>
            daySets(1, days).map((crossDays) => {
              const taken = {
                slow: slowDays,
                tempo: tempoDays,
                intervals: intervalDays,
                cross: crossDays,
                strength: strengthDays,
              };
              return byCategory((id) => stepsOn(id, taken[id]));
            }),
          ),
        ),
      ),
    );
  }

  test.each([1, 3, 6])('(day %i) costs as little and moves as few sessions as can be', (day) => {
    const wishes = acts.dayFellOut(sevenDays, day);
    const problem = problemOf(wishes);
    // One session more or fewer than wished would cost 2: more than seven sessions on six days have to.
    const ways = allWeeks([0, 1, 2, 3, 4, 5, 6].filter((each) => each !== day))
      .filter((laid) => faultsOf(problem, laid).length === 0)
      .map((laid) => ({ cost: costOf(problem, laid), moves: movesOf(problem, laid) }));
    const [best] = ways.sort((one, other) => one.cost - other.cost || one.moves - other.moves);
    const week = weekOf(wishes);
    const moves = categoryIds.flatMap((id) =>
      daysWith(sevenDays.days, id).filter((each) => !daysWith(daysOf(week), id).includes(each)),
    );
    expect(best?.cost).toBe(1);
    expect({ cost: week.cost, moves: moves.length }).toEqual(best);
    expect(daysOf(week)[day]).toEqual([]);
    expect(ascending(placesOf(week, 'strength').map(([, minutes]) => minutes))).toEqual([35, 40]);
  });
});
