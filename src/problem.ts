/** Every way in which input from outside can be wrong; the words for each are in the locales. */
export const problemCodes = [
  'missing',
  'unknown-field',
  'wrong-type',
  'not-one-of',
  'out-of-range',
  'not-a-step',
  'duplicate',
  'wrong-order',
  'wrong-sum',
  'wrong-count',
  'wrong-pattern',
  'too-long',
  'not-json',
  'unreachable',
  'other-origin',
  'unknown-name',
  'formula',
  'circle',
  'no-value',
  'newer-version',
  'other-method',
  'too-deep',
  'damaged',
  'no-date',
  'too-far-apart',
  'no-plan',
] as const;
export type ProblemCode = (typeof problemCodes)[number];

/**
 * One fault of a request or a document: where it is, what was given, what is allowed.
 *
 * `path` is the field as the person knows it (`hours`, `splits[0].shares.slow`); `value` is what was given, as plain
 * data; `allowed` holds the numbers or names that the words for `code` need.
 */
export interface Problem {
  readonly path: string;
  readonly value: unknown;
  readonly code: ProblemCode;
  readonly allowed: Readonly<Record<string, unknown>>;
}

/** A value, or the problems that stand in its way. */
export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] };
