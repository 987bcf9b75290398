import { readCsvRoster } from './roster-csv.js';
import { readNdjsonRoster } from './roster-ndjson.js';
import type { Roster } from './roster.js';

/** Reads a roster: NDJSON where the first sign is a bracket, which no header line of ours begins with; else CSV. */
export function readRoster(text: string): Roster {
  const plain = text.replace(/^\uFEFF/, '');
  return /^\s*[{[]/.test(plain) ? readNdjsonRoster(plain) : readCsvRoster(plain);
}
