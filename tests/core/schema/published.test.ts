import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { readSchema, root, validator } from './published.js';

test('everything that is made from other files is as `npm run compile` would write it', () => {
  const { stderr, status } = spawnSync('node', ['tests/tools/compile.mjs', '--check'], { cwd: root, encoding: 'utf8' });
  expect([stderr, status]).toEqual(['', 0]);
});

describe.each(['method', 'plan', 'file'] as const)('%s.schema.json', (document) => {
  const schema = readSchema(document);

  test('is a JSON Schema, by ajv in its strict mode', () => {
    expect(validator(document)).toBeTypeOf('function');
  });

  test('may lie at any address', () => {
    expect(schema.$id).toBe(`${document}.schema.json`);
  });

  test('says of every field what it means', () => {
    const { $schema: _, ...fields } = schema['properties'] as Record<string, { readonly description?: string }>;
    const bare = Object.entries(fields).filter(([, { description = '' }]) => description.length < 10);
    expect(bare).toEqual([]);
  });
});
