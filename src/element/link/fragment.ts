/*
 * The fragment of an address as parts between `&`. A part of the form key=value may be somebody else's and stays as it
 * is; an anchor such as `#top` is no such part, and goes when a sheet is written.
 */

/** The value of the first part of the fragment with this key; null where there is none. */
export function partOf(href: string, key: string): string | null {
  const part = partsOf(href).find((each) => each.startsWith(`${key}=`));
  return part === undefined ? null : part.slice(key.length + 1);
}

/** The address with the value under this key of its fragment, and all other parts of the form key=value. */
export function withPart(href: string, key: string, value: string): string {
  const others = partsOf(href).filter((each) => each.indexOf('=') > 0 && !each.startsWith(`${key}=`));
  const [page = ''] = href.split('#', 1);
  return `${page}#${[...others, `${key}=${value}`].join('&')}`;
}

function partsOf(href: string): string[] {
  const start = href.indexOf('#');
  return start < 0 ? [] : href.slice(start + 1).split('&');
}

/** The key of the only planner on a page, or of the one with this id. */
export function linkKey(elementId: string): string {
  return elementId === '' ? 'weekwright' : `weekwright-${encodeURIComponent(elementId)}`;
}
