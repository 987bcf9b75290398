/** What a cell of the grid shows. */
export interface GridCell {
  readonly text: string;
  /** Its difference from the reference; '' where there is none to tell. */
  readonly difference: string;
  readonly mark: 'by-hand' | 'gives-way' | 'wrong' | 'off' | 'none';
  /** For a copy of the table: the number behind the text, where there is one. */
  readonly value: number | string | null;
}
