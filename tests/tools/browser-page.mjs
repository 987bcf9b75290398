// A browser on the demo pages, with everything a page test looks at.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import puppeteer from 'puppeteer-core';
import { chromiumLaunchOptions } from './browsers.mjs';
import { serve } from './serve.mjs';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const axeOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
  rules: { 'label-content-name-mismatch': { enabled: true } },
  resultTypes: ['violations', 'incomplete'],
};

/**
 * How a page is looked at; `slowdown` divides the speed of the processor.
 * @typedef {{ width?: number, height?: number, scheme?: 'light' | 'dark', forcedColors?: boolean, reducedMotion?: boolean,
 *   print?: boolean, scripts?: boolean, slowdown?: number }} Look
 */

/**
 * @param {import('puppeteer-core').Page} page
 * @param {Look} look
 */
async function applyLook(page, look) {
  const { width = 1280, height = 800, scheme = 'light', scripts = true, slowdown = 1 } = look;
  await page.setViewport({ width, height });
  await page.setJavaScriptEnabled(scripts);
  // The session stays open: detaching it would undo the emulation.
  const session = await page.createCDPSession();
  await session.send('Emulation.setEmulatedMedia', {
    media: look.print ? 'print' : 'screen',
    features: [
      { name: 'prefers-color-scheme', value: scheme },
      { name: 'forced-colors', value: look.forcedColors ? 'active' : 'none' },
      { name: 'prefers-reduced-motion', value: look.reducedMotion ? 'reduce' : 'no-preference' },
    ],
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
}

/**
 * Faults and doubtful contrast that axe finds, as lines to read; it reaches open shadow roots, and runs under any policy.
 * @param {import('puppeteer-core').Page} page
 * @returns {Promise<string[]>}
 */
async function runAxe(page) {
  await page.evaluate(axeSource);
  await page.evaluate(hideRings);
  const { violations, incomplete } = await page.evaluate((options) => globalThis.axe.run(options), axeOptions);
  const doubtful = incomplete.filter(({ id }) => id === 'color-contrast');
  return [...violations, ...doubtful].flatMap(({ id, help, nodes }) =>
    nodes
      // The minus of a button is no text to axe; the plus beside it, in the same colour, is.
      .filter(({ html }) => violations.some((each) => each.id === id) || !html.includes('class="step"'))
      .map(({ target, any }) => `${id}: ${help}: ${target.flat().join(' ')} ${any[0]?.message ?? ''}`),
  );
}

/** axe cannot tell the ground of text over a drawing; tests/element/ring.test.ts shows that none lies on a part of it. */
function hideRings() {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync('svg { visibility: hidden }');
  for (const planner of document.querySelectorAll('weekwright-planner'))
    planner.shadowRoot?.adoptedStyleSheets.push(sheet);
  // Words over a page's own drawing have a ground of their own (tests/pages/demo-pages.test.ts).
  for (const drawing of document.querySelectorAll('svg.scene')) drawing.setAttribute('visibility', 'hidden');
}

/**
 * @param {import('puppeteer-core').Browser} browser
 * @param {string} url
 * @param {Look} look
 */
async function openPage(browser, url, look) {
  const page = await browser.newPage();
  /** @type {string[]} */ const complaints = [];
  /** @type {string[]} */ const requests = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => requests.push(request.url()));
  await page.evaluateOnNewDocument(() => {
    globalThis.policyViolations = [];
    addEventListener('securitypolicyviolation', (event) =>
      globalThis.policyViolations.push(`${event.effectiveDirective}: ${event.blockedURI} ${event.sample}`),
    );
  });
  await applyLook(page, look);
  await page.goto(url, { waitUntil: 'networkidle0' });
  return {
    page,
    /** Errors and warnings of the console, and errors nobody caught, so far. */
    complaints,
    /** Addresses asked for so far. */
    requests,
    /** What the page's content security policy has refused so far. @returns {Promise<string[]>} */
    violations: () => page.evaluate(() => globalThis.policyViolations ?? []),
    axe: () => runAxe(page),
    close: () => page.close(),
  };
}

/** Starts a browser and a server of the demo pages; `npm run build` comes first. */
export async function startBrowser() {
  const [site, browser] = await Promise.all([
    serve(),
    chromiumLaunchOptions().then((options) => puppeteer.launch(options)),
  ]);
  return {
    origin: site.origin,
    browser,
    /** @param {string} path such as `/demo/club/` @param {Look} [look] */
    open: (path, look = {}) => openPage(browser, new URL(path, site.origin).href, look),
    async close() {
      await browser.close();
      await site.close();
    },
  };
}
