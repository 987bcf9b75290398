import { chromeLauncher } from '@web/test-runner-chrome';
import puppeteer from 'puppeteer-core';
import { chromiumLaunchOptions } from './browsers.mjs';
import { findFirefox, missingPackages } from './programs.mjs';
import { webkitLauncher } from './webkit-launcher.mjs';

const firefoxLaunchOptions = () => ({
  browser: 'firefox',
  headless: true,
  executablePath: findFirefox(),
  // Media features and the accessibility tree are asked of the browser itself: see firefox-inside.mjs.
  args: ['--remote-allow-system-access'],
  extraPrefsFirefox: {
    'intl.accept_languages': 'en-US, en',
    'intl.locale.requested': 'en-US',
    // Over the page, as Chromium has none.
    'ui.useOverlayScrollbars': 1,
    // Keys and clicks have acted by the time their command ends.
    'remote.events.async.enabled': false,
  },
});

// More than one page at a time, and tests time out now and then.
const concurrency = 1;
const launchers = {
  chromium: async () => chromeLauncher({ concurrency, launchOptions: await chromiumLaunchOptions() }),
  firefox: () => chromeLauncher({ concurrency, puppeteer, launchOptions: firefoxLaunchOptions() }),
  webkit: webkitLauncher,
};

/** The launcher of `chromium`, `firefox` or `webkit`, which knows its engine. */
export async function launcherOf(engine) {
  if (!(engine in launchers)) throw new Error(`BROWSERS knows ${Object.keys(launchers).join(', ')}, not ${engine}.`);
  const missing = missingPackages(engine);
  if (missing.length > 0) throw new Error(`${engine} is not here. On Debian: apt-get install ${missing.join(' ')}`);
  return Object.assign(await launchers[engine](), { engine });
}
