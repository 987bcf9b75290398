import { recordLimits } from '../../training/record/done-session.js';
import { guessColumns } from './guess-columns.js';
import { guessKinds } from './guess-kinds.js';
import { kindsIn } from './kinds-in.js';
import { dateOrders, type DateOrder, type Mapping, type TimeStyle, type Vocabulary } from './mapping.js';
import { cellAt, type RawTable } from './raw-table.js';
import { readDate } from './read-date.js';
import { readDecimal } from './read-decimal.js';
import { readDuration } from './read-duration.js';

/** How a table may be meant: a guess from its titles, else from its cells, for a person to look at. */
export function guessMapping(table: RawTable, vocabulary: Vocabulary): Mapping {
  const columns = guessColumns(table, vocabulary);
  const cells = (column: number | null): readonly string[] =>
    table.rows.map((row) => cellAt(row, column)).filter((cell) => cell !== '');
  const kinds = columns.category === null ? [] : kindsIn(table, columns.category);
  return {
    columns,
    dates: guessDates(cells(columns.date)),
    times: guessTimes(cells(columns.minutes)),
    kinds: guessKinds(kinds, vocabulary.kinds),
  };
}

/**
 * The order that reads most of the dates. Where days and months can be either, dates with points have the day in front;
 * others are not guessed: `ymd` reads none of them, and a person has to tell.
 */
function guessDates(cells: readonly string[]): DateOrder {
  const counts = dateOrders.map((order) => ({
    order,
    count: cells.filter((cell) => readDate(cell, order) !== null).length,
  }));
  const most = Math.max(...counts.map(({ count }) => count));
  const [best = 'ymd', other] = counts.flatMap(({ order, count }) => (count === most ? [order] : []));
  if (best === 'ymd' || other === undefined) return best;
  return cells.some((cell) => /^\d{1,2}\.\d/.test(cell)) ? 'dmy' : 'ymd';
}

/** Sessions of more than ten hours are rare (common practice, no source): `45:30` is hardly meant as 45 hours. */
const mostLikely = 600;
const stylesOfNumbers = ['minutes', 'hours', 'hms', 'ms'] as const;
const stylesOfClocks = ['hms', 'ms', 'minutes', 'hours'] as const;

/** The style that reads most of the durations, the first of equal ones. */
function guessTimes(cells: readonly string[]): TimeStyle {
  const styles = cells.some((cell) => cell.includes(':')) ? stylesOfClocks : stylesOfNumbers;
  const [first, ...others] = styles.map((style) => ({
    style,
    count: cells.filter((cell) => isLikely(cell, style)).length,
  }));
  return others.reduce((best, next) => (best && best.count >= next.count ? best : next), first)?.style ?? 'minutes';
}

function isLikely(cell: string, style: TimeStyle): boolean {
  const minutes = readDuration(cell, style);
  if (minutes === null || minutes % 1 !== 0) return false;
  const most = readDecimal(cell) === null ? mostLikely : recordLimits.minutes.most;
  return minutes >= recordLimits.minutes.least && minutes <= most;
}
