import type { Problem } from '../../problem.js';
import { categoryIds } from '../../training/method/ids.js';
import { recordLimits, type DoneSession } from '../../training/record/done-session.js';
import { faultyDate } from '../faulty-date.js';
import { between, list, object, oneOf, orNull, text, whole, type Reader } from '../fields.js';

const { minutes, effort, sessions } = recordLimits;

const doneSession: Reader<DoneSession | undefined> = object(({ take, need }) => {
  const date = need('date', text);
  const category = need('category', oneOf(categoryIds));
  const told = need('minutes', whole(minutes.least, minutes.most));
  const felt = take('effort', orNull(between(effort.least, effort.most))) ?? null;
  return date === undefined || category === undefined || told === undefined
    ? undefined
    : { date, category, minutes: told, effort: felt };
});

/** Reads what was done; its dates are looked at by `faultyRecordDates`. */
export const recordReader: Reader<readonly DoneSession[]> = list(doneSession, sessions);

/** Dates of a record that are none. */
export const faultyRecordDates = (record: readonly DoneSession[], path: string): Problem[] =>
  record.flatMap(({ date }, index) => faultyDate(`${path}[${index}].date`, date));
