/** @typedef {import('./chosen.js').Choices} Choices */
/** @typedef {readonly (readonly [name: string, value: string])[]} Pairs */

/**
 * The attributes of the planner that choices make, those alone that differ from what the planner does anyway.
 * @param {Choices} choices
 * @returns {Pairs}
 */
export function attributesOf(choices) {
  const panels = choices.panels.join(' ');
  const days = choices.days.some((day) => day !== '') ? choices.days.map((day) => day || '0').join(',') : '';
  return filled([
    ['lang', choices.lang],
    ['panels', panels === 'split' ? '' : panels],
    ...Object.entries(choices.start),
    ['days', days],
    ['contact', choices.contact],
    ['storage', choices.mayKeep ? '' : 'none'],
  ]);
}

/**
 * The styles of the planner that choices make.
 * @param {Choices} choices
 * @returns {Pairs}
 */
export function stylesOf({ scheme, colours }) {
  const theme = Object.entries(colours).map(([name, value]) => [`--weekwright-${name}`, value]);
  return filled([['color-scheme', scheme], ...theme]);
}

/**
 * The query of the page to frame that choices make. The method is left out: where it lies is the affair of the site.
 * @param {Choices} choices
 * @returns {URLSearchParams}
 */
export function queryOf(choices) {
  const { scheme, colours } = choices;
  return new URLSearchParams([...attributesOf(choices), ...filled([['scheme', scheme], ...Object.entries(colours)])]);
}

/**
 * A method as the text of a script: tidy, and without a `<`, which might end the script before its time.
 * @param {string} text
 * @returns {string | null} null where the text is empty or no JSON
 */
export function methodText(text) {
  try {
    return JSON.stringify(JSON.parse(text), null, 2).replaceAll('<', '\\u003c');
  } catch {
    return null;
  }
}

/** @param {readonly (readonly string[])[]} pairs */
const filled = (pairs) =>
  pairs.flatMap(([name, value]) => (name && value ? [/** @type {const} */ ([name, value])] : []));
