import { expect } from 'vitest';
import { ran, type World } from './fake-io.js';

/** The page of a line that is answered. */
export async function pageOf(line: string | readonly string[], world: World = {}): Promise<string> {
  const { code, output, errors } = await ran(typeof line === 'string' ? line.split(' ') : line, world);
  expect([code, errors]).toEqual([0, '']);
  return output;
}

/** The document of a line that is answered with `--json`. */
export async function jsonOf(line: string | readonly string[], world: World = {}): Promise<unknown> {
  const argv = typeof line === 'string' ? line.split(' ') : line;
  return JSON.parse(await pageOf([...argv, '--json'], world)) as unknown;
}

/** The lines of a paragraph of the page, the one that matches. */
export function paragraph(output: string, first: RegExp): readonly string[] {
  const found = output.split('\n\n').find((each) => first.test(each));
  return found?.trimEnd().split('\n') ?? [];
}

/** A line of a table, cut into its cells. */
export const cellsOf = (line: string | undefined): readonly string[] => line?.trim().split(/ {2,}/) ?? [];

/** Wherever a key, a placeholder or what is no number shows through. */
export const leaks =
  /\{\w+\}|\b(?:running|strength|season|option|heading|part|problem|status|movement|stage|check|checks|advice|basis|screening|differs)(?:-\w+)?\.[a-z]|undefined|NaN|\u00AD/;
