import type { Status, Text } from './ids.js';

/** How well a number is founded. */
export interface Founded {
  readonly status: Status;
  /** Ids of entries in shared/evidence. */
  readonly sources?: readonly string[] | undefined;
  /** Why it is so, for whoever asks. */
  readonly reason: Text;
}
