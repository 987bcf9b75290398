import type { PlanRunning } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { wideningReasons, type EqualTime } from '../training/running/equal-times.js';
import { categoryTitle } from '../words/category-name.js';
import { clockTime } from '../words/running/clock-time.js';
import { distancesOf } from '../words/running/distances.js';
import { effortSpan } from '../words/running/effort-span.js';
import { heartSpanText } from '../words/running/heart-text.js';
import { raceName } from '../words/running/race-name.js';
import { wideningLine } from '../words/running/widening-line.js';
import type { Words } from '../words/words.js';
import { under } from './paragraphs.js';
import type { Speech } from './speech.js';
import { textTable, type Alignment } from './text-table.js';

interface Column {
  readonly heading: string;
  readonly cells: readonly string[];
  readonly align: Alignment;
}

/** How each kind of run is run; what is not known has no column. */
export function guideTable({ words, texts }: Speech, method: Method, { guides, wishes }: PlanRunning): string {
  const { per, paceAlone } = distancesOf(words, wishes.unit);
  const paces = guides.flatMap(({ pace }) => (pace ? [paceAlone(pace)] : []));
  const hearts = guides.flatMap(({ heart }) => (heart ? [heartSpanText(words, heart)] : []));
  const heading = (column: 'pace' | 'effort' | 'feel'): string => texts.say(`running.table.${column}`, { per });
  const columns: readonly Column[] = [
    {
      heading: words.say('table.kind'),
      cells: guides.map(({ category }) => categoryTitle(words, method, category)),
      align: 'left',
    },
    { heading: heading('pace'), cells: paces, align: 'right' },
    { heading: words.say('running.guide.heart'), cells: hearts, align: 'right' },
    { heading: heading('effort'), cells: guides.map(({ effort }) => effortSpan(words, effort)), align: 'left' },
    {
      heading: heading('feel'),
      cells: guides.map(({ category }) => words.say(`running.feel.${category}`)),
      align: 'left',
    },
  ];
  return tableOf(columns.filter(({ cells }) => cells.length > 0));
}

function tableOf(columns: readonly Column[]): string {
  const rows = columns[0]?.cells.map((_, row) => columns.map(({ cells }) => cells[row] ?? '')) ?? [];
  return textTable(
    [columns.map(({ heading }) => heading), ...rows],
    columns.map(({ align }) => align),
  );
}

const marks = ['¹', '²'];

/** What the race is worth at other distances, with a note for each reason why a range is wider. */
export function equalTimesTable(words: Words, method: Method, { equalTimes }: PlanRunning): string {
  const reasons = wideningReasons.filter((reason) => equalTimes.some(({ widened }) => widened === reason));
  const markOf = ({ widened }: EqualTime): string => (widened ? ` ${marks[reasons.indexOf(widened)] ?? ''}` : '');
  const headings = (['distance', 'time', 'riegel', 'uptake'] as const).map((column) =>
    words.say(`running.equal.${column}`),
  );
  const rows = equalTimes.map((each) => [
    raceName(words, each.metres),
    `${timeRange(words, each)}${markOf(each)}`,
    clockTime(each.riegel),
    clockTime(each.uptake),
  ]);
  const notes = reasons.map((reason, index) => `${marks[index] ?? ''} ${wideningLine(words, method, reason)}`);
  return [textTable([headings, ...rows], ['left', 'left', 'right', 'right']), ...notes].join('\n');
}

const timeRange = (words: Words, { from, to }: EqualTime): string =>
  from === to ? clockTime(from) : words.say('running.span', { from: clockTime(from), to: clockTime(to) });

/** The bands of intensity as beats a minute, under their title; nothing where the highest heart rate is not known. */
export const bandTable = (words: Words, { bands }: PlanRunning): string =>
  bands.length === 0
    ? ''
    : under(
        words.say('running.bands'),
        textTable(
          bands.map((band) => [words.say(`running.band.${band.id}`), heartSpanText(words, band)]),
          ['left', 'right'],
        ),
      );
