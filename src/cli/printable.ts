// Control characters but for the line end, and the marks that turn the direction of writing around.
const steering = /(?!\n)[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu;

// Long words may be broken on a screen; a terminal would count the invisible mark as a letter.
const softHyphen = '\u00AD';

/** The text without the characters with which a method or a roster from elsewhere could steer the terminal. */
export function printable(text: string): string {
  return withoutSoftHyphens(text).replace(steering, '\u{FFFD}');
}

/** The text without the places where a screen may break a word: other programs would not find the word. */
export const withoutSoftHyphens = (text: string): string => text.replaceAll(softHyphen, '');
