/** RFC 5545, 3.1: octets of UTF-8 in a line, without its line break, but with the space that a continuation begins with. */
const mostOctets = 75;

/**
 * What better stays in one line: an escaped character; marks, skin tones and joined characters with what they belong to.
 * RFC 5545 allows a fold there; some programs show such a line before they unfold it.
 */
const together = /\\?.(?:[\p{Mark}\p{Emoji_Modifier}]|\u200d(?:\\?.)?)*/gsu;
const single = /\\?./gsu;

/**
 * A content line folded to 75 octets a line (RFC 5545, 3.1), ended by CRLF; never inside a character. `line` has neither line
 * breaks nor halves of a surrogate pair.
 */
export function foldedLine(line: string): string {
  let [lines, used] = ['', 0];
  const add = (part: string): void => {
    const octets = octetsOf(part);
    if (used + octets > mostOctets) [lines, used] = [`${lines}\r\n `, 1];
    lines += part;
    used += octets;
  };
  for (const [group] of line.matchAll(together)) {
    // A group longer than a line, which begins with a space, has to be broken after all.
    if (octetsOf(group) < mostOctets) add(group);
    else for (const [character] of group.matchAll(single)) add(character);
  }
  return `${lines}\r\n`;
}

function octetsOf(text: string): number {
  let octets = 0;
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    octets += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return octets;
}
