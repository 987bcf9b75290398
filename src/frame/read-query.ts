import type { Fault } from './fault.js';
import { attributes, colours, languages, names, schemes } from './parameters.js';

/** What the address of the page asks for. */
export interface Wishes {
  readonly attributes: Readonly<Record<string, string>>;
  /** Custom properties, whole names. */
  readonly theme: Readonly<Record<string, string>>;
  readonly lang: string | null;
  readonly scheme: string | null;
  /** The origin that gets each plan. */
  readonly parent: string | null;
  readonly faults: readonly Fault[];
}

/** Whether the browser takes a value for a property of CSS. */
export type Supports = (property: string, value: string) => boolean;

const themeNames: readonly string[] = [...colours, 'radius'];

type Pair = readonly [name: string, value: string];

/**
 * Reads the query of the page's address. What cannot be used is left out and told.
 *
 * @example readQuery('?hours=4&ground=%23fff', (property, value) => CSS.supports(property, value)).theme
 *   // { '--weekwright-ground': '#fff' }
 */
export function readQuery(search: string, supports: Supports): Wishes {
  const pairs = [...new URLSearchParams(search)];
  const faulty = pairs.map((pair, index) => faultIn(pair, pairs.slice(0, index), supports));
  const good = pairs.filter((_, index) => !faulty[index]);
  const among = (list: readonly string[]): Pair[] => good.filter(([name]) => list.includes(name));
  const one = (name: string): string | null => good.find(([each]) => each === name)?.[1] ?? null;
  return {
    attributes: Object.fromEntries(among(attributes)),
    theme: Object.fromEntries(among(themeNames).map(([name, value]) => [`--weekwright-${name}`, value.trim()])),
    lang: one('lang'),
    scheme: one('scheme'),
    parent: one('parent'),
    faults: faulty.filter((fault) => fault !== null),
  };
}

/** The planner itself checks its attributes, and says what is wrong with them. */
function faultIn([name, value]: Pair, before: readonly Pair[], supports: Supports): Fault | null {
  if (!names.includes(name)) return { name, value, code: 'unknown-field', allowed: names };
  if (before.some(([each]) => each === name)) return { name, value, code: 'duplicate', allowed: [] };
  const allowed = isAmong(name, value) ?? isStyle(name, value, supports) ?? isParent(name, value);
  return allowed ? { name, value, code: 'not-one-of', allowed } : null;
}

/** What is allowed instead of a language or a scheme that is not there; null where all is well, as in the next two. */
function isAmong(name: string, value: string): Fault['allowed'] | null {
  if (name === 'scheme') return schemes.some((scheme) => scheme === value) ? null : schemes;
  if (name !== 'lang') return null;
  return languages.some((language) => language === primary(value)) ? null : languages;
}

function isStyle(name: string, value: string, supports: Supports): Fault['allowed'] | null {
  if (name === 'radius') return supports('border-radius', value) && isFinal(value) ? null : 'length';
  if (!colours.some((colour) => colour === name)) return null;
  return supports('color', value) && isFinal(value) ? null : 'colour';
}

function isParent(name: string, value: string): Fault['allowed'] | null {
  if (name !== 'parent') return null;
  const isOrigin = /^https?:\/\//.test(value) && URL.canParse(value) && new URL(value).origin === value;
  return isOrigin ? null : 'origin';
}

/** A browser takes these for any property, but nothing on this page gives them a value. */
const isFinal = (value: string): boolean =>
  !/\b(?:var|env|attr|if)\(/i.test(value) && !/^\s*(?:inherit|initial|unset|revert|revert-layer)\s*$/i.test(value);

/** The first part of a language tag: `de` of `de-AT`. */
export const primary = (tag: string): string => tag.toLowerCase().split(/[-_]/)[0] ?? '';
