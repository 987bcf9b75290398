import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The demo pages load `/weekwright.js`, as a page on the web would: here it is the source itself. */
const tagFromSource: Plugin = {
  name: 'tag-from-source',
  resolveId: (id) => (id === '/weekwright.js' ? `${root}src/define.ts` : undefined),
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
  plugins: [tagFromSource, startAtDemo],
  optimizeDeps: { entries: 'src/define.ts', include: ['mathjs/number'] },
  server: { open: process.stdout.isTTY ? '/demo/' : false },
});
