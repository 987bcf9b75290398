import { planFileLimits } from '../../exchange/plan-file.js';
import { sheetTextLimits } from '../../exchange/sheet-link.js';
import type { Outcome, Problem } from '../../problem.js';
import { bytesOf, textOf } from './base64url.js';
import { compressed, decompressed } from './compression.js';
import { partOf, withPart } from './fragment.js';

/** Where the link of a planner stands: `key` in the fragment of the address `href`. */
export interface LinkPlace {
  readonly href: string;
  readonly key: string;
}

/** What a link holds: a what-if sheet in the first version, everything that a person has set in the second. */
export interface LinkContent {
  readonly version: 1 | 2;
  readonly text: string;
}

/** Most characters of a compressed text: what mail programs and chats still pass on whole. */
const mostCharacters = 16_000;
const mostOfText = { 1: sheetTextLimits.characters, 2: planFileLimits.characters } as const;
const newest = 2;

/**
 * The address of a page with a text in its fragment: `#weekwright=`, the version, a point, and the text, compressed, in
 * base64url. Other parts of the fragment stay if they are of the form key=value.
 *
 * @returns the address, or that the text is too long for a link.
 */
export async function linkWith({ version, text }: LinkContent, { href, key }: LinkPlace): Promise<Outcome<string>> {
  if (text.length > mostOfText[version]) return fault(text, tooLong(mostOfText[version]));
  const packed = textOf(await compressed(text));
  if (packed.length > mostCharacters) return fault(packed, tooLong(mostCharacters));
  return { ok: true, value: withPart(href, key, `${version}.${packed}`) };
}

/**
 * What the link in an address holds.
 *
 * @returns the content, null where the fragment has nothing under this key, or what is wrong with the link: too long, of a
 * newer version, or damaged. Nothing is unpacked beyond the longest text that there may be.
 */
export async function contentIn({ href, key }: LinkPlace): Promise<Outcome<LinkContent | null>> {
  const given = partOf(href, key);
  if (given === null) return { ok: true, value: null };
  const [, number = '', packed = ''] = /^([1-9]\d{0,8})\.(.*)$/s.exec(given) ?? [];
  if (Number(number) > newest) return fault(Number(number), { code: 'newer-version', allowed: { most: newest } });
  const version = number === '2' ? 2 : 1;
  if (packed.length > mostCharacters) return fault(given, tooLong(mostCharacters));
  const bytes = bytesOf(packed);
  const text = bytes && (await decompressed(bytes, mostOfText[version]));
  if (text === undefined) return fault(given, { code: 'damaged', allowed: {} });
  if (text === null) return fault(given, tooLong(mostOfText[version]));
  return { ok: true, value: { version, text } };
}

const tooLong = (most: number) => ({ code: 'too-long', allowed: { most } }) as const;

function fault(given: string | number, problem: Pick<Problem, 'code' | 'allowed'>): Outcome<never> {
  const value = typeof given === 'string' ? given.slice(0, 40) : given;
  return { ok: false, problems: [{ path: 'link', value, ...problem }] };
}
