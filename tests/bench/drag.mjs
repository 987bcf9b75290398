// How a slider feels on a slow phone: an example page with the processor slowed four times, a slider dragged over its
// whole range and driven by keys; with the week alone, and with six scenarios on show. `npm run build` comes first.
//
// Tasks are counted in processor time, so that a busy machine does not spoil them; the time to the next paint is what a
// person waits, and is only worth something where nothing else runs.
import { startBrowser } from '../tools/browser-page.mjs';

const slowdown = 4;
/** Moves of the pointer there and back, about as often as a screen draws. */
const moves = 120;
const keys = 40;
/** From here on a task counts as long: https://www.w3.org/TR/longtasks-1/ */
const longMilliseconds = 50;

const wait = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function drag(page, slider) {
  await slider.scrollIntoView();
  const { x, y, width, height } = await slider.boundingBox();
  const [left, middle, room] = [x + 12, y + height / 2, width - 24];
  await page.mouse.move(left, middle);
  await page.mouse.down();
  for (let move = 0; move <= moves; move += 1) {
    const share = 1 - Math.abs(1 - (2 * move) / moves);
    await page.mouse.move(left + share * room, middle);
    await wait(16);
  }
  await page.mouse.up();
}

async function pressKeys(page, slider) {
  await slider.focus();
  await page.keyboard.press('Home');
  for (let key = 0; key < keys; key += 1) {
    await page.keyboard.press('ArrowRight');
    await wait(50);
  }
}

/** Runs in the page: notes how long each interaction took until the next paint. */
function watchInteractions() {
  const interactions = [];
  Object.assign(globalThis, { interactions });
  new PerformanceObserver((list) => {
    for (const { duration, interactionId } of list.getEntries())
      if (interactionId > 0) interactions.push(Math.round(duration));
  }).observe({ type: 'event', durationThreshold: 16 });
}

/** Processor time of each task on the thread that handled the page's events, in milliseconds. */
function tasksOf(trace) {
  const { traceEvents } = JSON.parse(new TextDecoder().decode(trace));
  const handled = traceEvents.find(({ name }) => name === 'EventDispatch');
  return traceEvents
    .filter(({ name, tid, pid }) => name.endsWith('RunTask') && tid === handled.tid && pid === handled.pid)
    .map(({ tdur = 0 }) => tdur / 1000);
}

async function measure({ page, slider }, act) {
  await page.tracing.start({ categories: ['toplevel', 'devtools.timeline'] });
  await act(page, slider);
  await wait(500);
  const tasks = tasksOf(await page.tracing.stop());
  const interactions = await page.evaluate(() => globalThis.interactions.splice(0));
  return {
    longestTask: Math.max(...tasks),
    longTasks: tasks.filter((duration) => duration > longMilliseconds).length,
    toNextPaint: Math.max(0, ...interactions),
  };
}

/** Runs in the page: puts six scenarios side by side. */
async function sixScenarios() {
  const planner = document.querySelector('weekwright-planner');
  for (let count = 1; count < 6; count += 1) {
    planner.shadowRoot.querySelector('.toolbar button').click();
    await planner.updateComplete;
  }
  return planner.shadowRoot.querySelectorAll('.inputs-table thead td, .inputs-table thead th[data-role]').length;
}

/** What is dragged where. */
const scenes = [
  { title: 'the week alone', path: '/demo/blog.html', slider: 'input[type="range"]', prepare: null },
  {
    title: 'six scenarios on show',
    path: '/demo/consultation.html',
    slider: '.inputs-table input[type="range"]',
    prepare: sixScenarios,
  },
];

/** What a drag, another one and forty keys cost, in milliseconds. */
async function measureDrag({ path, slider: selector, prepare }) {
  const web = await startBrowser();
  try {
    const { page } = await web.open(path, { slowdown });
    await page.evaluate(() => document.querySelector('weekwright-planner').updateComplete);
    if (prepare && (await page.evaluate(prepare)) !== 6) throw new Error('there are not six scenarios');
    const slider = await page.$(`weekwright-planner >>> ${selector}`);
    await page.evaluate(watchInteractions);
    const where = { page, slider };
    return {
      'first drag': await measure(where, drag),
      'next drag': await measure(where, drag),
      'forty keys': await measure(where, pressKeys),
    };
  } finally {
    await web.close();
  }
}

/** Prints the measurements, as `npm run bench -- --phone` does. */
export async function printDrag() {
  console.log(
    `\nA slider in Chromium, processor slowed ${slowdown} times (aim: no task over 50 ms, paint within 100 ms)`,
  );
  for (const scene of scenes) {
    console.log(`  ${scene.title}`);
    printScene(await measureDrag(scene));
  }
}

function printScene(measured) {
  for (const [name, { longestTask, longTasks, toNextPaint }] of Object.entries(measured))
    console.log(
      `    ${name.padEnd(12)} longest task ${longestTask.toFixed(0).padStart(4)} ms, ${longTasks} over 50; ` +
        `to the next paint ${String(toNextPaint).padStart(4)} ms`,
    );
}
