// Part of npm run build: tells editors of the tag, in the two formats that they read, from the custom elements manifest.
import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

/**
 * @typedef {{ name: string, description?: string, default?: string, type?: { text: string } }} Item
 * @typedef {Item & { kind: string, privacy?: string }} Member
 * @typedef {{ name: string, tagName?: string, description: string, members: Member[], attributes: Item[], events: Item[],
 *   slots: Item[], cssParts: Item[], cssProperties: Item[] }} Tag
 * @typedef {{ modules: readonly { declarations?: readonly object[] }[] }} Manifest
 * @typedef {Readonly<Record<string, readonly string[] | undefined>>} Choices values that an attribute may have, by its name
 */

const folder = new URL('../../', import.meta.url);
const readJson = (path) => JSON.parse(readFileSync(new URL(path, folder), 'utf8'));

/** @param {Manifest} manifest */
function tagOf({ modules }) {
  const declarations = /** @type {Tag[]} */ (modules.flatMap((module) => module.declarations ?? []));
  const tag = declarations.find(({ tagName }) => tagName !== undefined);
  if (!tag) throw new Error('the manifest has no tag');
  return tag;
}

/** What both formats have of anything. @param {Item} item */
const said = ({ name, description = '' }) => ({ name, description: description.replace(/\s+/g, ' ') });

/** An attribute is text: null and undefined are no values of it. */
const typeOf = ({ type }) => (type?.text ?? 'string').replace(/ \| (null|undefined)/g, '');

/**
 * The inputs that are choices, each with what may be chosen.
 * @param {{ inputs: { properties: object } }} properties of the plan's JSON Schema
 * @returns {Choices}
 */
export const choicesOf = ({ inputs }) =>
  Object.fromEntries(Object.entries(inputs.properties).map(([name, schema]) => [name, schema.enum]));

/**
 * HTML custom data 1.1, which Visual Studio Code and others read. The set `v` is that of attributes without a value.
 * @param {Manifest} manifest
 * @param {Choices} choices
 */
export function customData(manifest, choices) {
  const tag = tagOf(manifest);
  const marked = (item) => ({ name: item.name, description: { kind: 'markdown', value: said(item).description } });
  const attributes = tag.attributes.map((each) => {
    if (typeOf(each) === 'boolean') return { ...marked(each), valueSet: 'v' };
    const values = choices[each.name]?.map((name) => ({ name }));
    return values ? { ...marked(each), values } : marked(each);
  });
  return { version: 1.1, tags: [{ ...marked({ ...tag, name: tag.tagName }), attributes }] };
}

/**
 * Web-types, which the editors of JetBrains read.
 * @param {Manifest} manifest
 * @param {Choices} choices
 * @param {string} version of the package
 */
export function webTypes(manifest, choices, version) {
  const tag = tagOf(manifest);
  const typed = (item) => ({ ...said(item), type: item.type?.text ?? 'unknown' });
  const attributes = tag.attributes.map((each) => {
    const type = choices[each.name]?.map((name) => `'${name}'`).join(' | ') ?? typeOf(each);
    return { ...said(each), required: false, value: { type } };
  });
  const isPublic = ({ kind, privacy = 'public' }) => kind === 'field' && privacy === 'public';
  const element = {
    name: tag.tagName,
    description: tag.description,
    source: { module: 'weekwright', symbol: tag.name },
    attributes,
    slots: tag.slots.map(said),
    js: {
      properties: tag.members.filter(isPublic).map(typed),
      events: tag.events.map(typed),
    },
  };
  const css = {
    properties: tag.cssProperties.map(said),
    'pseudo-elements': tag.cssParts.map((part) => ({ ...said(part), name: `part(${part.name})` })),
  };
  return {
    name: 'weekwright',
    version,
    'js-types-syntax': 'typescript',
    'description-markup': 'markdown',
    contributions: { html: { elements: [element] }, css },
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const manifest = readJson('dist/custom-elements.json');
  const choices = choicesOf(readJson('shared/schema/plan.schema.json').properties);
  const write = (name, data) => writeFileSync(new URL(`dist/${name}`, folder), `${JSON.stringify(data, null, 2)}\n`);
  write('html-custom-data.json', customData(manifest, choices));
  write('web-types.json', webTypes(manifest, choices, readJson('package.json').version));
}
