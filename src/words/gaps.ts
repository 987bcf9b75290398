// Written by `npm run compile` from shared/locales. Change those, not this.
import type { Messages } from './phrases.js';

/** English texts that stand in for those that a language has not, by the language; a test reports each. */
export const gaps: Readonly<Record<string, Messages>> = {};
