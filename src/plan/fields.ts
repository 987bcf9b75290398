import type { Problem } from '../problem.js';

/** Where a value stands, and the list that its faults go to. */
interface Place {
  readonly path: string;
  readonly problems: Problem[];
}

/** What there is of a value that is none of its kind. */
const faulty = Symbol('faulty');

/** Reads a value from outside; where it is none of its kind, that is among the problems. */
export type Reader<T> = (value: unknown, place: Place) => T | typeof faulty;

/*
 * Readers for the fields of a request, by hand: the library that reads method documents would be
 * a fifth of what a page fetches for a panel.
 */

function fault({ path, problems }: Place, value: unknown, problem: Pick<Problem, 'code' | 'allowed'>): typeof faulty {
  problems.push({ path, value: plain(value), ...problem });
  return faulty;
}

/** A value as it can be shown: larger things by their kind. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return `list of ${value.length}`;
  return typeof value === 'object' && value !== null ? 'object' : value;
}

const wrongType = (expected: string): Pick<Problem, 'code' | 'allowed'> => ({
  code: 'wrong-type',
  allowed: { expected },
});

export const text: Reader<string> = (value, place) =>
  typeof value === 'string' ? value : fault(place, value, wrongType('text'));

export const number: Reader<number> = (value, place) =>
  typeof value === 'number' && !Number.isNaN(value) ? value : fault(place, value, wrongType('number'));

export const between =
  (least: number, most: number): Reader<number> =>
  (value, place) => {
    const read = number(value, place);
    if (read === faulty || (read >= least && read <= most)) return read;
    return fault(place, value, { code: 'out-of-range', allowed: { least, most } });
  };

export const whole =
  (least: number, most: number): Reader<number> =>
  (value, place) => {
    const read = between(least, most)(value, place);
    if (read === faulty || Number.isInteger(read)) return read;
    return fault(place, value, { code: 'not-a-step', allowed: { step: 1 } });
  };

export const oneOf =
  <T extends string>(choices: readonly T[]): Reader<T> =>
  (value, place) =>
    choices.find((each) => each === value) ?? fault(place, value, { code: 'not-one-of', allowed: { choices } });

export const orNull =
  <T>(read: Reader<T>): Reader<T | null> =>
  (value, place) =>
    value === null ? null : read(value, place);

/** Its length comes first: nobody wants to hear of the faults of ten thousand entries. */
export const list =
  <T>(read: Reader<T | undefined>, most: number): Reader<readonly T[]> =>
  (value, { path, problems }) => {
    if (!Array.isArray(value)) return fault({ path, problems }, value, wrongType('list'));
    if (value.length > most) return fault({ path, problems }, value, { code: 'too-long', allowed: { most } });
    // A hole is an entry too, and none of its kind.
    return Array.from<unknown>(value).flatMap((each, index) => {
      const entry = read(each, { path: `${path}[${index}]`, problems });
      return entry === faulty || entry === undefined ? [] : [entry];
    });
  };

/** Takes the fields of an object one by one. */
export interface Fields {
  /** A field that may be left out. */
  readonly take: <T>(name: string, read: Reader<T>) => T | undefined;
  /** A field that may not. */
  readonly need: <T>(name: string, read: Reader<T>) => T | undefined;
}

/** What a reader read; null where it could not. */
export function readAs<T>(read: Reader<T>, value: unknown, problems: Problem[]): T | null {
  const taken = read(value, { path: '', problems });
  return taken === faulty ? null : taken;
}

/** An object made of the fields that are taken of it; every other field is a fault. */
export const object =
  <T>(make: (fields: Fields) => T): Reader<T> =>
  (value, { path, problems }) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      return fault({ path, problems }, value, wrongType('object'));
    const given = new Map<string, unknown>(Object.entries(value));
    const at = (name: string): Place => ({ path: path === '' ? name : `${path}.${name}`, problems });
    const take: Fields['take'] = (name, read) => {
      const field = given.get(name);
      given.delete(name);
      const taken = field === undefined ? undefined : read(field, at(name));
      return taken === faulty ? undefined : taken;
    };
    const need: Fields['need'] = (name, read) => {
      if (given.get(name) === undefined) fault(at(name), undefined, { code: 'missing', allowed: {} });
      return take(name, read);
    };
    const made = make({ take, need });
    for (const [name, field] of given)
      fault(at(name.slice(0, longestName)), field, { code: 'unknown-field', allowed: {} });
    return made;
  };

/** Names come from outside too, and a path is shown whole. */
const longestName = 60;
