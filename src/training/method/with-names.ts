import type { Text } from './ids.js';

interface Named {
  readonly id: string;
}

/** Gives each part of a method the name that the locales have for its id: `rule.strength-cap`. */
export const withNames = <T extends Named>(
  group: string,
  parts: readonly T[],
): readonly (T & { readonly name: Text })[] => parts.map((part) => ({ ...part, name: { key: `${group}.${part.id}` } }));
