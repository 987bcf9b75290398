/** Makes a value when it is first asked for, and keeps it: objects of Intl are dear to make and often not needed. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
