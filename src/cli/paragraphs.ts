/** Paragraphs as a page of text, those that are empty left out. */
export const page = (paragraphs: readonly string[]): string =>
  `${paragraphs.filter((paragraph) => paragraph !== '').join('\n\n')}\n`;

/** A list under its heading, which may be empty, further lines of an item indented; nothing where nothing is to list. */
export const listed = (heading: string, items: readonly string[]): string =>
  items.length === 0 ? '' : under(heading, items.map((item) => `- ${item.replaceAll('\n', '\n  ')}`).join('\n'));

/** A text under its heading; either alone where the other is empty. */
export const under = (heading: string, text: string): string =>
  [heading, text].filter((part) => part !== '').join('\n');
