import { plainText } from '../words/handout/plain-text.js';

// Control characters but for the line end, and the marks that turn the direction of writing around.
const steering = /(?!\n)[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu;

/** The text without the characters with which a method or a roster from elsewhere could steer the terminal. */
export function printable(text: string): string {
  return plainText(text).replace(steering, '\u{FFFD}');
}
