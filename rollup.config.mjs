import { chmodSync, readdirSync, readFileSync } from 'node:fs';
import commonjs from '@rollup/plugin-commonjs';
import json from '@rollup/plugin-json';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import terser from '@rollup/plugin-terser';
import { transformSync } from 'esbuild';
import esbuild from 'rollup-plugin-esbuild';

const { dependencies } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));
const external = (id) => Object.keys(dependencies).some((name) => id === name || id.startsWith(`${name}/`));

const target = 'es2022';
const iife = /** @type {const} */ ('iife');
const source = [json({ compact: true, preferConst: true }), esbuild({ target, tsconfig: 'tsconfig.json' })];
// No `browser` option: typed-function's "browser" field names a UMD file, its "module" field an ES one.
const whole = [nodeResolve({ exportConditions: ['production'] }), commonjs(), ...source];

// The embed files are measured in bytes: passes and dropped comments are worth 1 kB of 36; dist/embed/LICENSES.txt has the notices.
const compress = {
  passes: 3,
  keep_fargs: false,
  pure_getters: true,
  unsafe: true,
  unsafe_arrows: true,
  unsafe_symbols: true,
};
const small = terser({ module: true, ecma: 2022, compress, format: { comments: false } });

/** The licence of each package that a build has inside, in one file beside it. */
const notices = {
  name: 'notices',
  generateBundle(_, bundle) {
    const modules = Object.values(bundle).flatMap((file) => Object.keys(file.modules ?? {}));
    const folders = modules.flatMap((id) => /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+\/)/.exec(id)?.[1] ?? []);
    const source = [...new Set(folders)].sort().map((folder) => {
      const { name, version, license } = JSON.parse(readFileSync(`${folder}package.json`, 'utf8'));
      const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
      return `${name} ${version}, ${license}\n\n${file ? readFileSync(folder + file, 'utf8').trim() : ''}`;
    });
    this.emitFile({ type: 'asset', fileName: 'LICENSES.txt', source: source.join(`\n\n${'-'.repeat(72)}\n\n`) });
  },
};

