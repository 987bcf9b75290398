import { rmSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Imports a TypeScript file of the project into Node: what it imports of ours is bundled with it, packages are not.
 * @param {string} path from the top of the project: `src/core.ts`
 */
export async function loadTs(path) {
  const outfile = `${root}node_modules/.cache/load-ts/${path.replace(/\W/g, '-')}.${process.pid}.mjs`;
  await build({
    entryPoints: [root + path],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
  });
  const module = await import(pathToFileURL(outfile).href);
  rmSync(outfile);
  return module;
}
