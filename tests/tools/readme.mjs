// Part of npm run compile: writes into README.md what the project itself says best, the tables of what the tag offers,
// what the command prints, and the size of the picture. With --check it writes nothing and fails where README.md would become another.
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { cli as analyze } from '@custom-elements-manifest/analyzer/cli.js';
import { format } from 'prettier';
import { loadTs } from './load-ts.mjs';
import { answerConsoles, namedFiles } from './markdown-blocks.mjs';
import { fillTables } from './readme-tables.mjs';

const root = new URL('../../', import.meta.url);
const file = new URL('README.md', root);
const readme = await readFile(file, 'utf8');
const files = namedFiles(readme);
const { run } = await loadTs('src/cli/run.ts');

let lastCode = 0;

/** What a command of README.md prints, on both streams; the files that it reads are those that README.md shows. */
async function answer(command) {
  if (command === 'echo $?') return `${lastCode}\n`;
  const [name, ...args] = command.split(' ');
  if (name !== 'weekwright') throw new Error(`not a command that can be run here: ${command}`);
  let printed = '';
  const print = (text) => void (printed += text);
  const readShown = (path) => files[path] ?? Promise.reject(new Error(`README.md shows no file ${path}`));
  lastCode = await run(args, { readFile: readShown, write: print, writeError: print });
  return printed;
}

/** The pictures have two pixels a point. */
async function sizePictures(markdown) {
  let sized = markdown;
  for (const [image, file] of markdown.matchAll(/<img\s+src="(.+?)"\s+width="\d+"\s+height="\d+"/g)) {
    const png = await readFile(new URL(file, root));
    const [width, height] = [png.readUInt32BE(16) / 2, png.readUInt32BE(20) / 2];
    const size = `width="${width}" height="${height}"`;
    sized = sized.replace(image, image.replace(/width="\d+"\s+height="\d+"/, size));
  }
  return sized;
}

const manifest = await analyze({
  argv: ['analyze', '--quiet', '--config', 'tests/custom-elements-manifest.config.mjs'],
  cwd: fileURLToPath(root),
  noWrite: true,
});
const filled = fillTables(await answerConsoles(await sizePictures(readme), answer), manifest);
const fresh = await format(filled, { filepath: 'README.md', printWidth: 120, singleQuote: true });
if (!process.argv.includes('--check')) await writeFile(file, fresh);
else if (fresh !== readme) throw new Error('README.md is stale: run `npm run compile`');