/** Styles and templates are written for people; a browser needs neither their indentation nor comments. */
const compact = {
  name: 'compact',
  transform(code, id) {
    if (!id.includes('/src/element/')) return null;
    const minify = (css) => transformSync(css, { loader: 'css', minify: true, charset: 'utf8' }).code.trim();
    // A backslash in a style is one more in the text of a program.
    const smallCss = (_, css) => `css\`${minify(css).replaceAll('\\', '\\\\')}\``;
    const minified = id.endsWith('.styles.ts') ? code.replace(/css`([^`]*)`/g, smallCss) : code.replace(/\n\s*/g, '\n');
    return { code: minified, map: null };
  },
};

/** Every browser that runs the planner can adopt style sheets: Lit need not ask, nor bring what it does without. */
const adopting = {
  name: 'adopting',
  transform(code, id) {
    if (!id.endsWith('/@lit/reactive-element/css-tag.js')) return null;
    const known = code.replace(/\w+\.ShadowRoot&&.*?CSSStyleSheet\.prototype(?=,)/, 'true');
    if (known === code) throw new Error('@lit/reactive-element asks for style sheets in another way than before');
    return { code: known, map: null };
  },
};

// mathjs says "sideEffects": false, but rollup loses that on the way: without this its chunk is more than twice as large.
const treeshake = { moduleSideEffects: (id) => !id.includes('/node_modules/mathjs/') };

// mathjs has import cycles of its own; anything else that rollup warns of stops the build.
function onwarn(warning) {
  const { code, ids = [], message } = warning;
  if (code === 'CIRCULAR_DEPENDENCY' && ids.every((id) => id.includes('/node_modules/mathjs/'))) return;
  throw new Error(`${code}: ${message}`);
}

/** The page to frame and its styles are as they are written. */
const framedPage = {
  name: 'framed-page',
  generateBundle() {
    for (const fileName of ['embed.html', 'weekwright-embed.css'])
      this.emitFile({ type: 'asset', fileName, source: readFileSync(`src/frame/${fileName}`, 'utf8') });
  },
};

// Classic scripts: they run in a sandboxed frame, and on pages that know of no modules.
const classic = (input, file, ...more) => ({
  input,
  onwarn,
  plugins: [...source, small, ...more],
  output: { file, format: iife },
});

const executable = {
  name: 'executable',
  writeBundle: ({ file }) => chmodSync(file, 0o755),
};

// Lines that several panels share are worth no file of their own; the details come with each of these panels.
const withDetails = [
  '/src/element/details.ts',
  '/src/element/late.styles.ts',
  '/src/element/fields/',
  '/src/element/concrete/note-list.ts',
  '/src/element/concrete/reason-list.ts',
  '/src/element/concrete/box.ts',
  '/src/element/concrete/concrete.styles.ts',
  '/src/element/link/fragment.ts',
  '/src/element/parts/copied.ts',
  '/src/element/parts/file-drop.ts',
  '/src/element/parts/save-as.ts',
  '/src/element/today.ts',
  '/src/training/load/efforts-of.ts',
  '/src/training/record/done-session.ts',
  '/src/training/week/day-sets.ts',
  '/src/plan/sessions-of.ts',
  '/src/plan/week/cards.ts',
  '/src/words/season/dates.ts',
  '/src/words/sheet/scenario-name.ts',
  '/src/words/season/phase-text.ts',
  '/src/training/method/running-rules.ts',
  '/src/training/method/season-rules.ts',
  '/src/training/method/strength-rules.ts',
  '/src/training/method/session-minutes.ts',
  '/src/training/method/duplicates.ts',
  '/src/training/season/iso-date.ts',
  '/src/exchange/csv-line.ts',
  '/src/exchange/formula-guard.ts',
  '/src/exchange/table-text.ts',
  '/src/plan/fields.ts',
  '/src/plan/faulty-date.ts',
  '/src/plan/strict-object.ts',
  '/src/words/reason.ts',
  '/src/words/week/day-name.ts',
];

/** What the sheet's panel and others share of the what-if engine is not called like the panel. */
const embedName = ({ name, moduleIds }) =>
  `weekwright-${name === 'sheet' && !moduleIds.some((id) => id.includes('/element/')) ? 'engine' : name}-[hash:6].js`;

// A week that takes long is solved in a worker: a file of its own, beside the chunk that starts it.
const worker = (file, ...last) => ({
  input: 'src/element/board/weekwright-week-worker.ts',
  onwarn,
  plugins: [...whole, ...last],
  output: { file },
});

export default [
  // For bundlers: the dependencies stay imports.
  {
    input: { index: 'src/index.ts', define: 'src/define.ts', core: 'src/core.ts' },
    external,
    onwarn,
    plugins: source,
    output: { dir: 'dist', chunkFileNames: 'chunks/[name]-[hash].js' },
  },
  // For <script type="module">: everything inside, what not every page needs in chunks of its own.
  {
    input: { weekwright: 'src/define.ts' },
    onwarn,
    treeshake,
    plugins: [...whole, adopting, compact, small],
    output: {
      dir: 'dist/embed',
      sourcemap: true,
      chunkFileNames: embedName,
      onlyExplicitManualChunks: true,
      manualChunks: (id) => (withDetails.some((file) => id.includes(file)) ? 'details' : undefined),
    },
  },
  worker('dist/chunks/weekwright-week-worker.js'),
  worker('dist/embed/weekwright-week-worker.js', small),
  // For sites that can host one file only. No module itself, so that a sandboxed frame may load it.
  {
    input: 'src/define.ts',
    onwarn,
    treeshake,
    plugins: [...whole, adopting, compact, small, notices],
    output: { file: 'dist/embed/weekwright.single.js', format: iife, sourcemap: true, inlineDynamicImports: true },
  },
  // For sites that strip scripts: a page to frame, and a script that makes the frame as high as the page.
  classic('src/frame/embed-page.ts', 'dist/embed/weekwright-embed-page.js', framedPage),
  classic('src/frame/frame.ts', 'dist/embed/weekwright-frame.js'),
  // For the terminal: one file that needs no packages. The source carries no shebang line.
  {
    input: 'src/cli.ts',
    external: /^node:/,
    onwarn,
    treeshake,
    plugins: [...whole, notices, executable],
    output: { file: 'dist/cli.js', banner: '#!/usr/bin/env node', inlineDynamicImports: true },
  },
];
