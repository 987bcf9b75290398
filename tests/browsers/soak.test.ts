import { expect } from '@open-wc/testing';
import { executeServerCommand } from '@web/test-runner-commands';
import { has } from '../element/instruments.js';
import { openEmpty, type BuiltPage } from './built-page.js';

/** One planner that comes, is used and goes. */
async function comeAndGo(page: BuiltPage, time: number): Promise<void> {
  page.put(`hours="${String(0.5 + (time % 79) / 4)}"`);
  await page.settled();
  const [slider] = page.all<HTMLInputElement>('input[type="range"]');
  if (!slider) throw new Error('the planner has no slider');
  slider.stepUp();
  slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  await page.settled();
  page.planner.remove();
}

interface Held {
  readonly nodes: number;
  readonly sheets: number;
  /** Bytes of the heap where they can be told; else nothing. */
  readonly bytes: number;
}

async function held(page: BuiltPage): Promise<Held> {
  return {
    nodes: page.document.querySelectorAll('*').length,
    sheets: page.document.adoptedStyleSheets.length + page.document.styleSheets.length,
    bytes: has('heap') ? await executeServerCommand<number, undefined>('heap') : 0,
  };
}

it('five hundred planners that come and go leave nothing behind', async function soak() {
  this.timeout(120_000);
  const page = await (await openEmpty()).put('').load('/weekwright.js');
  page.planner.remove();
  // The first hundreds fill caches and let the browser compile.
  for (let time = 0; time < 200; time += 1) await comeAndGo(page, time);
  const before = await held(page);
  for (let time = 0; time < 300; time += 1) await comeAndGo(page, time);
  const after = await held(page);
  expect([after.nodes, after.sheets]).to.deep.equal([before.nodes, before.sheets]);
  expect(after.bytes).to.be.at.most(before.bytes * 1.05);
  expect(page.heard).to.deep.equal([]);
});
