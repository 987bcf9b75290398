/** A string of JSON (to the end where it is not closed), or one bracket. */
const stringOrBracket = /"(?:[^"\\]|\\.)*"?|[[\]{}]/gs;

/**
 * How deep objects and lists of a JSON text stand inside one another, without parsing it.
 *
 * @example nestingOf('{ "a": [1, "[["] }') // 2
 */
export function nestingOf(json: string): number {
  let [depth, deepest] = [0, 0];
  for (const [token] of json.matchAll(stringOrBracket)) {
    if (token === '[' || token === '{') depth += 1;
    if (token === ']' || token === '}') depth -= 1;
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}
