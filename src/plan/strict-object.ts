import * as v from 'valibot';

const isPlain = (value: unknown): boolean => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Without this, an empty list passes for an object without fields. */
export const object = v.custom<Readonly<Record<string, unknown>>>(isPlain);

/** An object with just these fields. */
export const strictObject = <T extends v.ObjectEntries>(entries: T) => v.pipe(object, v.strictObject(entries));
