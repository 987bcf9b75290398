// A screenshot made small: at most 256 colours, which drawn surfaces and text can spare, in a PNG with a palette.
import { crc32, deflateSync, inflateSync } from 'node:zlib';

const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
const bytesPerPixel = { 2: 3, 6: 4 };

function chunksOf(png) {
  const chunks = [];
  for (let at = signature.length; at < png.length; at += 12 + png.readUInt32BE(at)) {
    const length = png.readUInt32BE(at);
    chunks.push({ type: png.toString('latin1', at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) });
  }
  return chunks;
}

/** The byte that a filter of PNG foretells from the bytes to the left, above, and above to the left. */
function foretell(filter, left, up, corner) {
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  if (filter === 0) return 0;
  const [toLeft, toUp, toCorner] = [left, up, corner].map((each) => Math.abs(left + up - corner - each));
  if (toLeft <= toUp && toLeft <= toCorner) return left;
  return toUp <= toCorner ? up : corner;
}

/** Width, height, and one number a pixel (red, green, blue, alpha), of a picture as browsers write them. */
function decode(png) {
  const chunks = chunksOf(png);
  const header = chunks.find(({ type }) => type === 'IHDR').data;
  const [width, height, size] = [header.readUInt32BE(0), header.readUInt32BE(4), bytesPerPixel[header[9]]];
  if (header[8] !== 8 || size === undefined || header[12] !== 0) throw new Error('a kind of PNG that is not read here');
  const packed = Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data));
  const bytes = inflateSync(packed);
  const stride = width * size;
  const pixels = new Uint32Array(width * height);
  let above = new Uint8Array(stride);
  for (let y = 0; y < height; y += 1) {
    const start = y * (stride + 1);
    const row = new Uint8Array(stride);
    for (let x = 0; x < stride; x += 1) {
      const [left, corner] = x < size ? [0, 0] : [row[x - size], above[x - size]];
      row[x] = bytes[start + 1 + x] + foretell(bytes[start], left, above[x], corner);
    }
    for (let x = 0; x < width; x += 1) {
      const at = x * size;
      const alpha = size === 4 ? row[at + 3] : 255;
      pixels[y * width + x] = ((row[at] << 24) | (row[at + 1] << 16) | (row[at + 2] << 8) | alpha) >>> 0;
    }
    above = row;
  }
  return { width, height, pixels };
}

const partsOf = (colour) => [colour >>> 24, (colour >>> 16) & 255, (colour >>> 8) & 255, colour & 255];

/** How far two colours are apart, in the part in which they differ most. */
function distance(one, other) {
  let most = 0;
  for (let part = 0; part < 4; part += 1) most = Math.max(most, Math.abs(one[part] - other[part]));
  return most;
}

/** The most frequent colours that differ by more than `apart` from each other. */
function distinct(colours, apart) {
  const kept = [];
  for (const parts of colours) {
    if (kept.every((each) => distance(each, parts) > apart)) kept.push(parts);
    if (kept.length > 256) break;
  }
  return kept;
}

/** A palette of at most 256 colours, and the place in it for each colour of the picture. */
function paletteOf(pixels) {
  const counts = new Map();
  for (const colour of pixels) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const colours = [...counts].sort((a, b) => b[1] - a[1]).map(([colour]) => colour);
  const parts = colours.map(partsOf);
  let apart = 0;
  let palette = distinct(parts, apart);
  while (palette.length > 256) palette = distinct(parts, (apart += 1));
  const nearest = (each) => {
    const distances = palette.map((known) => distance(known, each));
    return distances.indexOf(Math.min(...distances));
  };
  return { palette, places: new Map(colours.map((colour, index) => [colour, nearest(parts[index])])) };
}

function chunk(type, data) {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}

/**
 * @param {Uint8Array} png with 8 bits a channel, not interlaced
 * @returns {Buffer} the same picture with a palette
 */
export function smallPng(png) {
  const { width, height, pixels } = decode(Buffer.from(png));
  const { palette, places } = paletteOf(pixels);
  const rows = Buffer.alloc((width + 1) * height);
  pixels.forEach((colour, index) => {
    rows[Math.floor(index / width) * (width + 1) + 1 + (index % width)] = places.get(colour);
  });
  const header = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 3, 0, 0, 0]);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flatMap((parts) => parts.slice(0, 3)))),
    chunk('tRNS', Buffer.from(palette.map((parts) => parts[3]))),
    chunk('IDAT', deflateSync(rows, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
