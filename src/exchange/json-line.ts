/** A token of JSON (RFC 8259) with the white space in front of it: a bracket or sign, a string, or another value. */
const token =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null))/y;

/**
 * The line, from 1, on which a text ceases to be JSON; that of its end where something is missing there. Browsers tell it
 * each in their own way, or not at all.
 *
 * @param text what `JSON.parse` refuses.
 * @example jsonFaultLine('{\n  "a": 1,\n  b: 2\n}') // 3
 */
export function jsonFaultLine(text: string): number {
  const at = faultAt(text);
  // The fault is what comes after white space, not the white space; and white space is what JSON takes for it.
  const white = /^[ \t\n\r]*/.exec(text.slice(at))?.[0] ?? '';
  const isEnd = at + white.length === text.length;
  return linesIn(text.slice(0, isEnd ? at : at + white.length));
}

const linesIn = (text: string): number => text.split(/\r\n|[\r\n]/).length;

/** What may come next. */
type Next = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or end';

/** The place of the first token that may not stand there. */
function faultAt(text: string): number {
  const open: ('{' | '[')[] = [];
  let next: Next = 'value';
  let at = 0;
  for (;;) {
    token.lastIndex = at;
    const [found, sign, string] = token.exec(text) ?? [];
    if (found === undefined) return at;
    const after = step(next, { sign, isString: string !== undefined, open });
    if (after === null) return at;
    next = after;
    at += found.length;
  }
}

interface Token {
  readonly sign: string | undefined;
  readonly isString: boolean;
  /** Brackets that are open: changed by those that open and close. */
  readonly open: ('{' | '[')[];
}

/** What may come after a token; null where the token may not come. */
function step(next: Next, { sign, isString, open }: Token): Next | null {
  const isValue = next === 'value' || next === 'value or ]';
  if (sign === undefined) return isValue ? ', or end' : isString && next.startsWith('key') ? ':' : null;
  if (sign === '{' || sign === '[') {
    if (!isValue) return null;
    open.push(sign);
    return sign === '{' ? 'key or }' : 'value or ]';
  }
  if (sign === ':') return next === ':' ? 'value' : null;
  const around = open.at(-1);
  if (sign === ',') return next === ', or end' && around ? (around === '{' ? 'key' : 'value') : null;
  const closes = (sign === '}') === (around === '{') && around !== undefined;
  const mayClose = next === ', or end' || next === (sign === '}' ? 'key or }' : 'value or ]');
  if (!closes || !mayClose) return null;
  open.pop();
  return ', or end';
}
