// The tables of README.md that say what the tag offers, from the custom elements manifest.

/**
 * @typedef {{ name?: string, description?: string, default?: string, type?: { text: string } }} Item
 * @typedef {Item & { kind: string, privacy?: string, attribute?: string, readonly?: boolean }} Member
 * @typedef {{ tagName?: string, members: Member[], attributes: Item[], events: Item[], slots: Item[], cssParts: Item[],
 *   cssProperties: Item[] }} Declaration
 * @typedef {{ modules: readonly { declarations?: readonly object[] }[] }} Manifest
 */

const code = (text) => `\`${text}\``;
const optional = ' | null | undefined';

/** Every input may be left out, so that is said once, beside the table. */
const typeOf = ({ type }) => code((type?.text ?? 'string').replace(optional, '').replaceAll('|', '\\|'));
const says = ({ description = '' }) => description.replace(/\s+/g, ' ');

function table(headings, rows) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  return [line(headings), line(headings.map(() => '---')), ...rows.map(line)].join('\n');
}

function memberRows({ members, attributes }) {
  const fields = members.filter(({ kind, privacy }) => kind === 'field' && (privacy ?? 'public') === 'public');
  const bare = attributes.filter(({ name }) => !fields.some(({ attribute }) => attribute === name));
  return [
    ...fields.map((field) => [
      field.attribute ? code(field.attribute) : '',
      `${code(field.name)}${field.readonly ? ', to read' : ''}`,
      typeOf(field),
      says(field),
    ]),
    ...bare.map((attribute) => [code(attribute.name), '', typeOf(attribute), says(attribute)]),
  ];
}

/** The analyzer lists an event once more, without its name, where it is made. */
const eventRows = ({ events }) =>
  events.filter(({ name }) => name).map((event) => [code(event.name), typeOf(event), says(event)]);

const named = (items) => items.map((item) => [code(item.name), says(item)]);

/** @param {Manifest} manifest @returns {Readonly<Record<string, string>>} tables by the name that their place has */
function tablesOf({ modules }) {
  const declarations = /** @type {Declaration[]} */ (modules.flatMap((module) => module.declarations ?? []));
  const tag = declarations.find(({ tagName }) => tagName !== undefined);
  if (!tag) throw new Error('the manifest has no tag');
  const slots = tag.slots.map((slot) => [slot.name ? code(slot.name) : 'without a name', says(slot)]);
  const looks = tag.cssProperties.map((each) => [code(each.name), each.default ? code(each.default) : '', says(each)]);
  return {
    attributes: table(['Attribute', 'Property', 'Type', 'What it is'], memberRows(tag)),
    events: table(['Event', 'Type', 'When'], eventRows(tag)),
    slots: table(['Slot', 'What belongs there'], slots),
    parts: table(['Part', 'What it is'], named(tag.cssParts)),
    'custom properties': table(['Custom property', 'Default', 'What it is'], looks),
  };
}

const place = /(<!-- table of (.+?), from the manifest -->\n)(.*?)(<!-- end of table -->)/gs;

/**
 * README.md with its tables as the manifest has them.
 * @param {string} readme
 * @param {Manifest} manifest
 */
export function fillTables(readme, manifest) {
  const tables = tablesOf(manifest);
  const filled = new Set();
  const text = readme.replace(place, (_, start, name, _old, end) => {
    if (!tables[name]) throw new Error(`there is no table of ${name}`);
    filled.add(name);
    return `${start}\n${tables[name]}\n\n${end}`;
  });
  const missing = Object.keys(tables).filter((name) => !filled.has(name));
  if (missing.length > 0) throw new Error(`README.md has no place for a table of ${missing.join(', ')}`);
  return text;
}
