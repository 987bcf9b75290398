// What a page saves and copies, while nothing gets to a disk or a clipboard.

/** A file that a page has saved. */
export interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
  readonly bytes: Uint8Array;
}

/** The files that are saved while something is done. */
export async function savedFiles(act: () => Promise<unknown>): Promise<SavedFile[]> {
  const blobs = new Map<string, Blob>();
  const clicked: { readonly href: string; readonly name: string }[] = [];
  const createObjectURL = URL.createObjectURL.bind(URL);
  const click = Object.getOwnPropertyDescriptor(HTMLElement.prototype, 'click');
  if (!click) throw new Error('elements have no click');
  URL.createObjectURL = (blob) => {
    if (!(blob instanceof Blob)) throw new Error('only blobs are saved');
    const address = `blob:test/${String(blobs.size)}`;
    blobs.set(address, blob);
    return address;
  };
  HTMLAnchorElement.prototype.click = function note(this: HTMLAnchorElement): void {
    clicked.push({ href: this.href, name: this.download });
  };
  try {
    await act();
  } finally {
    URL.createObjectURL = createObjectURL;
    Reflect.deleteProperty(HTMLAnchorElement.prototype, 'click');
  }
  return Promise.all(clicked.map(({ href, name }) => fileOf(blobs.get(href), name)));
}

async function fileOf(blob: Blob | undefined, name: string): Promise<SavedFile> {
  if (!blob) throw new Error(`${name} has no content`);
  const bytes = new Uint8Array(await blob.arrayBuffer());
  return { name, type: blob.type, text: new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes), bytes };
}

/** The only file that is saved while something is done. */
export async function savedFile(act: () => Promise<unknown>): Promise<SavedFile> {
  const files = await savedFiles(act);
  const [file] = files;
  if (!file || files.length > 1) throw new Error(`${String(files.length)} files are saved`);
  return file;
}

/** What is copied while something is done, by media type; null where nothing is. */
export async function copiedTexts(act: () => Promise<unknown>): Promise<Readonly<Record<string, string>> | null> {
  const items: ClipboardItem[] = [];
  await withClipboard(async ([item]) => {
    if (item) items.push(item);
    return Promise.resolve();
  }, act);
  const [item] = items;
  if (!item) return null;
  const texts = item.types.map(async (type) => [type, await (await item.getType(type)).text()] as const);
  return Object.fromEntries(await Promise.all(texts));
}

/** Does something while the browser forbids copying. */
export const withoutClipboard = (act: () => Promise<unknown>): Promise<void> =>
  withClipboard(() => Promise.reject(new DOMException('not here', 'NotAllowedError')), act);

async function withClipboard(
  write: (items: readonly ClipboardItem[]) => Promise<void>,
  act: () => Promise<unknown>,
): Promise<void> {
  Object.defineProperty(navigator.clipboard, 'write', { configurable: true, value: write });
  try {
    await act();
  } finally {
    Reflect.deleteProperty(navigator.clipboard, 'write');
  }
}
