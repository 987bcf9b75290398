// npm run screenshots: every demo page at three widths in both schemes, into reports/screenshots, for people to look at;
// and the picture of the planner in README.md, light and dark, into shared/pictures. `npm run build` comes first.
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { startBrowser } from './browser-page.mjs';
import { smallPng } from './small-png.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = `${root}reports/screenshots/`;
const pictures = `${root}shared/pictures/`;
for (const each of [folder, pictures]) mkdirSync(each, { recursive: true });

const schemes = /** @type {const} */ (['light', 'dark']);
const web = await startBrowser();

async function savePage(name, look) {
  const { page, close } = await web.open(`/demo/${name}`, look);
  const path = `${folder}${name.replaceAll('/', '-').replace('.html', '')}-${look.width}-${look.scheme}.png`;
  await page.screenshot({ path, fullPage: true });
  console.log(path.slice(root.length));
  await close();
}

/** A week in which a rule acts; two pixels a point, for sharp letters on any screen; the page does not show at the corners. */
async function savePlanner(scheme) {
  const { page, close } = await web.open('/demo/consultation.html', { scheme });
  await page.setViewport({ width: 1440, height: 900, deviceScaleFactor: 2 });
  await page.addStyleTag({ content: ':has(weekwright-planner) { background: none !important; }' });
  const planner = await page.waitForSelector('weekwright-planner');
  await planner.evaluate((element) => {
    Object.assign(element, { hours: 7, phase: 'build', level: 'trained', event: 'marathon' });
    return element.updateComplete;
  });
  await page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));
  const path = `${pictures}planner-${scheme}.png`;
  writeFileSync(path, smallPng(await planner.screenshot({ omitBackground: true })));
  console.log(path.slice(root.length));
  await close();
}

try {
  const pages = readdirSync(`${root}demo`, { recursive: true, encoding: 'utf8' });
  for (const name of pages.filter((file) => file.endsWith('.html')))
    for (const width of [360, 768, 1280]) for (const scheme of schemes) await savePage(name, { width, scheme });
  for (const scheme of schemes) await savePlanner(scheme);
} finally {
  await web.close();
}
