import { attributesOf, methodText, queryOf, stylesOf } from './planner-of.js';

/** @typedef {import('./chosen.js').Choices} Choices */

const longestLine = 100;

/** Where scripts do not run, this stands in the place of the planner; and what a frame is called. */
const words = {
  en: { title: 'Training week', without: 'The training week on this page needs JavaScript.' },
  de: { title: 'Trainingswoche', without: 'Die Trainingswoche auf dieser Seite braucht JavaScript.' },
  fr: { title: 'Semaine d’entraînement', without: 'La semaine d’entraînement de cette page a besoin de JavaScript.' },
  es: { title: 'Semana de entrenamiento', without: 'La semana de entrenamiento de esta página necesita JavaScript.' },
  ar: { title: 'أسبوع التدريب', without: 'يحتاج أسبوع التدريب في هذه الصفحة إلى JavaScript.' },
};

/**
 * The lines to paste.
 * @param {Choices} choices
 * @returns {string}
 */
export const writeSnippet = (choices) => (choices.output === 'frame' ? frameSnippet(choices) : tagSnippet(choices));

/** @param {Choices} choices */
function tagSnippet(choices) {
  const styles = stylesOf(choices).map(([name, value]) => `${name}: ${value}`);
  const attributes = [...attributesOf(choices), ...(styles.length > 0 ? [['style', styles.join('; ')]] : [])];
  const method = methodText(choices.method);
  return [
    `<script type="module" src="${escaped(inFolder(choices, 'weekwright.js'))}"></script>`,
    '',
    openTag('weekwright-planner', attributes),
    `  <p>${wordsOf(choices).without}</p>`,
    ...(method === null ? [] : [`  <script type="application/json" slot="method">`, method, '  </script>']),
    '</weekwright-planner>',
  ].join('\n');
}

/** @param {Choices} choices */
function frameSnippet(choices) {
  const query = queryOf(choices);
  if (methodText(choices.method) !== null && choices.methodAddress) query.set('method-src', choices.methodAddress);
  const address = `${inFolder(choices, 'embed.html')}${query.size > 0 ? `?${query}` : ''}`;
  const frame = openTag('iframe', [
    ['src', address],
    ['title', wordsOf(choices).title],
    ['width', '100%'],
    ['height', '900'],
    ['style', 'border: 0'],
    ['loading', 'lazy'],
    ['allow', 'clipboard-write'],
  ]);
  const script = `<script async src="${escaped(inFolder(choices, 'weekwright-frame.js'))}"></script>`;
  return [`${frame}</iframe>`, ...(choices.fits ? [script] : [])].join('\n');
}

/** @param {Choices} choices */
const wordsOf = ({ lang }) => words[/** @type {keyof typeof words} */ (lang)] ?? words.en;

/** @param {Choices} choices @param {string} file */
const inFolder = ({ folder }, file) => `${folder}${folder === '' || folder.endsWith('/') ? '' : '/'}${file}`;

/** @param {string} name @param {readonly (readonly string[])[]} attributes */
function openTag(name, attributes) {
  const all = attributes.map(([attribute, value = '']) => `${attribute}="${escaped(value)}"`);
  const line = [`<${name}`, ...all].join(' ');
  return line.length < longestLine ? `${line}>` : `${[`<${name}`, ...all].join('\n  ')}\n>`;
}

/** A value within quotation marks, for HTML. @param {string} value */
const escaped = (value) =>
  value.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
