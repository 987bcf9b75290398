import { findRecords } from './find-records.js';

/** Where nothing else decides, the rarer inside a cell comes first: decimal commas are common, tabs are not. */
const delimiters = ['\t', ';', ','] as const;
const recordsLookedAt = 10;

/**
 * The delimiter of a table: one by which quotation marks stand where RFC 4180 allows them; then the one by which most of
 * the first ten records have as many cells as one another, and more than one; then the one that makes more cells of them.
 *
 * @example guessDelimiter('30.11.2026;45,5;7') // ';'
 */
export function guessDelimiter(text: string): string {
  const [first, ...others] = delimiters.map((delimiter) => ({ delimiter, ...agreementBy(text, delimiter) }));
  const better = (best: typeof first, next: typeof first): typeof first => (isBetter(next, best) ? next : best);
  return others.reduce(better, first)?.delimiter ?? ',';
}

interface Agreement {
  readonly isSound: boolean;
  readonly records: number;
  readonly cells: number;
}

function isBetter(next: Agreement | undefined, best: Agreement | undefined): boolean {
  if (!next || !best) return best === undefined;
  if (next.isSound !== best.isSound) return next.isSound;
  return next.records === best.records ? next.cells > best.cells : next.records > best.records;
}

/** How many records have the number of cells that most of them have, one cell alone not counted. */
function agreementBy(text: string, delimiter: string): Agreement {
  const { records, damagedLine } = findRecords(text, delimiter, recordsLookedAt);
  const counts = records.map(({ cells }) => cells.length).filter((cells) => cells > 1);
  const isSound = damagedLine === null && !records.some((record) => record.hasStrayQuote);
  return counts.reduce<Agreement>(
    (best, cells) => {
      const next = { isSound, records: counts.filter((each) => each === cells).length, cells };
      return isBetter(next, best) ? next : best;
    },
    { isSound, records: 0, cells: 0 },
  );
}
