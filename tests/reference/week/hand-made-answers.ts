import { expect } from 'vitest';
import { clashesOf } from '../../../src/training/week/clashes.js';
import { canLay, lay } from '../../../src/training/week/lay.js';
import type { Laid } from '../../../src/training/week/week-problem.js';
import { noted, type Note } from './hand-made.js';

// The answers were worked out on paper; the costs are those of the design: the project's own assumption.

/** A week of which the clashes are known. */
export interface ClashCase extends Note {
  readonly why: string;
  /** Each clash: its id and its days, Monday 0; null where nothing fits. */
  readonly clashes: readonly string[] | null;
  readonly cost?: number;
}

/** Lays the week, and compares days and cost of what it clashes with. */
export function expectClashes({ why: _, clashes, cost = 0, ...note }: ClashCase): void {
  const problem = noted(note);
  const laid = lay(problem);
  expect(canLay(problem)).toBe(clashes !== null);
  const found = laid && clashesOf(problem, laid);
  expect(found?.map(({ kind, days }) => [kind, ...days].join(' ')) ?? null).toEqual(clashes);
  expect(found?.reduce((sum, each) => sum + each.cost, 0) ?? 0).toBe(cost);
}

/** A week of which the lengths are known. */
export interface LengthCase extends Note {
  readonly why: string;
  /** The steps on the seven days of some kinds; null where nothing fits. */
  readonly laid: Partial<Laid> | null;
  /** Each clash: its id, and by how many minutes or sessions. */
  readonly clashes?: readonly string[];
  readonly cost?: number;
}

/** Lays the week, and compares lengths and cost. */
export function expectLengths({ why: _, laid, clashes = [], cost = 0, ...note }: LengthCase): void {
  const problem = noted(note);
  const found = lay(problem);
  if (laid === null) {
    expect(found).toBeNull();
    return;
  }
  expect(found).toMatchObject(laid);
  const broken = found ? clashesOf(problem, found) : [];
  expect(broken.map(({ kind, by }) => `${kind} ${by}`)).toEqual(clashes);
  expect(broken.reduce((sum, each) => sum + each.cost, 0)).toBe(cost);
}
