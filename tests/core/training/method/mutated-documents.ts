import fc from 'fast-check';
import { defaultDocument } from './documents.js';

/** Where something stands: what holds it, and under which key. */
interface Spot {
  readonly holder: object;
  readonly key: string;
}

type Path = readonly string[];

function pathsIn(holder: object, before: Path = []): Path[] {
  return Object.entries(holder).flatMap(([key, value]: [string, unknown]) => {
    const path = [...before, key];
    return typeof value === 'object' && value !== null ? [path, ...pathsIn(value, path)] : [path];
  });
}

/** The spot at the end of a path, if an earlier change has not cut it off. */
function spotAt(document: object, path: Path): Spot | undefined {
  let holder: unknown = document;
  for (const key of path.slice(0, -1))
    holder = typeof holder === 'object' && holder !== null ? Reflect.get(holder, key) : undefined;
  return typeof holder === 'object' && holder !== null ? { holder, key: path.at(-1) ?? '' } : undefined;
}

const put = ({ holder }: Spot, key: string, value: unknown): void => {
  // As JSON.parse does it, so that __proto__ is a field like any other.
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
};
const get = ({ holder, key }: Spot): unknown => Reflect.get(holder, key);
const copyOf = (value: unknown): unknown => (value === undefined ? null : JSON.parse(JSON.stringify(value)));

/** One change of a document, at a spot; `other` is another spot of it. */
type Mutation = (spot: Spot, other: Spot) => void;

const numbers = fc.oneof(
  fc.constantFrom(0, -0, -1, 1, 0.5, 1e-300, 1e9, 1e21, 1e300, 2 ** 53, 10_080, 10_081, 1440, 0.1 + 0.2, 4.999999999),
  fc.double(),
  fc.integer({ min: -100, max: 500 }),
);
const texts = fc.oneof(
  fc.constantFrom(
    '',
    '0',
    '1e300',
    '1 / 0',
    '-5',
    'value',
    'value * 1e6',
    'other',
    'slow_minutes',
    'weekly_hours * 1e300',
  ),
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    'strength_minutes',
    'phase_base',
    'off_season',
    'slow',
    '(',
    '1:2',
  ),
  fc.constantFrom(
    '2 ^ 40',
    'value - 1e-9',
    'planned_minutes',
    'total_rounded',
    'value > 20 ? 20 : value',
    'min(value, 1)',
  ),
  fc.string({ maxLength: 10 }),
);
const values = fc.oneof(
  numbers,
  texts,
  fc.constantFrom<unknown>(null, true, false, [], {}, [[]], [null], { key: 'a' }, [1, 2], { __proto__: null, a: 1 }),
);
const keys = fc.constantFrom(
  '__proto__',
  'constructor',
  'prototype',
  'hasOwnProperty',
  'toJSON',
  'value',
  'when',
  'to',

  '0',
  'sources',
);

const mutations: fc.Arbitrary<Mutation> = fc.oneof(
  {
    weight: 4,
    arbitrary: values.map(
      (value): Mutation =>
        (spot) =>
          put(spot, spot.key, copyOf(value)),
    ),
  },
  {
    weight: 4,
    arbitrary: values.map(
      (value): Mutation =>
        (spot) =>
          put(spot, spot.key, sameKind(get(spot), value)),
    ),
  },
  { weight: 2, arbitrary: fc.constant<Mutation>(({ holder, key }) => Reflect.deleteProperty(holder, key)) },
  {
    weight: 1,
    arbitrary: fc.tuple(keys, values).map(
      ([key, value]): Mutation =>
        (spot) =>
          put(spot, key, copyOf(value)),
    ),
  },
  { weight: 2, arbitrary: fc.constant<Mutation>((spot, other) => put(spot, spot.key, copyOf(get(other)))) },
  { weight: 1, arbitrary: fc.constant<Mutation>((spot) => doubled(get(spot))) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(2, 10, 0.1, -1, 1 + 1e-12).map(
      (factor): Mutation =>
        (spot) =>
          scaled(spot, factor),
    ),
  },
);

/** The new value if it is of the old one's kind, so that the mutation gets past the first check; else the old one. */
const sameKind = (old: unknown, value: unknown): unknown =>
  typeof value === typeof old && typeof old !== 'object' ? value : old;

function doubled(list: unknown): void {
  if (Array.isArray(list) && list.length < 40) list.push(...list.map(copyOf));
}

function scaled(spot: Spot, factor: number): void {
  const value = get(spot);
  if (typeof value === 'number') put(spot, spot.key, value * factor);
}

// Formulas are a tenth of the document and the most of what can go wrong: every second change is of one.
const paths = pathsIn(defaultDocument());
const formulaPaths = paths.filter((path) => ['when', 'value', 'on', 'to'].includes(path.at(-1) ?? ''));
const anyPath = fc.oneof(fc.constantFrom(...formulaPaths), fc.constantFrom(...paths));

/** The default method with one to three changes, of its values and of its structure. */
export const mutatedDocuments: fc.Arbitrary<unknown> = fc
  .array(fc.tuple(mutations, anyPath, anyPath), { minLength: 1, maxLength: 3 })
  .map((changes) => {
    const document = defaultDocument();
    for (const [mutate, path, otherPath] of changes) {
      const [spot, other] = [spotAt(document, path), spotAt(document, otherPath)];
      if (spot && other) mutate(spot, other);
    }
    return document;
  });
