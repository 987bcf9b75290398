import type { Card } from '../../plan/week/cards.js';

/** A card that is being moved, by pointer or by keys. */
export interface Carrying {
  readonly card: Card;
  /** The day that it is over. */
  readonly day: number;
  readonly by: 'keys' | 'pointer';
}
