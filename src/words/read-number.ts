const plain = /^\d+(?:[.,]\d*)?$|^[.,]\d+$/;
const clock = /^(\d+):([0-5]\d)$/;

/**
 * The number a person typed, with a point or a comma; hours also as hours and minutes.
 *
 * @returns the number, or null where the text is none.
 * @example readNumber('4,25') // 4.25
 * @example readNumber('4:15') // 4.25
 */
export function readNumber(text: string): number | null {
  const trimmed = text.trim();
  const [, hours, minutes] = clock.exec(trimmed) ?? [];
  if (hours !== undefined && minutes !== undefined) return Number(hours) + Number(minutes) / 60;
  return plain.test(trimmed) ? Number(trimmed.replace(',', '.')) : null;
}
