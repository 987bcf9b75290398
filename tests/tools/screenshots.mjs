// npm run screenshots: every demo page at three widths in both schemes, into reports/screenshots, for people to look at;
// and the picture of the planner in README.md, into demo/planner.png. `npm run build` comes first.
import { mkdirSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { startBrowser } from './browser-page.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = `${root}reports/screenshots/`;
mkdirSync(folder, { recursive: true });

const web = await startBrowser();

async function savePages(name) {
  for (const width of [360, 768, 1280])
    for (const scheme of /** @type {const} */ (['light', 'dark'])) {
      const { page, close } = await web.open(`/demo/${name}`, { width, scheme });
      const path = `${folder}${name.replaceAll('/', '-').replace('.html', '')}-${width}-${scheme}.png`;
      await page.screenshot({ path, fullPage: true });
      console.log(path.slice(root.length));
      await close();
    }
}

async function savePlanner() {
  const { page } = await web.open('/demo/consultation.html');
  const planner = await page.waitForSelector('weekwright-planner');
  await planner.screenshot({ path: `${root}demo/planner.png` });
  console.log('demo/planner.png');
}

try {
  for (const name of readdirSync(`${root}demo`, { recursive: true })) if (name.endsWith('.html')) await savePages(name);
  await savePlanner();
} finally {
  await web.close();
}
