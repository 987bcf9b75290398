/** Line breaks that are not `\n`: of other systems, and those which some readers take for the end of a line. */
const otherLineBreaks = /\r\n?|[\u0085\u2028\u2029]/g;
/** CONTROL of RFC 5545, 3.1, without the line feed, which is escaped; and surrogates without a partner. */
const noText = /[\0-\x08\x0b-\x1f\x7f\p{Surrogate}]/gu;

/**
 * A text as a TEXT value (RFC 5545, 3.3.11): backslash, semicolon, comma and line break escaped. What a file may not hold is
 * taken out: control characters but the tab, as RFC 5545, 3.1, forbids them, and halves of a character, which UTF-8 lacks.
 *
 * @example escapedText('Easy, 5 km;\r\nflat') // 'Easy\\, 5 km\\;\\nflat'
 */
export const escapedText = (text: string): string =>
  cleaned(text)
    .replace(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');

/**
 * The value of a parameter (RFC 5545, 3.2): in quotation marks where it has a colon, semicolon or comma. Quotation marks,
 * line breaks and control characters cannot be in one and are taken out.
 */
export function parameterValue(value: string): string {
  const allowed = cleaned(value).replace(/["\n]/g, '');
  return /[:;,]/.test(allowed) ? `"${allowed}"` : allowed;
}

const cleaned = (text: string): string => text.replace(otherLineBreaks, '\n').replace(noText, '');
