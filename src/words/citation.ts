/** A published source as it is cited: the text, and where it can be read. */
export interface Citation {
  readonly id: string;
  readonly cite: string;
  readonly doi: string | null;
}
