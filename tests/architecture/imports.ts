import { readdirSync, readFileSync } from 'node:fs';
import { join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

export const readSource = (file: string): string => readFileSync(root + file, 'utf8');

/** Every TypeScript file of src, from the top of the project. */
export const sourceFiles = readdirSync(`${root}src`, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => `src/${file.replaceAll('\\', '/')}`)
  .sort();

/** What a file imports, types and dynamic imports included: packages as they are written, files from the top of the project. */
export function importsOf(file: string): string[] {
  return ts
    .preProcessFile(readSource(file), true, true)
    .importedFiles.map(({ fileName }) => fileName)
    .map((name) => (name.startsWith('.') ? normalize(join(file, '..', name)).replace(/\.js$/, '.ts') : name));
}
