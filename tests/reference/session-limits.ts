import type { ByCategory } from '../../src/training/method/ids.js';
import type { CuttingQuestion } from './session-reference.js';

export type SessionLimits = Pick<CuttingQuestion, 'shortest' | 'typical' | 'longest'>;

/** Minutes of the shortest useful, typical and longest session. Status: assumption. */
export const sessionLimits: ByCategory<SessionLimits> = {
  slow: { shortest: 20, typical: 45, longest: 150 },
  tempo: { shortest: 20, typical: 35, longest: 60 },
  intervals: { shortest: 20, typical: 35, longest: 60 },
  cross: { shortest: 20, typical: 40, longest: 90 },
  strength: { shortest: 15, typical: 35, longest: 60 },
};
