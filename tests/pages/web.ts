import { afterAll, beforeAll } from 'vitest';
import { startBrowser } from '../tools/browser-page.mjs';

export type Web = Awaited<ReturnType<typeof startBrowser>>;
export type OpenPage = Awaited<ReturnType<Web['open']>>;
type Look = NonNullable<Parameters<Web['open']>[1]>;

/** A browser for the tests of a file, and the pages that they open in it; each is closed after its test. */
export function useBrowser(): { open(path: string, look?: Look): Promise<OpenPage> } {
  let web: Web | undefined;
  beforeAll(async () => {
    web = await startBrowser();
  });
  afterAll(() => web?.close());
  return {
    open: async (path, look = {}) => {
      if (!web) throw new Error('the browser is not there yet');
      return web.open(path, look);
    },
  };
}
