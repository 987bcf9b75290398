import type { Movement, PatternId } from '../../../../src/training/method/strength-rules.js';

/** A movement for a test; what is not said is as plain as can be. */
export const movementOf = (id: string, pattern: PatternId, given: Partial<Movement> = {}): Movement => ({
  ...{ id, pattern, name: id, how: 'like this', grade: 1, equipment: [] },
  ...{ each_side: false, held: false, loaded: false },
  ...given,
});
