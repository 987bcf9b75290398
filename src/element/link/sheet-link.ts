import { sheetTextLimits, writeSheetText } from '../../exchange/sheet-link.js';
import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { Outcome, Problem } from '../../problem.js';
import { bytesOf, textOf } from './base64url.js';
import { compressed, decompressed } from './compression.js';
import { partOf, withPart } from './fragment.js';

/** Where the sheet of a planner stands: `key` in the fragment of the address `href`. */
export interface LinkPlace {
  readonly href: string;
  readonly key: string;
}

/** Most characters of a compressed sheet: what mail programs and chats still pass on whole. */
const mostCharacters = 16_000;
const version = 1;

/**
 * The address of a page with a sheet in its fragment: `#weekwright=1.` and the sheet as JSON, compressed, in base64url.
 * Other parts of the fragment stay if they are of the form key=value.
 *
 * @returns the address, or that the sheet is too long for a link.
 */
export async function linkTo(sheet: ScenarioSheet, { href, key }: LinkPlace): Promise<Outcome<string>> {
  const text = writeSheetText(sheet);
  if (text.length > sheetTextLimits.characters) return fault(text, tooLong(sheetTextLimits.characters));
  const packed = textOf(await compressed(text));
  if (packed.length > mostCharacters) return fault(packed, tooLong(mostCharacters));
  return { ok: true, value: withPart(href, key, `${version}.${packed}`) };
}

/**
 * The text of the sheet in an address, for `readSheetText`.
 *
 * @returns the text, null where the fragment has no sheet under this key, or what is wrong with the link: too long, of a
 * newer version, or damaged. Nothing is unpacked beyond the longest text that a sheet may have.
 */
export async function sheetTextIn({ href, key }: LinkPlace): Promise<Outcome<string | null>> {
  const given = partOf(href, key);
  if (given === null) return { ok: true, value: null };
  const [, number = '', packed = ''] = /^([1-9]\d{0,8})\.(.*)$/s.exec(given) ?? [];
  if (Number(number) > version) return fault(Number(number), { code: 'newer-version', allowed: { most: version } });
  if (packed.length > mostCharacters) return fault(given, tooLong(mostCharacters));
  const bytes = bytesOf(packed);
  const text = bytes && (await decompressed(bytes, sheetTextLimits.characters));
  if (text === undefined) return fault(given, { code: 'damaged', allowed: {} });
  if (text === null) return fault(given, tooLong(sheetTextLimits.characters));
  return { ok: true, value: text };
}

const tooLong = (most: number) => ({ code: 'too-long', allowed: { most } }) as const;

function fault(given: string | number, problem: Pick<Problem, 'code' | 'allowed'>): Outcome<never> {
  const value = typeof given === 'string' ? given.slice(0, 40) : given;
  return { ok: false, problems: [{ path: 'link', value, ...problem }] };
}
