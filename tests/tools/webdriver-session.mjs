import { createServer } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';

/** A port that nothing listens on. @returns {Promise<number>} */
export function freePort() {
  return new Promise((found, failed) => {
    const server = createServer().once('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => found(port));
    });
  });
}

/** One command of WebDriver (https://www.w3.org/TR/webdriver2/): what it answers, or an error that says which one failed. */
async function send(method, url, body) {
  const headers = { 'content-type': 'application/json' };
  const response = await fetch(url, { method, ...(body && { body: JSON.stringify(body), headers }) });
  const { value } = await response.json();
  if (value?.error) throw new Error(`${method} ${url}: ${value.error}: ${value.message}`);
  return value;
}

/** Until a driver that was just started listens. */
async function untilReady(base) {
  for (let attempt = 0; attempt < 100; attempt += 1) {
    const status = await send('GET', `${base}/status`).catch(() => null);
    if (status) return;
    await pause(50);
  }
  throw new Error(`no driver listens at ${base}`);
}

/**
 * Opens a browser through its driver.
 * @param {string} base where the driver listens: `http://127.0.0.1:4444`
 * @param {object} capabilities
 * @returns {Promise<(method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) => Promise<any>>} sends commands of the session
 */
export async function openSession(base, capabilities) {
  await untilReady(base);
  const { sessionId } = await send('POST', `${base}/session`, { capabilities: { alwaysMatch: capabilities } });
  return (method, path, body) => send(method, `${base}/session/${sessionId}${path}`, body);
}
