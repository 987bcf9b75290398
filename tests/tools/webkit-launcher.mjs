import { startWebKit } from './webkit-programs.mjs';
import { createWebKitPage } from './webkit-page.mjs';

/** Runs tests in WebKitGTK through its own driver, one page after the other. No package has a launcher for it. */
export function webkitLauncher() {
  let browser;
  let page;
  let active;
  let address;

  async function startPage() {
    browser = await startWebKit();
    page = createWebKitPage(browser.command);
  }

  return {
    name: 'WebKit',
    // The runner's commands know pages by this name, and createWebKitPage has what they ask of one.
    type: 'playwright',
    concurrency: 1,
    async startSession(id, url) {
      if (!page) await startPage();
      [active, address] = [id, url];
      await page.goto(url);
    },
    isActive: (id) => active === id,
    getBrowserUrl: () => address,
    getPage: () => page,
    async stopSession() {
      active = undefined;
      await page.leave();
      return {};
    },
    startDebugSession() {
      throw new Error('WebKit has no sessions for looking inside; use Chromium or Firefox.');
    },
    async stop() {
      await browser?.close();
    },
  };
}
