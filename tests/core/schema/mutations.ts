import fc from 'fast-check';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type Path = readonly (string | number)[];

/** What stands at a place is replaced by this; `remove` takes it out, `add` puts something more into it. */
type Mutation =
  | { readonly kind: 'replace'; readonly by: Json }
  | { readonly kind: 'remove' }
  | { readonly kind: 'add'; readonly what: Json };

/** Values that are near the edge of what some field allows, and values that no field allows. */
const strange: readonly Json[] = [
  ...[null, true, false, 0, 1, -1, 0.5, 1.5, 3, 30, 31, 120, 1000, 1441, 1e9, -1e-9],
  ...['', 'a', 'A', 'value', 'min', 'slow', 'with space', '1st', 'x'.repeat(40), 'x'.repeat(41), 'x'.repeat(501)],
  ...[[], ['slow'], [[]], {}, { key: 'rule' }, { key: 1 }, { slow: 1 }],
];

const mutations: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({ kind: fc.constant('replace' as const), by: fc.constantFrom(...strange) }),
  fc.record({ kind: fc.constant('remove' as const) }),
  fc.record({ kind: fc.constant('add' as const), what: fc.constantFrom(...strange) }),
);

/** What one mutation does to one place of a document. */
export type Change = readonly [Path, Mutation];

/** One to three changes to places that a document has. */
export function changesOf(document: unknown): fc.Arbitrary<readonly Change[]> {
  const places = fc.constantFrom(...pathsOf(asJson(document)));
  return fc.array(fc.tuple(places, mutations), { minLength: 1, maxLength: 3 });
}

/** A copy of the document with changes made to it. */
export function changed(document: unknown, changes: readonly Change[]): unknown {
  return changes.reduce((json, [path, mutation]) => mutate(json, path, mutation), asJson(document));
}

function asJson(document: unknown): Json {
  return JSON.parse(JSON.stringify(document)) as Json;
}

function pathsOf(json: Json, path: Path = []): Path[] {
  const inner = isContainer(json) ? entriesOf(json).flatMap(([key, value]) => pathsOf(value, [...path, key])) : [];
  return [path, ...inner];
}

/** The document with one place changed; unchanged where an earlier mutation has taken the place away. */
function mutate(json: Json, [first, ...rest]: Path, mutation: Mutation): Json {
  if (first === undefined) return atPlace(json, mutation);
  if (!isContainer(json)) return json;
  const entries = entriesOf(json).flatMap(([key, value]): [string | number, Json][] => {
    if (key !== first) return [[key, value]];
    return rest.length === 0 && mutation.kind === 'remove' ? [] : [[key, mutate(value, rest, mutation)]];
  });
  return isList(json) ? entries.map(([, value]) => value) : Object.fromEntries(entries);
}

function atPlace(json: Json, mutation: Mutation): Json {
  if (mutation.kind === 'replace') return mutation.by;
  if (mutation.kind === 'remove') return {};
  if (!isContainer(json)) return json;
  return isList(json) ? [...json, json[0] ?? mutation.what] : { ...json, added: mutation.what };
}

function isList(json: Json): json is readonly Json[] {
  return Array.isArray(json);
}

function isContainer(json: Json): json is readonly Json[] | { readonly [key: string]: Json } {
  return typeof json === 'object' && json !== null;
}

function entriesOf(json: readonly Json[] | { readonly [key: string]: Json }): [string | number, Json][] {
  return isList(json) ? json.map((value, index) => [index, value]) : Object.entries(json);
}
