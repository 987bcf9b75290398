import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readChromiumHeap, readChromiumTree, setChromiumMedia } from './chromium-inside.mjs';
import { focusFirefoxPage, readFirefoxTree, setFirefoxMedia } from './firefox-inside.mjs';
import { readWebKitNames } from './webkit-tree.mjs';

const reports = fileURLToPath(new URL('../../reports/', import.meta.url));

async function takePicture(page, { path }) {
  mkdirSync(dirname(reports + path), { recursive: true });
  writeFileSync(reports + path, await page.screenshot());
}

/** Keys go to the page, whatever has the focus of the window. */
const keepsFocus = () => undefined;

/** What each engine can be asked; tests/element/instruments.ts says the same to tests, with the reasons. */
const commands = {
  chromium: {
    'accessibility-tree': readChromiumTree,
    'focus-page': keepsFocus,
    heap: readChromiumHeap,
    'media-features': setChromiumMedia,
    picture: takePicture,
  },
  firefox: {
    'accessibility-tree': readFirefoxTree,
    'focus-page': focusFirefoxPage,
    'media-features': setFirefoxMedia,
    picture: takePicture,
  },
  webkit: {
    'accessibility-tree': readWebKitNames,
    'focus-page': keepsFocus,
    picture: takePicture,
  },
};

/** Commands for tests that the runner has not. */
export function moreCommands() {
  return {
    name: 'more-commands',
    async executeCommand({ command, payload, session }) {
      const { engine } = session.browser;
      if (command === 'engine') return engine;
      const act = commands[engine]?.[command];
      if (!act) return undefined;
      return (await act(session.browser.getPage(session.id), payload)) ?? true;
    },
  };
}
