import { list, object, oneOf, readAs, text, whole, type Reader } from '../plan/fields.js';
import type { Outcome, Problem } from '../problem.js';
import { parseDocument } from './parse-document.js';
import { planFileLimits } from './plan-file.js';

/** A plan that somebody keeps on a device. */
export interface KeptPlan {
  /** As the person calls it; no two have the same. */
  readonly name: string;
  /** ISO date of the day it was kept. */
  readonly kept: string;
  /** The text of its file. */
  readonly text: string;
}

/** Most plans in one file, and most characters of it; inside one another objects and lists stand two deeper than in a plan. */
export const keptFileLimits = { plans: 500, characters: 20_000_000, depth: planFileLimits.depth + 2 } as const;

const format = 'weekwright-kept';

/** All plans that are kept, as the text of one file; each is in it as in a file of its own. */
export function writeKeptText(plans: readonly KeptPlan[]): string {
  const written = plans.map(({ name, kept, text: file }) => ({ name, kept, file: JSON.parse(file) as unknown }));
  return `${JSON.stringify({ format, version: 1, plans: written }, null, 2)}\n`;
}

/**
 * Reads a file of several plans; the plans themselves are read when they are opened.
 *
 * @returns the plans, null where the text is another document or none, or what is wrong.
 */
export function readKeptText(given: string): Outcome<readonly KeptPlan[]> | null {
  const parsed = parseDocument(given, keptFileLimits);
  if (!parsed.ok || !isKeptDocument(parsed.value)) return null;
  const problems: Problem[] = [];
  const read = readAs(document, parsed.value, problems);
  return read && problems.length === 0 ? { ok: true, value: read } : { ok: false, problems };
}

const isKeptDocument = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'format' in value && value.format === format;

/** A plan inside: it is read when it is opened. */
const written: Reader<string> = (value) => JSON.stringify(value, null, 2);

const plan: Reader<KeptPlan | undefined> = object(({ need }) => {
  const [name, kept, file] = [need('name', text), need('kept', text), need('file', written)];
  return name === undefined || kept === undefined || file === undefined ? undefined : { name, kept, text: file };
});

const document: Reader<readonly KeptPlan[]> = object(({ need }) => {
  need('format', oneOf([format]));
  need('version', whole(1, 1));
  return need('plans', list(plan, keptFileLimits.plans)) ?? [];
});
