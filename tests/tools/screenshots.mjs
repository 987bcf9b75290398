// npm run screenshots: every demo page at three widths in both schemes, into reports/screenshots, for people to look at;
// and the pictures in README.md, light and dark, into shared/pictures. `npm run build` comes first.
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

/** Runs in the page: a week in which a rule acts. */
function showWeek(element) {
  Object.assign(element, { panels: 'split', hours: 7, phase: 'build', level: 'trained', event: 'marathon' });
  return element.updateComplete;
}

/** Runs in the page: three scenarios, one of them with strength set by hand, and what of them fits into a picture. */
async function showSheet(element) {
  const settle = () => element.updateComplete;
  const press = async (selector) => {
    element.shadowRoot.querySelector(selector).click();
    await settle();
  };
  Object.assign(element, { panels: 'sheet', hours: 5, phase: 'build', level: 'trained', event: 'marathon' });
  await settle();
  await press('.toolbar button');
  element.hours = 7;
  await settle();
  await press('.toolbar button');
  await press('[data-row="strength_rounded"][data-column="c"]');
  const field = element.shadowRoot.querySelector('#formula-here');
  field.value = '90';
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await settle();
  await press('.draft .act');
  await new Promise((resolve) => setTimeout(resolve, 200));
  for (const group of ['minutes', 'shares']) await press(`[data-row="group ${group}"]`);
  element.shadowRoot.activeElement?.blur();
}

/** Runs in the page: a week on days, a session of it put on its day by hand. */
async function showDays(element) {
  Object.assign(element, {
    panels: 'week',
    days: '60,45,0,60,45,90,120',
    hours: 4.5,
    phase: 'build',
    level: 'trained',
  });
  await element.updateComplete;
  const press = async (find) => {
    find(element.shadowRoot).click();
    await element.updateComplete;
  };
  await press((root) => root.querySelector('.card[data-category="tempo"]'));
  await press((root) => root.querySelector('#board-tools .acts:not(.moves) .act'));
  await press((root) => root.querySelector('#board-tools .close'));
  element.shadowRoot.activeElement?.blur();
}

/** Runs in the page: a season, read in one of its weeks. */
async function showSeason(element) {
  Object.assign(element, { panels: 'season', eventDate: '2027-05-02', hours: 4, level: 'trained' });
  await element.updateComplete;
  const slider = element.shadowRoot.querySelector('#season-reading');
  slider.value = '6';
  slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await element.updateComplete;
}

/** Runs in the page: paces from a race, the runs of a week on days. */
async function showRuns(element) {
  const runner = { age: 40, restingHeart: 55 };
  Object.assign(element, { panels: 'running', race: '10k 45:00', running: runner, hours: 4.5, phase: 'build' });
  await element.updateComplete;
}

/** Runs in the page: strength set by set, a weight known, a movement opened. */
async function showSets(element) {
  const lifted = [{ movement: 'barbell-squat', kilograms: 70, repetitions: 5 }];
  Object.assign(element, { panels: 'strength', equipment: 'band dumbbells barbell', strength: { lifted } });
  Object.assign(element, { hours: 4, phase: 'build', level: 'trained' });
  await element.updateComplete;
  element.shadowRoot.querySelectorAll('.exercise summary')[1].click();
  await element.updateComplete;
}

/** Runs in the page: a week held against what is known, the check opened that is worth a look. */
async function showChecks(element) {
  Object.assign(element, { panels: 'week checks', days: '60,0,45,60,0,90,120', hours: 4, phase: 'build' });
  Object.assign(element, { checks: { hoursBefore: 3.5, longestRun: 50 } });
  await element.updateComplete;
  element.shadowRoot.querySelector('.check[data-level="look"] summary').click();
  // The week is there for the checks of its days.
  element.shadowRoot.querySelector('.board').style.display = 'none';
  await element.updateComplete;
}

/** Runs in the page: what a runner takes home, and only its first boxes. */
async function showHandout(element) {
  Object.assign(element, { panels: 'week running handout', days: '60,0,45,60,0,90,120', race: '10k 48:00' });
  Object.assign(element, { hours: 4, phase: 'build', contact: 'Quillfield Movement Clinic, extension 14' });
  await element.updateComplete;
  const root = element.shadowRoot;
  const texts = { runner: 'Ida', note: 'Easy means easy. See you on the 14th.', start: '2026-11-30' };
  for (const [id, text] of Object.entries(texts)) {
    const field = root.querySelector(`#handout-${id}`);
    field.value = text;
    field.dispatchEvent(new Event('change'));
    await element.updateComplete;
  }
  for (const place of ['.board', '.running']) root.querySelector(place).style.display = 'none';
  await element.updateComplete;
}

/** Two pixels a point, for sharp letters on any screen; the page does not show at the corners. */
async function savePicture(name, scheme, show) {
  const { page, close } = await web.open('/demo/consultation.html', { scheme });
  await page.setViewport({ width: 1440, height: 900, deviceScaleFactor: 2 });
  await page.addStyleTag({ content: ':has(weekwright-planner) { background: none !important; }' });
  // A fresh one: the panels of the page, once fetched, have their say in the week.
  await page.evaluate(() =>
    document.querySelector('weekwright-planner').replaceWith(document.createElement('weekwright-planner')),
  );
  const planner = await page.waitForSelector('weekwright-planner');
  await planner.evaluate(show);
  await page.evaluate(() => Promise.all(document.getAnimations().map(({ finished }) => finished)));
  const path = `${pictures}${name}-${scheme}.png`;
  writeFileSync(path, smallPng(await planner.screenshot({ omitBackground: true })));
  console.log(path.slice(root.length));
  await close();
}

try {
  const pages = readdirSync(`${root}demo`, { recursive: true, encoding: 'utf8' });
  for (const name of pages.filter((file) => file.endsWith('.html')))
    for (const width of [360, 768, 1280]) for (const scheme of schemes) await savePage(name, { width, scheme });
  for (const scheme of schemes) {
    await savePicture('planner', scheme, showWeek);
    await savePicture('week', scheme, showDays);
    await savePicture('running', scheme, showRuns);
    await savePicture('strength', scheme, showSets);
    await savePicture('checks', scheme, showChecks);
    await savePicture('season', scheme, showSeason);
    await savePicture('handout', scheme, showHandout);
    await savePicture('sheet', scheme, showSheet);
  }
} finally {
  await web.close();
}
