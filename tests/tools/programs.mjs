import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The first of these programs that is on the path. @returns {string | undefined} */
export function onPath(...names) {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find((path) => existsSync(path));
}

const libraries = ['/usr/lib/x86_64-linux-gnu', '/usr/lib/aarch64-linux-gnu', '/usr/lib64', '/usr/lib', '/usr/libexec'];

/** The small browser that comes with WebKitGTK; it is never on the path. @returns {string | undefined} */
function miniBrowser() {
  const folders = libraries.filter((folder) => existsSync(folder));
  const found = folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.startsWith('webkit2gtk-') || name.startsWith('webkitgtk-'))
      .map((name) => join(folder, name, 'MiniBrowser')),
  );
  return found.find((path) => existsSync(path));
}

/** What is installed of the browsers that the package of Chromium does not bring, and who brings the rest. */
const needed = {
  firefox: {
    'firefox-esr': () => process.env.FIREFOX_PATH ?? onPath('firefox-esr', 'firefox'),
  },
  webkit: {
    'webkit2gtk-driver': () => onPath('WebKitWebDriver') && miniBrowser(),
    xvfb: () => process.env.DISPLAY ?? onPath('Xvfb'),
  },
};

/** Debian packages that a browser lacks here. @returns {string[]} */
export function missingPackages(browser) {
  return Object.entries(needed[browser] ?? {})
    .filter(([, find]) => !find())
    .map(([name]) => name);
}

export const findFirefox = needed.firefox['firefox-esr'];
export const findMiniBrowser = miniBrowser;
