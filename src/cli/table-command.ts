import { tableCsv } from '../exchange/table-text.js';
import { seasonTable, weekTable } from '../words/handout/tables.js';
import { weekText } from '../words/handout/week-text.js';
import { handOver } from './hand-over.js';
import { partOf } from './plan-answer.js';
import type { Session } from './session.js';

/** `weekwright table`: the sessions of a week, or the weeks of a season, as CSV. */
export function tableCommand(session: Session): Promise<number> {
  const { words } = session.speech;
  return handOver(session, {
    own: { problems: [], faults: [] },
    write: ({ method, plan, told, weeks, monday }) => {
      // It has no days.
      if (monday === null) return { text: tableCsv(seasonTable(words, method, partOf(plan.season))), weeks: [] };
      const week = weeks(monday);
      return { text: tableCsv(weekTable(words, monday, weekText(words, method, { week, told }))), weeks: [week] };
    },
  });
}
