/** From one number to another, ends included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}
