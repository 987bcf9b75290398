/**
 * What somebody has chosen; a text that is empty stands for "left out".
 * @typedef {object} Choices
 * @property {'tag' | 'frame'} output
 * @property {string} folder where the files are: `/weekwright/`
 * @property {boolean} fits the frame is made as high as what is in it
 * @property {readonly string[]} panels in the order in which they stand
 * @property {string} lang
 * @property {string} scheme
 * @property {Readonly<Record<string, string>>} colours by custom property, without `--weekwright-`; none for those of the planner
 * @property {Readonly<Record<string, string>>} start attributes of the planner
 * @property {readonly string[]} days minutes of the seven days, Monday first
 * @property {string} contact
 * @property {boolean} mayKeep
 * @property {string} method the text of a method of one's own
 * @property {string} methodAddress where the method is on the site of the frame
 */

const startNames = ['hours', 'phase', 'level', 'event', 'strength-cap', 'event-date'];

/**
 * Reads the form of the page.
 * @param {HTMLFormElement} form
 * @returns {Choices}
 */
export function readChoices(form) {
  const data = new FormData(form);
  const text = (name) => String(data.get(name) ?? '').trim();
  const colours = ['accent', 'ground', 'text'].map((name) => [name, text(name)]);
  return {
    output: text('output') === 'frame' ? 'frame' : 'tag',
    folder: text('folder'),
    fits: data.has('fits'),
    panels: data.getAll('panel').map(String),
    lang: text('lang'),
    scheme: text('scheme'),
    colours: text('colours') === 'own' ? Object.fromEntries(colours) : {},
    start: Object.fromEntries(startNames.map((name) => [name, text(name)])),
    days: data.getAll('day').map((day) => String(day).trim()),
    contact: text('contact'),
    mayKeep: data.has('keep'),
    method: text('method'),
    methodAddress: text('method-address'),
  };
}
