import { describe, expect, test } from 'vitest';
import planSchema from '../../shared/schema/plan.schema.json';
import { choicesOf, customData, webTypes } from '../tools/editor-data.mjs';
import { isPublicField, publishedTag, readInstalled } from './published-tag.js';

interface Named {
  readonly name: string;
}

interface Attribute extends Named {
  readonly values?: readonly Named[];
  readonly value?: { readonly type: string };
}

interface CustomData {
  readonly version: number;
  readonly tags: readonly (Named & { readonly attributes: readonly Attribute[] })[];
}

interface WebTypes {
  readonly name: string;
  readonly version: string;
  readonly contributions: {
    readonly html: {
      readonly elements: readonly (Named & {
        readonly attributes: readonly Attribute[];
        readonly slots: readonly Named[];
        readonly js: Readonly<Record<'properties' | 'events', readonly Named[]>>;
      })[];
    };
    readonly css: Readonly<Record<'properties' | 'pseudo-elements', readonly Named[]>>;
  };
}

const tag = publishedTag();
const names = (items: readonly Named[] | undefined): readonly string[] => (items ?? []).map(({ name }) => name);
const phases = ['off-season', 'base', 'build', 'peak', 'taper', 'recovery'];

describe('html-custom-data.json', () => {
  const { version, tags } = readInstalled<CustomData>('dist/html-custom-data.json');

  test('has the tag with every attribute', () => {
    expect([version, names(tags)]).toEqual([1.1, ['weekwright-planner']]);
    expect(names(tags[0]?.attributes)).toEqual(names(tag.attributes));
    expect(names(tags[0]?.attributes)).toContain('strength-cap');
  });

  test('has the values of an attribute that is a choice', () => {
    const values = tags[0]?.attributes.map((each) => [each.name, names(each.values)] as const);
    expect(Object.fromEntries(values ?? [])).toMatchObject({ phase: phases, hours: [], days: [] });
  });
});

describe('web-types.json', () => {
  const { name, version, contributions } = readInstalled<WebTypes>('dist/web-types.json');
  const [element] = contributions.html.elements;

  test('is of this package and its version', () => {
    const published = readInstalled<Readonly<Record<string, unknown>>>('package.json');
    expect({ name, version, file: 'dist/web-types.json' }).toEqual({
      name: published['name'],
      version: published['version'],
      file: published['web-types'],
    });
  });

  test('has all that the manifest has of the tag', () => {
    expect(element?.name).toBe(tag.tagName);
    expect(names(element?.attributes)).toEqual(names(tag.attributes));
    expect(names(element?.slots)).toEqual(names(tag.slots));
    expect(names(element?.js.properties)).toEqual(names(tag.members.filter(isPublicField)));
    expect(names(element?.js.events)).toEqual(names(tag.events));
    expect(names(contributions.css.properties)).toEqual(names(tag.cssProperties));
    expect(names(contributions.css['pseudo-elements'])).toEqual(names(tag.cssParts).map((part) => `part(${part})`));
  });

  test('has the values of an attribute that is a choice, and the type of another', () => {
    const types = element?.attributes.map((each) => [each.name, each.value?.type] as const);
    const phase = phases.map((each) => `'${each}'`).join(' | ');
    expect(Object.fromEntries(types ?? [])).toMatchObject({ phase, hours: 'number', race: 'string' });
  });
});

test('an attribute without a value is one to both editors', () => {
  const attributes = [{ name: 'quiet', type: { text: 'boolean' } }, { name: 'phase' }];
  const lists = { members: [], events: [], slots: [], cssParts: [], cssProperties: [] };
  const declaration = { name: 'Bell', tagName: 'a-bell', description: '', attributes, ...lists };
  const manifest = { modules: [{ declarations: [declaration] }] };
  const choices = choicesOf(planSchema.properties);
  expect(customData(manifest, choices).tags[0]?.attributes[0]).toMatchObject({ name: 'quiet', valueSet: 'v' });
  const [bell] = webTypes(manifest, choices, '1.0.0').contributions.html.elements;
  expect(bell?.attributes[0]).toMatchObject({ name: 'quiet', value: { type: 'boolean' } });
});
