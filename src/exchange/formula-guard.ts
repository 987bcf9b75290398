/*
 * A spreadsheet may run what begins with one of these, in full width too: OWASP, "CSV Injection"
 * (owasp.org/www-community/attacks/CSV_Injection; from memory); the null character is of OWASP ASVS 5.0, 1.2.10.
 */
const beginsAsFormula = /^'*[=+\-@\t\r\n\0＝＋－＠]/;

/**
 * A text that no spreadsheet takes for a formula: one that begins as a formula, or as a guarded one, gets an apostrophe in
 * front.
 *
 * @example guarded('=1+1') // "'=1+1"
 */
export const guarded = (text: string): string => (beginsAsFormula.test(text) ? `'${text}` : text);

/** What was guarded, as it was: `unguarded("'=1+1")` is '=1+1'; any other text as it is. */
export const unguarded = (text: string): string =>
  text.startsWith("'") && beginsAsFormula.test(text) ? text.slice(1) : text;
