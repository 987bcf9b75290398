/** Bytes in the letters of RFC 4648, section 5, without padding. */
export function textOf(bytes: Uint8Array): string {
  const letters = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return letters.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes of such a text; undefined where it is none, or is empty. */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[A-Za-z0-9_-]+$/.test(text) || text.length % 4 === 1) return undefined;
  const letters = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}
