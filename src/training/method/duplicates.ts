import type { Problem } from '../../problem.js';

/** The problem of a name that stands somewhere else already. */
export const duplicate = (path: string, value: unknown): Problem => ({ path, value, code: 'duplicate', allowed: {} });

/** Places in a list where something stands that stood in it before: `repeated(['a', 'b', 'a'])` is `[2]`. */
export function repeated(list: readonly (string | number)[]): number[] {
  const first = new Map<string | number, number>();
  return list.flatMap((each, index) => {
    if (first.has(each)) return [index];
    first.set(each, index);
    return [];
  });
}

interface Named {
  readonly id: string;
}

/** The problems of a list in which an id stands twice. */
export function duplicates(list: readonly Named[], path: string): Problem[] {
  return takenIds(list, [], path);
}

/** The problems of a list in which an id stands twice, or is one of those `taken` already. */
export function takenIds(list: readonly Named[], taken: readonly string[], path: string): Problem[] {
  return repeated([...taken, ...list.map(({ id }) => id)])
    .map((index) => index - taken.length)
    .filter((index) => index >= 0)
    .map((index) => duplicate(`${path}[${index}].id`, list[index]?.id));
}
