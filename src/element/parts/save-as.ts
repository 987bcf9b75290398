/** What is saved on a disk. */
export interface Saved {
  /** The name of the file, its ending included. */
  readonly name: string;
  /** Its media type. */
  readonly type: string;
  readonly text: string;
}

const millisecondsToSave = 60_000;

/** Has the browser save a file. In a frame whose page forbids it, nothing happens, and nobody is told. */
export function saveAs({ name, type, text }: Saved): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, millisecondsToSave);
}

/** A name that every file system takes: letters and digits of any language, with hyphens between them. */
export function fileName(parts: readonly string[], ending: string): string {
  const words = parts.flatMap((part) => part.normalize('NFC').match(/[\p{L}\p{M}\p{N}]+/gu) ?? []);
  return `${words.join('-').slice(0, 80)}.${ending}`;
}
