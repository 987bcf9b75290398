/** A value for the title of a test: as JSON, and not too long. */
export function inShort(value: unknown): string {
  const text = value === undefined ? 'undefined' : JSON.stringify(value);
  return text.length < 60 ? text : `${text.slice(0, 50)} ...`;
}
