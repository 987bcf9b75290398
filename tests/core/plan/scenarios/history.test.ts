import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newSheet } from '../../../../src/plan/scenarios/change.js';
import { beginHistory, record, redo, settle, undo, type History } from '../../../../src/plan/scenarios/history.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { runs } from '../../../reference/runs.js';
import { acts } from './random-acts.js';
import { fourHours } from './sheets.js';

/** A history of texts, after these acts: `b`, or `b@slider` for one that goes on with others on the slider. */
function after(...written: readonly string[]): History<string> {
  return written.reduce((history, text) => {
    const [value = '', act = null] = text.split('@');
    return record(history, value, act);
  }, beginHistory('a'));
}
const presents = (history: History<string>): string => {
  const back: string[] = [];
  for (let each = history; ; each = undo(each)) {
    back.unshift(each.present);
    if (undo(each) === each) return back.join(' ');
  }
};

describe('record(history, value, act)', () => {
  test('makes a step of each act that stands alone', () => {
    expect(presents(after('b', 'c', 'd'))).toBe('a b c d');
  });

  test('makes one step of acts on the same thing that follow each other', () => {
    expect(presents(after('b@hours', 'c@hours', 'd@hours'))).toBe('a d');
    expect(presents(after('b@hours', 'c@phase', 'd@hours'))).toBe('a b c d');
    expect(presents(after('b@hours', 'c', 'd@hours'))).toBe('a b c d');
  });

  test('makes another step once the act has come to its end', () => {
    expect(presents(record(settle(after('b@hours')), 'c', 'hours'))).toBe('a b c');
    expect(presents(record(undo(after('b', 'c@hours')), 'd', 'hours'))).toBe('a b d');
    expect(presents(record(redo(undo(after('b@hours'))), 'c', 'hours'))).toBe('a b c');
  });

  test('does nothing where nothing changes', () => {
    const history = after('b@hours');
    expect(record(history, 'b')).toBe(history);
  });

  test('forgets what was taken back', () => {
    const history = record(undo(after('b', 'c')), 'd');
    expect(presents(history)).toBe('a b d');
    expect(redo(history)).toBe(history);
  });

  test('keeps 500 steps', () => {
    const many = Array.from({ length: 600 }, (_, index) => String(index));
    const history = after(...many);
    expect(presents(history).split(' ')).toEqual(many.slice(-501));
    const all = Array.from({ length: 600 }).reduce<History<string>>(undo, history);
    expect([all.present, all.past.length, all.future.length]).toEqual(['99', 0, 500]);
    expect(Array.from({ length: 600 }).reduce<History<string>>(redo, all).present).toBe('599');
  });
});

describe('settle, undo and redo', () => {
  test('give the same history where there is nothing to do', () => {
    const fresh = beginHistory('a');
    expect([undo(fresh), redo(fresh), settle(fresh)]).toEqual([fresh, fresh, fresh]);
    expect(undo(fresh)).toBe(fresh);
    expect(redo(fresh)).toBe(fresh);
    expect(settle(fresh)).toBe(fresh);
  });

  test('lead back through the very sheets there were, and forth again', () => {
    fc.assert(
      fc.property(fc.array(acts, { minLength: 1, maxLength: 20 }), (some) => {
        const sheets = [newSheet(builtInMethod, fourHours)];
        let history = beginHistory(sheets[0]!);
        for (const act of some) {
          const next = act(history.present);
          if (next !== history.present) sheets.push(next);
          history = record(history, next);
        }
        for (const sheet of [...sheets].reverse()) {
          expect(history.present).toBe(sheet);
          history = undo(history);
        }
        for (const sheet of sheets) {
          expect(history.present).toBe(sheet);
          history = redo(history);
        }
        expect(history.present).toBe(sheets.at(-1));
      }),
      runs(200, 20_000),
    );
  });
});
