import { readFileSync } from 'node:fs';
import { format } from 'prettier';
import { describe, expect, test } from 'vitest';
import { installed } from './install.js';
import { isPublicField, publishedTag, readInstalled } from './published-tag.js';

interface Package {
  readonly version: string;
  readonly exports: object;
}

const tag = publishedTag();
const { version, exports: entries } = readInstalled<Package>('package.json');
const { properties: plan } = readInstalled<{ readonly properties: object }>('shared/schema/plan.schema.json');
const load = async (file: string): Promise<object> => (await import(`${installed}dist/${file}.js`)) as object;
const names = (items: readonly { readonly name: string }[]): string[] => items.map(({ name }) => name).sort();

/** All that others may rely on by its name. */
const publicNames = {
  attributes: names(tag.attributes),
  properties: names(tag.members.filter(isPublicField)),
  events: names(tag.events),
  slots: names(tag.slots),
  parts: names(tag.cssParts),
  customProperties: names(tag.cssProperties),
  entries: Object.keys(entries).sort(),
  tagModule: Object.keys(await load('index')).sort(),
  library: Object.keys(await load('core')).sort(),
  plan: Object.keys(plan).sort(),
};

const advice = `The public names have changed. Write it into shared/changelog.md, under Unreleased; "How to release" in
DEVELOPERS.md says which version it needs. Then: npm run test:package -- tests/package/public-names.test.ts -u`;

test('the public names are those of tests/package/public-names.json', async () => {
  const text = await format(JSON.stringify(publicNames), { parser: 'json', printWidth: 120 });
  await expect(text, advice).toMatchFileSnapshot('public-names.json');
});

describe('the changelog', () => {
  const changelog = readFileSync(`${installed}shared/changelog.md`, 'utf8');
  const headings = [...changelog.matchAll(/^## \[(.+?)\]/gm)].map(([, heading]) => heading);

  test('begins with what is not released, and has an entry for the version of package.json', () => {
    expect(headings[0]).toBe('Unreleased');
    expect(headings, 'write the changelog of this version').toContain(version);
  });

  test('goes from new to old, by semantic versions', () => {
    const versions = headings.slice(1).map((heading) => (heading ?? '').split('.').map(Number));
    expect(versions.filter((parts) => parts.length !== 3 || parts.some(Number.isNaN))).toEqual([]);
    const weight = ([major = 0, minor = 0, patch = 0]: readonly number[]): number =>
      (major * 1e4 + minor) * 1e4 + patch;
    expect(versions).toEqual([...versions].sort((one, other) => weight(other) - weight(one)));
  });
});
