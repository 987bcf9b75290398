import fc from 'fast-check';

type Key = string | number;
type Path = readonly Key[];

/** Values near the edge of what some field allows, and such as no field allows. */
const nearValues: readonly unknown[] = [
  ...[null, true, false, 0, -0, 1, -1, 0.5, 1.5, 2, 7, 10, 30, 104, 105, 1440, 1441, 5000],
  ...['', 'a', 'b', 'slow', 'km', 'base', '10k', 'band', 'ill', 'weekwright', '2026-11-23', '2026-02-30', '1 + 1'],
  ...[[], [[]], ['slow'], [30, 45], {}, { slow: [30] }, { slow: 3 }, { metres: 5000, seconds: 1500 }, [{}], [null]],
];
const wildValues: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(1e308, -1e308, 1e-320, 2 ** 53, 2 ** 53 + 2, 4_294_967_296, '1e999'),
  fc.constantFrom(
    ...['\u0000', '\uD800', '🏃'.repeat(30), '__proto__', 'constructor', '<b>', '=1+1', '../..', '\u202E'],
  ),
  fc.integer({ min: 100, max: 5000 }).map((length) => 'x'.repeat(length)),
  fc.integer({ min: 1, max: 14 }).map((levels) => nested(levels)),
  fc.constantFrom<unknown>({}, null, 5, 'slow', []).map((entry) => Array<unknown>(10_000).fill(entry)),
  fc.jsonValue({ maxDepth: 3 }),
);
const values = fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...nearValues) }, { weight: 1, arbitrary: wildValues });

function nested(levels: number): unknown {
  return levels === 0 ? 1 : levels % 2 === 0 ? [nested(levels - 1)] : { slow: nested(levels - 1) };
}

const names = fc.oneof(
  fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'toJSON', 'answers', '', '0'),
  fc.constantFrom('age', 'date', 'minutes', 'weeks', 'name', 'sheet', 'slow', 'a.b', 'a[0]', 'x'.repeat(300)),
  fc.string({ maxLength: 5 }),
);

/** What is done to one place of a document. */
type Mutation =
  | { readonly kind: 'replace' | 'append'; readonly value: unknown }
  | { readonly kind: 'remove' | 'repeat' }
  | { readonly kind: 'add'; readonly name: string; readonly value: unknown }
  | { readonly kind: 'rename'; readonly name: string };

const mutations: fc.Arbitrary<Mutation> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('replace' as const), value: values }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('remove' as const, 'repeat' as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('append' as const), value: values }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('add' as const), name: names, value: values }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('rename' as const), name: names }) },
);

/** Copies of a document with one to three changes. */
export function mutated(document: unknown): fc.Arbitrary<unknown> {
  const places = fc.constantFrom(...placesIn(document));
  return fc
    .array(fc.tuple(places, mutations), { minLength: 1, maxLength: 3 })
    .map((changes) => changes.reduce((copy, [path, mutation]) => changed(copy, path, mutation), document));
}

function placesIn(value: unknown, path: Path = []): Path[] {
  return [path, ...entriesOf(value).flatMap(([key, each]) => placesIn(each, [...path, key]))];
}

function entriesOf(value: unknown): [Key, unknown][] {
  if (Array.isArray(value)) return value.map((each: unknown, index): [number, unknown] => [index, each]);
  return typeof value === 'object' && value !== null ? Object.entries(value) : [];
}

/** The document itself where an earlier change has taken the place away. */
function changed(document: unknown, [first, ...rest]: Path, mutation: Mutation): unknown {
  if (first === undefined) return changedHere(document, mutation);
  const entries = entriesOf(document).flatMap(([key, value]): [Key, unknown][] => {
    if (key !== first) return [[key, value]];
    if (rest.length > 0) return [[key, changed(value, rest, mutation)]];
    if (mutation.kind === 'remove') return [];
    if (mutation.kind === 'rename') return [[mutation.name, value]];
    if (mutation.kind === 'repeat')
      return [
        [key, value],
        [key, value],
      ];
    return [[key, changedHere(value, mutation)]];
  });
  if (Array.isArray(document)) return entries.map(([, value]) => value);
  return typeof document === 'object' && document !== null ? objectOf(entries) : document;
}

function changedHere(value: unknown, mutation: Mutation): unknown {
  if (mutation.kind === 'replace') return mutation.value;
  if (mutation.kind === 'append' && Array.isArray(value)) return [...(value as unknown[]), mutation.value];
  const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
  return mutation.kind === 'add' && isObject ? objectOf([...entriesOf(value), [mutation.name, mutation.value]]) : value;
}

/** As JSON.parse makes it: `__proto__` is a field like any other. */
function objectOf(entries: readonly (readonly [Key, unknown])[]): object {
  const made = {};
  for (const [key, value] of entries)
    Object.defineProperty(made, key, { value, enumerable: true, configurable: true, writable: true });
  return made;
}

/** What is done to a text between two of its places. */
type Slip = (text: string, from: number, to: number) => string;

const slips: readonly Slip[] = [
  (text, from) => text.slice(0, from),
  (text, from, to) => text.slice(0, from) + text.slice(to),
  (text, from, to) => text.slice(0, to) + text.slice(from),
  (text, from, to) => text.slice(from, to),
];
const characters = fc.oneof(
  fc.constantFrom(...'{}[]:,"\\/0123456789-+.eE tfn\n\r\t\u0000\u00A0\uFEFF\u2028\uD83C'),
  fc.constantFrom('null', '1e999', '"__proto__":', '//', '/* */', 'NaN', '\\u0000', '\\x', '\r\n', "'", '0', '🏃'),
);

/** Texts with one to three slips: characters put in, taken out, put in place of others; parts lost or twice there. */
export function slipped(text: string): fc.Arbitrary<string> {
  const place = fc.nat(text.length);
  const slip = fc.oneof(
    fc.tuple(place, characters).map(
      ([at, put]): ((so: string) => string) =>
        (so) =>
          so.slice(0, at) + put + so.slice(at),
    ),
    fc.tuple(place, characters).map(
      ([at, put]): ((so: string) => string) =>
        (so) =>
          so.slice(0, at) + put + so.slice(at + 1),
    ),
    fc.tuple(place, fc.oneof(fc.nat(3), fc.nat(text.length)), fc.constantFrom(...slips)).map(
      ([at, length, change]): ((so: string) => string) =>
        (so) =>
          change(so, at, at + length),
    ),
  );
  return fc.array(slip, { minLength: 1, maxLength: 3 }).map((all) => all.reduce((so, each) => each(so), text));
}
