export type Alignment = 'left' | 'right';

/** Rows of cells as lines of text, two spaces between columns, each column aligned as said. */
export function textTable(rows: readonly (readonly string[])[], alignments: readonly Alignment[]): string {
  const widths = alignments.map((_, column) => Math.max(...rows.map((row) => widthOf(row[column] ?? ''))));
  const cell = (text: string, column: number): string => {
    const padding = ' '.repeat((widths[column] ?? 0) - widthOf(text));
    return alignments[column] === 'right' ? padding + text : text + padding;
  };
  return rows.map((row) => row.map(cell).join('  ').trimEnd()).join('\n');
}

const letters = new Intl.Segmenter();

/** Counted in letters as a reader sees them, accents and all; a place where a word may be broken shows nothing. */
const widthOf = (text: string): number => Array.from(letters.segment(text.replaceAll('\u00AD', ''))).length;
