import type { Reason } from '../words/reason.js';
import { citations } from '../words/sources.js';

/** What a number rests on, how well it is founded, and its sources, a line each. */
export const reasonText = ({ text, status, sources }: Reason): string =>
  [`${text} (${status})`, ...citationLines(sources)].join('\n');

/** Sources as they are cited, indented. */
export const citationLines = (sources: readonly string[]): readonly string[] =>
  citations(sources).map(({ cite, doi }) => `  ${cite}${doi === null ? '' : `. doi:${doi}`}`);
