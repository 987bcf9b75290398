import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { writePage } from './framework-pages.js';
import { consumer, installed, root } from './install.js';
import { publishedTag, settableProperties } from './published-tag.js';

const folder = `${consumer}types/`;
const { attributes, events: all } = publishedTag();
/** Frameworks know the events that every element may have, each by its own name for them. */
const events = all.filter(({ type }) => type?.text !== 'Event');

/** A program that compiles only where every type has every name. */
const allNames = (): string => {
  const names = [...new Set([...attributes.map(({ name }) => name), ...settableProperties()])];
  const listeners = events.map(({ name }) => `on${name}`);
  const listed = (type: string, list: readonly string[]): string =>
    `export const ${type.toLowerCase()}: readonly (keyof ${type})[] = ${JSON.stringify(list)};
    // @ts-expect-error: not any name is taken
    export const no${type}: keyof ${type} = 'miles';`;
  return `
    import type { Props as React } from './react.js';
    import type { Props as Svelte } from './svelte.js';
    import type { Emits, Props as Vue } from './vue.js';
    ${listed('React', [...names, ...listeners])}
    ${listed('Svelte', [...names, ...listeners])}
    ${listed('Vue', names)}
    ${events.map(({ name }, index) => `export const event${index}: Emits<'${name}', never> = true;`).join('\n')}`;
};

beforeAll(() => {
  writePage('react', 'types');
  writeFileSync(`${folder}names.ts`, allNames());
});

test('the types for React, Vue and Svelte have every attribute, property and event, and refuse others', () => {
  expect(attributes.length).toBeGreaterThan(10);
  const { stdout } = spawnSync('npx', ['tsc', '-p', folder], { cwd: root, encoding: 'utf8' });
  expect(stdout).toBe('');
}, 180_000);

test.each(['react', 'vue', 'svelte'])('weekwright/%s is types alone: nothing of it runs', (framework) => {
  const script = readFileSync(`${installed}dist/frameworks/${framework}.js`, 'utf8');
  expect(script.replace(/^\/\/.*$/gm, '').trim()).toBe('export {};');
});
