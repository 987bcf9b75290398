// `deflate` is the zlib format of RFC 1950: unlike `deflate-raw` it ends with a checksum, so that a changed letter of a link
// is noticed and never read as another number. Chrome 80, Firefox 113, Safari 16.4 (from memory) have it.
const format = 'deflate';

/** A text as UTF-8, compressed. */
export async function compressed(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream(format));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * The text in compressed bytes.
 *
 * @param most characters of the text; no more than a small part beyond them is ever unpacked.
 * @returns the text, null where it is longer than `most`, undefined where the bytes are damaged.
 */
export async function decompressed(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string | null | undefined> {
  const reader = inSlices(bytes)
    .pipeThrough(new DecompressionStream(format))
    .pipeThrough(new TextDecoderStream('utf-8', { fatal: true }))
    .getReader();
  try {
    return await readUpTo(reader, most);
  } catch {
    return undefined; // the streams' way to say that the bytes are no such text
  }
}

async function readUpTo(reader: ReadableStreamDefaultReader<string>, most: number): Promise<string | null> {
  let text = '';
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    text += part.value;
    if (text.length <= most) continue;
    await reader.cancel();
    return null;
  }
  return text;
}

/** A byte unpacks to a thousand and more: with few at a time, whoever reads can stop early. */
const sliceBytes = 64;

function inSlices(bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
  let start = 0;
  return new ReadableStream({
    pull(controller) {
      if (start < bytes.length) controller.enqueue(bytes.slice(start, start + sliceBytes));
      else controller.close();
      start += sliceBytes;
    },
  });
}
