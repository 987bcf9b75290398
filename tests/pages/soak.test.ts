import type { CDPSession } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { useBrowser } from './web.js';

const web = useBrowser();

/** What a page holds once everything that can go has gone. */
async function held(session: CDPSession): Promise<{ bytes: number; nodes: number; listeners: number }> {
  await session.send('HeapProfiler.collectGarbage');
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await session.send('Memory.getDOMCounters');
  return { bytes: usedSize, nodes, listeners: jsEventListeners };
}

test('a thousand planners that come and go leave nothing behind', async () => {
  const { page, close } = await web.open('/demo/blog.html');
  const session = await page.createCDPSession();
  await session.send('HeapProfiler.enable');
  const comeAndGo = (times: number): Promise<void> =>
    page.evaluate(async (count) => {
      for (let time = 0; time < count; time += 1) {
        const planner = document.createElement('weekwright-planner');
        planner.hours = 0.5 + (time % 79) / 4;
        document.body.append(planner);
        await planner.updateComplete;
        const slider = planner.shadowRoot?.querySelector<HTMLInputElement>('input[type="range"]');
        if (!slider) throw new Error('the planner has no slider');
        slider.stepUp();
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        await planner.updateComplete;
        planner.remove();
      }
    }, times);

  // The first hundreds fill caches and let the browser compile.
  await comeAndGo(800);
  const before = await held(session);
  await comeAndGo(1000);
  const after = await held(session);

  expect(after.bytes / before.bytes).toBeLessThan(1.05);
  expect(after.nodes).toBeLessThanOrEqual(before.nodes * 1.05);
  expect(after.listeners).toBeLessThanOrEqual(before.listeners * 1.05);
  await close();
}, 240_000);
