import type { CategoryId } from '../../training/method/ids.js';
import type { DoneSession } from '../../training/record/done-session.js';
import { csvLine } from '../csv-line.js';
import { guarded } from '../formula-guard.js';
import { fieldIds, type Field } from './mapping.js';

/**
 * Sessions as CSV of RFC 4180, with a row of titles: ISO dates, plain minutes, efforts with a decimal point, nothing where
 * an effort is not known. Texts that a spreadsheet would take for a formula get an apostrophe in front. Who saves it as a
 * file puts a byte order mark in front.
 */
export function writeSessions(
  sessions: readonly DoneSession[],
  head: Readonly<Record<Field, string>>,
  kinds: Readonly<Record<CategoryId, string>>,
): string {
  const titles = fieldIds.map((field) => guarded(head[field]));
  const rows = sessions.map(({ date, category, minutes, effort }) => [
    date,
    guarded(kinds[category]),
    String(minutes),
    effort === null ? '' : String(effort),
  ]);
  return [titles, ...rows].map(csvLine).join('');
}
