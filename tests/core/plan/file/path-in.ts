import type { Problem } from '../../../../src/problem.js';

const longestName = 60;

/**
 * True where the path of a problem names something that the document has; or, of what is missing or stands for what is
 * left out, something that could be where nothing is.
 */
export function namesAPlace({ path, code }: Problem, document: unknown): boolean {
  if (path === '') return true;
  if (typeof document !== 'object' || document === null) return false;
  return (
    Object.entries(document).some(([key, value]) => startsOf(key, document).some((start) => isIn(start, value))) ||
    isLeftOut()
  );

  function isIn(start: string, value: unknown): boolean {
    if (path === start) return true;
    const rest = path.slice(start.length);
    if (!path.startsWith(start) || !/^[.[]/.test(rest)) return false;
    return namesAPlace({ path: rest.replace(/^\./, ''), code, value: null, allowed: {} }, value);
  }

  function isLeftOut(): boolean {
    return (
      /^\w+$/.test(path) && !Object.hasOwn(document as object, path) && (code === 'missing' || code === 'duplicate')
    );
  }
}

/** A name as a path has it: in brackets of a list, and not longer than can be shown. */
function startsOf(key: string, holder: object): string[] {
  // Of a list in place of an object the entries are told as unknown fields: `before[0][0].1`.
  if (Array.isArray(holder)) return [`[${key}]`, key];
  return [key, key.slice(0, longestName), `${key.slice(0, longestName)}…`];
}
