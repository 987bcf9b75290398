import type { Words } from '../../words/words.js';

/**
 * Copies texts, by their media types.
 *
 * @returns false where the browser, or the page around a frame, forbids it.
 */
export async function copied(texts: Readonly<Record<string, string>>): Promise<boolean> {
  try {
    const blobs = Object.entries(texts).map(([type, text]) => [type, new Blob([text], { type })] as const);
    await navigator.clipboard.write([new ClipboardItem(Object.fromEntries(blobs))]);
    return true;
  } catch {
    return false;
  }
}

/** Numbers for other programs: as the language writes them, the minus as programs know it. */
export function copyFormat(words: Words): (value: number) => string {
  return (value) => `${value < 0 ? '-' : ''}${words.number(Math.abs(value), 4)}`;
}
