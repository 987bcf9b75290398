import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { defineConfig, type Plugin } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The demo pages load `/weekwright.js`, as a page on the web would: here it is the source itself. */
const tagFromSource: Plugin = {
  name: 'tag-from-source',
  resolveId: (id) => (/^(\/src\/frame)?\/weekwright\.js$/.test(id) ? `${root}src/define.ts` : undefined),
};

/** Classic scripts, by their names in the build. */
const classicScripts: Readonly<Record<string, string>> = {
  'weekwright-embed-page.js': 'src/frame/embed-page.ts',
  'weekwright-frame.js': 'src/frame/frame.ts',
  'weekwright.single.js': 'src/define.ts',
};

function bundle(file: string): string {
  const options = { bundle: true, format: 'iife', target: 'es2022', write: false, logLevel: 'error' } as const;
  return buildSync({ ...options, entryPoints: [root + file], absWorkingDir: root }).outputFiles[0]?.text ?? '';
}

/** The page to frame lies in the top folder, as in the build, and in that of its source. */
const framedPage: Plugin = {
  name: 'framed-page',
  configureServer({ middlewares }) {
    middlewares.use((request, response, next) => {
      const [, name = '', query = ''] = /^(?:\/src\/frame)?\/([\w.-]+)(\?.*)?$/.exec(request.url ?? '') ?? [];
      const script = classicScripts[name];
      if (script) {
        response.writeHead(200, { 'content-type': 'text/javascript' }).end(bundle(script));
        return;
      }
      if (name === 'embed.html' || name === 'weekwright-embed.css') request.url = `/src/frame/${name}${query}`;
      next();
    });
  },
};

const startAtDemo: Plugin = {
  name: 'start-at-demo',
  configureServer({ middlewares }) {
    middlewares.use((request, response, next) => {
      if (request.url !== '/') return next();
      response.writeHead(302, { location: '/demo/' }).end();
    });
  },
};

export default defineConfig({
  root,
  appType: 'mpa',
  plugins: [tagFromSource, framedPage, startAtDemo],
  optimizeDeps: { entries: 'src/define.ts', include: ['mathjs/number'] },
  server: { open: process.stdout.isTTY ? '/demo/' : false },
});
