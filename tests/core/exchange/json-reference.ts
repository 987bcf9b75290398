/*
 * Where a text ceases to be JSON, found out character by character: the other way to do it, which the tests hold ours
 * against. Written from the grammar of RFC 8259, sections 2 to 7.
 */

/** What stands around a character, the innermost last; what is still to come of the innermost is in the state. */
interface Machine {
  readonly open: ('{' | '[')[];
  state: State;
}

type State =
  | 'value'
  | 'first of list'
  | 'first of object'
  | 'key'
  | 'colon'
  | 'after'
  | { readonly word: string }
  | { readonly string: 'text' | 'escape' | 1 | 2 | 3 | 4; readonly isKey: boolean }
  | { readonly number: 'minus' | 'zero' | 'digits' | 'point' | 'decimals' | 'e' | 'sign' | 'exponent' };

const isWhite = (character: string): boolean => [' ', '\t', '\n', '\r'].includes(character);
const isDigit = (character: string): boolean => character >= '0' && character <= '9' && character.length === 1;

/**
 * The place of the first character after which nothing makes JSON of a text any more; the length of the text where
 * something could; null where it is JSON.
 */
export function firstFault(text: string): number | null {
  const machine: Machine = { open: [], state: 'value' };
  for (let at = 0; at < text.length; at += 1) if (!step(machine, text.charAt(at))) return at;
  // A number ends where the text does.
  step(machine, ' ');
  return machine.state === 'after' && machine.open.length === 0 ? null : text.length;
}

function step(machine: Machine, character: string): boolean {
  const { state } = machine;
  if (typeof state === 'string') return isWhite(character) || stepBetween(machine, state, character);
  if ('word' in state) return stepInWord(machine, state.word, character);
  if ('string' in state) return stepInString(machine, state, character);
  return stepInNumber(machine, state.number, character);
}

function stepBetween(machine: Machine, state: State & string, character: string): boolean {
  const { open } = machine;
  const around = open.at(-1);
  if (state === 'after') {
    if (character === ',' && around) return go(machine, around === '{' ? 'key' : 'value');
    return closes(machine, character);
  }
  if (state === 'colon') return character === ':' && go(machine, 'value');
  if (state === 'key' || state === 'first of object') {
    if (character === '"') return go(machine, { string: 'text', isKey: true });
    return state === 'first of object' && closes(machine, character);
  }
  if (state === 'first of list' && character === ']') return closes(machine, character);
  return starts(machine, character);
}

function starts(machine: Machine, character: string): boolean {
  if (character === '{' || character === '[') {
    machine.open.push(character);
    return go(machine, character === '{' ? 'first of object' : 'first of list');
  }
  if (character === '"') return go(machine, { string: 'text', isKey: false });
  if (character === '-') return go(machine, { number: 'minus' });
  if (isDigit(character)) return go(machine, { number: character === '0' ? 'zero' : 'digits' });
  const word = ['true', 'false', 'null'].find((each) => each.startsWith(character));
  return word !== undefined && go(machine, { word: word.slice(1) });
}

function closes(machine: Machine, character: string): boolean {
  const fits = { '{': '}', '[': ']' }[machine.open.at(-1) ?? '{'] === character && machine.open.length > 0;
  if (fits) machine.open.pop();
  return fits && go(machine, 'after');
}

function stepInWord(machine: Machine, word: string, character: string): boolean {
  return word.startsWith(character) && go(machine, word.length === 1 ? 'after' : { word: word.slice(1) });
}

type InString = Extract<State, { readonly isKey: boolean }>;

function stepInString(machine: Machine, { string, isKey }: InString, character: string): boolean {
  const then = (next: InString['string']): boolean => go(machine, { string: next, isKey });
  if (string === 'text') {
    if (character === '"') return go(machine, isKey ? 'colon' : 'after');
    return character >= ' ' && then(character === '\\' ? 'escape' : 'text');
  }
  if (string === 'escape') return '"\\/bfnrtu'.includes(character) && then(character === 'u' ? 1 : 'text');
  const isHex = /^[0-9a-fA-F]$/.test(character);
  return isHex && then(string === 1 ? 2 : string === 2 ? 3 : string === 3 ? 4 : 'text');
}

type InNumber = Extract<State, { readonly number: string }>['number'];

/** Where a part of a number leads, by what comes: a digit, a point, an E or a sign. */
const numberTable: Readonly<Record<InNumber, Partial<Record<'digit' | 'zero' | '.' | 'e' | 'sign', InNumber>>>> = {
  minus: { zero: 'zero', digit: 'digits' },
  zero: { '.': 'point', e: 'e' },
  digits: { zero: 'digits', digit: 'digits', '.': 'point', e: 'e' },
  point: { zero: 'decimals', digit: 'decimals' },
  decimals: { zero: 'decimals', digit: 'decimals', e: 'e' },
  e: { zero: 'exponent', digit: 'exponent', sign: 'sign' },
  sign: { zero: 'exponent', digit: 'exponent' },
  exponent: { zero: 'exponent', digit: 'exponent' },
};

function stepInNumber(machine: Machine, number: InNumber, character: string): boolean {
  const kind =
    character === '0'
      ? 'zero'
      : isDigit(character)
        ? 'digit'
        : 'eE'.includes(character)
          ? 'e'
          : '+-'.includes(character)
            ? 'sign'
            : '.';
  const next = kind === '.' && character !== '.' ? undefined : numberTable[number][kind];
  if (next !== undefined) return go(machine, { number: next });
  const isWhole = ['zero', 'digits', 'decimals', 'exponent'].includes(number);
  if (!isWhole) return false;
  go(machine, 'after');
  return step(machine, character);
}

function go(machine: Machine, state: State): true {
  machine.state = state;
  return true;
}

/** The line of a place, from 1. A line ends with CR, LF or both. */
export const lineAt = (text: string, at: number): number => text.slice(0, at).split(/\r\n|[\r\n]/).length;

/** Where V8 sees the fault of a text that is no JSON; null where its message does not say. */
export function placeByV8(text: string): number | null {
  try {
    JSON.parse(text);
  } catch (error) {
    const [, position] = /at position (\d+)/.exec(String(error)) ?? [];
    return position === undefined ? null : Number(position);
  }
  throw new Error('the text is JSON');
}
