import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDone, doneInWeek, mergeDone, removeDone, replaceDone } from '../../../../src/plan/record/acts.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import { patience, runs } from '../../../reference/runs.js';
import { did } from '../../training/record/week-sessions.js';
import { frozen } from '../scenarios/sheets.js';

const [monday, tuesday, sunday] = [did('slow', 30, 'mon', 3), did('tempo', 35, 'tue'), did('slow', 90, 'sun')];
const record = frozen([monday, sunday]);

describe('a session that was done', () => {
  test('comes in where its day is', () => {
    expect(addDone(record, tuesday)).toEqual([monday, tuesday, sunday]);
    expect(addDone([], tuesday)).toEqual([tuesday]);
    expect(addDone(record, { ...monday, date: '2025-12-31' })[0]?.date).toBe('2025-12-31');
    expect(addDone(record, { ...monday, date: '2027-01-01' })[2]?.date).toBe('2027-01-01');
  });

  test('comes after those of its day', () => {
    const second = did('strength', 20, 'mon');
    expect(addDone(record, second)).toEqual([monday, second, sunday]);
  });

  test('goes out alone, though another is alike', () => {
    const alike = { ...monday };
    expect(removeDone([monday, alike, sunday], alike)).toEqual([monday, sunday]);
    expect(removeDone([monday, alike, sunday], alike)[0]).toBe(monday);
    expect(removeDone(record, tuesday)).toEqual(record);
  });

  test('gives way to another, which may be of another day', () => {
    expect(replaceDone(record, monday, did('slow', 45, 'mon'))).toEqual([did('slow', 45, 'mon'), sunday]);
    const friday = did('cross', 40, 'fri');
    expect(replaceDone([monday, tuesday, sunday], sunday, friday)).toEqual([monday, tuesday, friday]);
  });
});

describe('the sessions of a week', () => {
  test('are those from its Monday to its Sunday', () => {
    const around = [{ ...monday, date: '2026-11-22' }, monday, tuesday, sunday, { ...monday, date: '2026-11-30' }];
    expect(doneInWeek(around, { start: '2026-11-23', end: '2026-11-29' })).toEqual([monday, tuesday, sunday]);
    expect(doneInWeek(around, { start: '2026-11-30', end: '2026-12-06' })).toEqual([around[4]]);
    expect(doneInWeek(around, { start: '2026-12-07', end: '2026-12-13' })).toEqual([]);
  });
});

describe('sessions from elsewhere', () => {
  test('come in where they are not known', () => {
    expect(mergeDone(record, [sunday, tuesday])).toEqual({ record: [monday, tuesday, sunday], added: 1, known: 1 });
  });

  test('are known by day, kind and minutes: what else is told of them stays as it is', () => {
    const merged = mergeDone(record, [{ ...monday, effort: 9 }]);
    expect(merged).toEqual({ record: [monday, sunday], added: 0, known: 1 });
    const others = [
      { ...monday, minutes: 31 },
      { ...monday, category: 'cross' as const },
      { ...monday, date: '2026-11-24' },
    ];
    expect(mergeDone(record, others)).toMatchObject({ added: 3, known: 0 });
  });

  test('that are two alike on one day are two: of which the record may have none, one or both', () => {
    const twice = [{ ...monday }, { ...monday }];
    expect(mergeDone([], twice)).toEqual({ record: twice, added: 2, known: 0 });
    expect(mergeDone([monday], twice)).toEqual({ record: [monday, monday], added: 1, known: 1 });
    expect(mergeDone([monday, { ...monday }], twice)).toEqual({ record: [monday, monday], added: 0, known: 2 });
    // One from elsewhere is one of the two.
    expect(mergeDone([monday, { ...monday }], [monday])).toEqual({ record: [monday, monday], added: 0, known: 1 });
  });
});

const few: fc.Arbitrary<DoneSession> = fc.record({
  date: fc.constantFrom('2026-11-23', '2026-11-24', '2027-01-04'),
  category: fc.constantFrom(...categoryIds.slice(0, 2)),
  minutes: fc.constantFrom(30, 45),
  effort: fc.constantFrom(null, 3),
});
const inOrder = (sessions: readonly DoneSession[]): boolean =>
  sessions.every(({ date }, index) => index === 0 || (sessions[index - 1]?.date ?? '') <= date);
/** How often each session is there, by what tells it from others. */
function counted(sessions: readonly DoneSession[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { date, category, minutes } of sessions) {
    const key = [date, category, minutes].join();
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

describe('any record', { timeout: patience }, () => {
  test('has of every session as many as the one of the two that has more, and nothing comes in a second time', () => {
    fc.assert(
      fc.property(fc.array(few, { maxLength: 8 }), fc.array(few, { maxLength: 8 }), (own, others) => {
        const [before, from] = [structuredClone(own), structuredClone(others)];
        const merged = mergeDone(own, others);
        const [mine, theirs, all] = [counted(own), counted(others), counted(merged.record)];
        for (const key of new Set([...mine.keys(), ...theirs.keys()]))
          expect(all.get(key)).toBe(Math.max(mine.get(key) ?? 0, theirs.get(key) ?? 0));
        expect(merged.added).toBe(merged.record.length - own.length);
        expect(merged.added + merged.known).toBe(others.length);
        expect(own.filter((each) => !merged.record.includes(each))).toEqual([]);
        expect(mergeDone(merged.record, others)).toEqual({ record: merged.record, added: 0, known: others.length });
        expect([own, others]).toEqual([before, from]);
      }),
      runs(1000, 50_000),
    );
  });

  test('is in the order of its dates after every act, and loses nothing but what is taken out', () => {
    fc.assert(
      fc.property(fc.array(few, { maxLength: 8 }), few, fc.nat(7), (sessions, session, at) => {
        const given = frozen([...sessions]);
        const added = addDone(given, session);
        expect(inOrder(added)).toBe(true);
        expect(added).toHaveLength(given.length + 1);
        expect([inOrder(mergeDone(given, [session]).record), inOrder(mergeDone([], given).record)]).toEqual([
          true,
          true,
        ]);
        const old = given[at];
        if (!old) return;
        const replaced = replaceDone(given, old, session);
        expect(inOrder(replaced)).toBe(true);
        expect(replaced).toHaveLength(given.length);
        expect([replaced.includes(session), removeDone(given, old).includes(old)]).toEqual([true, false]);
        expect(removeDone(addDone(given, session), session)).toHaveLength(given.length);
      }),
      runs(1000, 50_000),
    );
  });
});
