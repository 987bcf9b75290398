import { spawn } from 'node:child_process';
import { findMiniBrowser } from './programs.mjs';
import { freePort, openSession } from './webdriver-session.mjs';

/** Larger than any page of the tests, with the bar that MiniBrowser has over it. */
const screen = { width: 1400, height: 1200 };

/** A screen that nobody sees, named as DISPLAY wants it. */
async function startScreen(children) {
  const { width, height } = screen;
  const size = `${String(width)}x${String(height)}x24`;
  const server = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', size, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  children.push(server);
  const number = await new Promise((started, failed) => {
    server.once('error', failed);
    server.stdio[3].once('data', started);
  });
  return `:${String(number).trim()}`;
}

async function startDriver(children) {
  // Without the accessibility bus and the processor of graphics, which machines for tests have not.
  const env = { ...process.env, WEBKIT_DISABLE_COMPOSITING_MODE: '1', GDK_BACKEND: 'x11', NO_AT_BRIDGE: '1' };
  env.DISPLAY ??= await startScreen(children);
  const port = await freePort();
  const driver = spawn('WebKitWebDriver', [`--port=${String(port)}`], { env, stdio: 'ignore' });
  children.push(driver);
  return `http://127.0.0.1:${String(port)}`;
}

/** Starts WebKitGTK's MiniBrowser with its driver. */
export async function startWebKit() {
  const children = [];
  const killAll = () => {
    for (const child of children.splice(0).toReversed()) child.kill();
  };
  // A run that is broken off leaves no browser behind.
  process.once('exit', killAll);
  process.once('SIGTERM', () => process.exit(143));
  const base = await startDriver(children);
  const command = await openSession(base, {
    browserName: 'MiniBrowser',
    'webkitgtk:browserOptions': { binary: findMiniBrowser(), args: ['--automation'] },
  });
  await command('POST', '/window/rect', { x: 0, y: 0, ...screen });
  const close = async () => {
    await command('DELETE', '').catch(() => undefined); // it may be gone already
    killAll();
  };
  return { command, close };
}
