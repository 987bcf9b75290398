import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/** `/weekwright.js`, its chunks and the page to frame are the built ones; everything else is where it lies in the project. */
export function fileOf(url) {
  const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  const isTag = /^\/(weekwright[\w.-]*|embed\.html)$/.test(path);
  const file = `${root}${isTag ? 'dist/embed' : ''}${path}${path.endsWith('/') ? 'index.html' : ''}`;
  const isPublic = isTag || /^\/(demo|shared|dist|tests\/browsers)\/(?!.*\.\.)/.test(path);
  return isPublic && statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** What a file is, as its address is answered. */
export const typeOf = (file) => types[extname(file)] ?? 'application/octet-stream';

function answer(request, response) {
  const file = fileOf(request.url);
  if (!file) return response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
  response.writeHead(200, { 'content-type': typeOf(file) });
  createReadStream(file).pipe(response);
}

/**
 * Serves the demo pages with the built tag on a free port of this machine, each call on an origin of its own.
 * @returns {Promise<{ origin: string, close: () => Promise<void> }>}
 */
export async function serve() {
  const server = createServer(answer);
  await new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(undefined)));
  const { port } = /** @type {import('node:net').AddressInfo} */ (server.address());
  const close = () =>
    new Promise((resolve) => {
      server.close(() => resolve(undefined));
      server.closeAllConnections();
    });
  return { origin: `http://127.0.0.1:${port}`, close };
}
