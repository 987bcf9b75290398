// What the planner costs a page while it loads on a slow phone: example pages with the processor slowed four times and a slow
// line, with the planner's script and without it. `npm run build` comes first.
//
// Tasks are counted in processor time of the page's main thread, so that a busy machine does not spoil them much.
import { startBrowser } from '../tools/browser-page.mjs';

const slowdown = 4;
/** A slow line, in bytes a second and milliseconds. */
const line = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const rounds = 5;
/** Long enough for all panels to come, also on a slow machine. */
const rest = 3000;

const pages = [
  { title: 'a page with the week alone', path: '/demo/strict.html' },
  { title: 'the club’s page: two planners, season, handout and sheet', path: '/demo/club.html' },
];

const wait = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));
const median = (values) => values.toSorted((one, other) => one - other)[values.length >> 1] ?? 0;

/** Runs in the page before it: notes the largest piece of content painted so far. */
function watchLargest() {
  new PerformanceObserver((list) => {
    const { startTime, element } = list.getEntries().at(-1);
    const isOurs = Boolean(element?.closest('weekwright-planner') ?? element?.getRootNode() instanceof ShadowRoot);
    Object.assign(globalThis, { largest: { time: startTime, name: isOurs ? 'ours' : (element?.localName ?? '?') } });
  }).observe({ type: 'largest-contentful-paint', buffered: true });
}

/** Processor time of the page's main thread, in milliseconds; the page is the only one of its browser. */
function mainThreadTime(trace) {
  const { traceEvents } = JSON.parse(new TextDecoder().decode(trace));
  const mains = traceEvents.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain');
  return traceEvents
    .filter(
      ({ name, pid, tid }) => name.endsWith('RunTask') && mains.some((each) => each.pid === pid && each.tid === tid),
    )
    .reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);
}

/** A browser of its own for each load: a page that is closed takes the slowdown from the others. */
async function load(path, { isScripted }) {
  const web = await startBrowser();
  try {
    const { page } = await web.open('/demo/index.html', { width: 360, height: 740 });
    const session = await page.createCDPSession();
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', line);
    if (!isScripted) await session.send('Network.setBlockedURLs', { urls: ['*/weekwright*.js'] });
    await page.evaluateOnNewDocument(watchLargest);
    await page.tracing.start({ categories: ['toplevel'] });
    await page.goto(new URL(path, page.url()).href, { waitUntil: 'networkidle0' });
    await wait(rest);
    const time = mainThreadTime(await page.tracing.stop());
    return { time, largest: await page.evaluate(() => globalThis.largest) };
  } finally {
    await web.close();
  }
}

async function measure(path) {
  const [bare, whole] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    bare.push(await load(path, { isScripted: false }));
    whole.push(await load(path, { isScripted: true }));
  }
  return [bare, whole].map((runs) => ({
    time: median(runs.map(({ time }) => time)),
    painted: median(runs.map(({ largest }) => largest.time)),
    name: runs[0]?.largest.name,
  }));
}

/** Prints the measurements, as `npm run bench -- --phone` does. */
export async function printLoad() {
  console.log(
    `\nLoading in Chromium, processor slowed ${slowdown} times, medians of ${rounds} (aim: under 200 ms more)`,
  );
  for (const { title, path } of pages) {
    const [bare, whole] = await measure(path);
    const told = ({ painted, name }) => `${painted.toFixed(0)} ms (${name})`;
    const times = (whole.time / bare.time).toFixed(1);
    console.log(`  ${title}`);
    console.log(`    main thread    ${times} × the page alone: ${(whole.time - bare.time).toFixed(0)} ms more`);
    console.log(`    largest paint  ${told(whole)}; without the planner ${told(bare)}`);
  }
}
