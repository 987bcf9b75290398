import type { RoleId, StrengthRules } from '../method/strength-rules.js';

/** The part of the body that a movement is for. */
export type Area = StrengthRules['patterns'][number]['area'];

/** What decides who takes turns with whom. */
export interface Pairable {
  readonly role: RoleId;
  readonly area: Area;
}

/** One, or two that take turns. */
export type Turn<T> = readonly [T] | readonly [T, T];

/**
 * Who takes turns: in the order in which they are done, each with the first later one for another part of the body.
 * Jumps stand alone: they want fresh legs and a rest that is one.
 */
export function pairUp<T extends Pairable>(inOrder: readonly T[]): readonly Turn<T>[] {
  const [first, ...later] = inOrder;
  if (!first) return [];
  const partner = later.find((each) => canTakeTurns(first, each));
  if (!partner) return [[first], ...pairUp(later)];
  return [[first, partner], ...pairUp(later.filter((each) => each !== partner))];
}

function canTakeTurns(one: Pairable, other: Pairable): boolean {
  return one.role !== 'jump' && other.role !== 'jump' && one.area !== other.area;
}
