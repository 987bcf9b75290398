import type { Reason } from '../words/reason.js';
import { citations } from '../words/sources.js';

/** What a number rests on, how well it is founded, and its sources, a line each. */
export const reasonText = ({ text, status, sources }: Reason): string =>
  [
    `${text} (${status})`,
    ...citations(sources).map(({ cite, doi }) => `  ${cite}${doi === null ? '' : `. doi:${doi}`}`),
  ].join('\n');
