import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import published from '../../../../shared/checks/csv.json' with { type: 'json' };
import { guessMapping } from '../../../../src/exchange/record/guess-mapping.js';
import { readSessions } from '../../../../src/exchange/record/read-sessions.js';
import { writeSessions } from '../../../../src/exchange/record/write-sessions.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import { patience, runs } from '../../../reference/runs.js';
import { doneSession, vocabularyOf, writing } from './random-sessions.js';
import { head, kinds, tableOf, vocabulary } from './sample.js';

const easy: DoneSession = { date: '2026-11-30', category: 'slow', minutes: 45, effort: 3.5 };

describe('writeSessions(sessions, head, kinds)', () => {
  test('is a line of titles and one for each session, in the order given', () => {
    expect(writeSessions([{ ...easy, effort: null, category: 'cross' }, easy], head, kinds)).toBe(
      'Date,Kind,Minutes,Effort\r\n2026-11-30,cross-training,45,\r\n2026-11-30,slow running,45,3.5\r\n',
    );
  });

  test('of no sessions is the line of titles, which reads as a table without rows', () => {
    const text = writeSessions([], head, kinds);
    expect(text).toBe('Date,Kind,Minutes,Effort\r\n');
    expect(tableOf(text)).toEqual({ head: ['Date', 'Kind', 'Minutes', 'Effort'], rows: [] });
  });

  test.each(published.formulas.cases)('guards what begins with $in.name (OWASP)', ({ in: { begins } }) => {
    const text = `${begins}1+1`;
    const written = writeSessions([easy], { ...head, date: text }, { ...kinds, slow: text });
    expect(csvParseRows(written)).toEqual([
      [`'${text}`, 'Kind', 'Minutes', 'Effort'],
      ['2026-11-30', `'${text}`, '45', '3.5'],
    ]);
  });

  test(
    'is read back as the same sessions, whatever the titles and the kinds are called',
    () => {
      const sessions = fc.array(doneSession, { minLength: 20, maxLength: 40 });
      fc.assert(
        fc.property(sessions, writing, (done, names) => {
          const text = writeSessions(done, names.head, names.kinds);
          expect(new Set(csvParseRows(text).map((cells) => cells.length))).toEqual(new Set([4]));
          const table = tableOf(text);
          const mapping = guessMapping(table, vocabularyOf(names));
          const { read, unread, unusedColumns } = readSessions(table, mapping);
          expect(unread).toEqual([]);
          expect(unusedColumns).toEqual([]);
          expect(read.map(({ session }) => session)).toEqual(done);
        }),
        runs(500, 20_000),
      );
    },
    patience,
  );

  test(
    'is read back where the words are those of a page, by d3 too',
    () => {
      fc.assert(
        fc.property(fc.array(doneSession, { minLength: 1, maxLength: 40 }), (done) => {
          const text = writeSessions(done, head, kinds);
          const cells = ({ date, category, minutes, effort }: DoneSession): string[] => [
            date,
            kinds[category],
            String(minutes),
            effort === null ? '' : String(effort),
          ];
          expect(csvParseRows(text)).toEqual([Object.values(head), ...done.map(cells)]);
          const table = tableOf(`\uFEFF${text}`);
          const { read } = readSessions(table, guessMapping(table, vocabulary));
          expect(read.map(({ line, session }) => [line, session])).toEqual(done.map((each, at) => [at + 2, each]));
        }),
        runs(300, 20_000),
      );
    },
    patience,
  );
});
