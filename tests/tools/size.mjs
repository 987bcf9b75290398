// What a visitor downloads, against what we promise: gzip, in kB of 1,000 bytes. Derivations and problems, which come with
// every late panel as with any question why, count among what may load later. The worker holds the search that the week
// has too, so it is counted by itself.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';

const embed = new URL('../../dist/embed/', import.meta.url);
const staticImport = /(?:^|[;}\n*/])\s*(?:import|export)\s*(?:[\w$*{][^"';()]*?from\s*)?["']\.\/([^"']+)["']/g;

/** A file of dist/embed and everything that it imports before it runs. */
function withStaticImports(file, seen = new Set()) {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, next] of readFileSync(new URL(file, embed), 'utf8').matchAll(staticImport))
    withStaticImports(next, seen);
  return seen;
}

const gzipBytes = (files) =>
  [...files].reduce((sum, file) => sum + gzipSync(readFileSync(new URL(file, embed)), { level: 9 }).length, 0);

/** Sizes of the built tag, each with its budget, both in bytes of gzip; `npm run build` comes first. */
export function measureSizes() {
  if (!existsSync(embed)) throw new Error('dist/embed is missing: run `npm run build` first.');
  const files = readdirSync(embed).filter((file) => /^weekwright-.*\.js$/.test(file));
  const chunk = (name) =>
    withStaticImports(files.find((file) => new RegExp(`^weekwright-${name}-.{6}\\.js$`).test(file)));
  const first = withStaticImports('weekwright.js');
  const worker = 'weekwright-week-worker.js';
  const frame = ['weekwright-embed-page.js', 'weekwright-frame.js'];
  const later = files.filter((file) => !first.has(file) && file !== worker && !frame.includes(file));
  const languages = later.filter((file) => /^weekwright-[a-z]{2}-.{6}\.js$/.test(file));
  const english = later.filter((file) => !languages.includes(file));
  const known = new Set([...first, ...chunk('details')]);
  const sheet = new Set([...chunk('sheet'), ...chunk('compile')].filter((file) => !known.has(file)));
  const questions = [...chunk('question-boxes')].filter((file) => !known.has(file) && !sheet.has(file));
  const season = [...chunk('season')].filter((file) => !known.has(file));
  const running = [...chunk('running')].filter((file) => !known.has(file));
  const strength = [...chunk('strength')].filter((file) => !known.has(file));
  const checks = [...chunk('checks')].filter((file) => !known.has(file));
  const basis = [...chunk('basis')].filter((file) => !known.has(file));
  const record = [...chunk('record')].filter((file) => !known.has(file));
  const handout = [...chunk('handout')].filter((file) => !known.has(file));
  const board = [...chunk('board')].filter((file) => !known.has(file));
  return [
    { name: 'first load of the tag', bytes: gzipBytes(first), budget: 30_000 },
    { name: 'the what-if sheet, parser and compiler included', bytes: gzipBytes(sheet), budget: 45_000 },
    { name: 'its questions and their chart', bytes: gzipBytes(questions), budget: 14_000 },
    { name: 'the week on days, its search included', bytes: gzipBytes(board), budget: 29_000 },
    { name: 'the season, its chart included', bytes: gzipBytes(season), budget: 20_000 },
    { name: 'paces and runs', bytes: gzipBytes(running), budget: 11_500 },
    { name: 'strength by sets', bytes: gzipBytes(strength), budget: 12_000 },
    { name: 'checks and load', bytes: gzipBytes(checks), budget: 14_000 },
    { name: 'what it rests on', bytes: gzipBytes(basis), budget: 9_000 },
    { name: 'what was done, tables read included', bytes: gzipBytes(record), budget: 26_000 },
    { name: 'what is taken home, runs and sets included', bytes: gzipBytes(handout), budget: 60_000 },
    { name: 'the search once more, for a worker', bytes: gzipBytes([worker]), budget: 10_000 },
    { name: 'the script of the page to frame', bytes: gzipBytes(frame.slice(0, 1)), budget: 4_000 },
    { name: 'the script around the frame', bytes: gzipBytes(frame.slice(1)), budget: 1_000 },
    { name: 'everything in English that may load later', bytes: gzipBytes(english), budget: 235_000 },
    {
      name: 'another language, the largest',
      bytes: Math.max(...languages.map((file) => gzipBytes([file]))),
      budget: 36_000,
    },
    { name: 'the single file, in all languages', bytes: gzipBytes(['weekwright.single.js']), budget: 366_000 },
  ];
}

function report() {
  const sizes = measureSizes();
  for (const { name, bytes, budget } of sizes)
    console.log(`${bytes > budget ? 'too large' : 'fine'}: ${name} ${bytes / 1000} kB of ${budget / 1000} kB gzip`);
  process.exitCode = sizes.some(({ bytes, budget }) => bytes > budget) ? 1 : 0;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) report();
