/**
 * Copies the lines; where the browser forbids that, they are selected, to be copied by hand.
 * @param {HTMLTextAreaElement} lines
 * @returns {Promise<string>} what to tell
 */
export async function copyLines(lines) {
  try {
    await navigator.clipboard.writeText(lines.value);
    return 'Copied. Paste it into your page.';
  } catch {
    lines.focus();
    lines.select();
    return 'The browser does not let this page copy. The lines are selected: copy them with Ctrl+C, or by the menu.';
  }
}
