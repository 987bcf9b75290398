// How a slider feels on a slow phone: the consultation page with the processor slowed four times, a slider dragged
// across its whole range and driven by keys. `npm run build` comes first.
import { pathToFileURL } from 'node:url';
import { startBrowser } from '../tools/browser-page.mjs';

const slowdown = 4;
const path = '/demo/consultation.html';
/** Moves of the pointer in a drag, about as often as a screen draws. */
const moves = 120;
const keys = 40;
const milliseconds = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** Runs in the page: notes long tasks, and how long each interaction took until the next paint. */
function watch() {
  const seen = { tasks: [], events: [] };
  Object.assign(globalThis, { seen });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) seen.tasks.push(duration);
  }).observe({ type: 'longtask' });
  new PerformanceObserver((list) => {
    for (const { name, duration, processingStart, processingEnd, interactionId } of list.getEntries())
      seen.events.push({ name, duration, work: processingEnd - processingStart, interactionId });
  }).observe({ type: 'event', durationThreshold: 16 });
}

/** What was noted since the last time. */
function harvest() {
  const { tasks, events } = globalThis.seen;
  return { tasks: tasks.splice(0), events: events.splice(0) };
}

async function drag(page, slider) {
  const { x, y, width, height } = await slider.boundingBox();
  const middle = y + height / 2;
  await page.mouse.move(x + 20, middle);
  await page.mouse.down();
  for (let move = 0; move <= moves; move += 1) {
    // There and back, so that every threshold is crossed twice.
    const share = move < moves / 2 ? (2 * move) / moves : 2 - (2 * move) / moves;
    await page.mouse.move(x + 12 + share * (width - 24), middle);
    await milliseconds(16);
  }
  await page.mouse.up();
}

async function pressKeys(page, slider) {
  await slider.focus();
  await page.keyboard.press('Home');
  for (let key = 0; key < keys; key += 1) {
    await page.keyboard.press('ArrowRight');
    await milliseconds(50);
  }
}

function summary({ tasks, events }) {
  const sorted = events.map(({ duration }) => duration).sort((a, b) => a - b);
  const interactions = events.filter(({ interactionId }) => interactionId > 0).map(({ duration }) => duration);
  return {
    longTasks: tasks.length,
    longestTask: Math.max(0, ...tasks),
    // Events under 16 ms are not reported by browsers, which round to 8.
    slowestEvent: sorted.at(-1) ?? 0,
    slowestInteraction: Math.max(0, ...interactions),
    longestHandler: Math.max(0, ...events.map(({ work }) => work)),
  };
}

/**
 * Milliseconds of the drag and of the keys; a long task is one over 50.
 * @returns {Promise<{ drag: ReturnType<typeof summary>, keys: ReturnType<typeof summary> }>}
 */
export async function measureDrag() {
  const web = await startBrowser();
  try {
    const { page } = await web.open(path, { slowdown });
    const slider = await page.$('weekwright-planner >>> input[type="range"]');
    await slider.scrollIntoView();
    await page.evaluate(watch);
    const measure = async (act) => {
      await act(page, slider);
      await milliseconds(500);
      return summary(await page.evaluate(harvest));
    };
    // Once without looking, so that the browser has compiled what it runs, as it has after a moment on the page.
    const first = await measure(drag);
    return { first, drag: await measure(drag), keys: await measure(pressKeys) };
  } finally {
    await web.close();
  }
}

/** Prints the measurements; used by `npm run bench`. */
export async function printDrag() {
  const results = await measureDrag();
  console.log(
    `\nA slider in Chromium, processor slowed ${slowdown} times, milliseconds (aim: no task over 50, paint within 100)`,
  );
  for (const [name, each] of Object.entries({
    'the first drag': results.first,
    'the next drag': results.drag,
    'forty keys': results.keys,
  }))
    console.log(
      `  ${name.padEnd(16)}longest task ${each.longestTask.toFixed(0).padStart(4)} (${each.longTasks} over 50)   ` +
        `to the next paint ${each.slowestInteraction.toFixed(0).padStart(4)}   any event ${each.slowestEvent.toFixed(0).padStart(4)}   ` +
        `own work ${each.longestHandler.toFixed(1).padStart(6)}`,
    );
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await printDrag();
