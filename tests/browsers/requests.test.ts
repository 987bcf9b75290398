import { expect } from '@open-wc/testing';
import { latePanels, openEmpty, type BuiltPage } from './built-page.js';
import { moveSliders, tickBoxes, useLists } from './inputs.js';

/** A week that takes long is solved in a worker, from a file of its own: README, “Under a content policy”. */
const worker = '/weekwright-week-worker.js';

async function openWith(panels: readonly string[]): Promise<BuiltPage> {
  const page = await (await openEmpty()).put('hours="4" phase="base" days="30,0,60,0,45,0,120"').load('/weekwright.js');
  return (await page.show(panels)).rests();
}

describe('after a page has loaded', () => {
  it('nothing is fetched while inputs of the planner and of every panel are used', async () => {
    const page = await openWith(['split', ...latePanels]);
    const before = page.fetched;
    expect(before).to.include('/weekwright.js');
    const used = [await moveSliders(page, ''), await useLists(page, ''), await tickBoxes(page, '')];
    await page.rests();
    expect(
      used.every((count) => count > 3),
      used.join(),
    ).to.equal(true);
    expect(page.fetched.slice(before.length).filter((path) => path !== worker)).to.deep.equal([]);
  });

  it('a panel that is shown later is fetched, and heard of', async () => {
    const page = await openWith(['split']);
    const before = page.fetched;
    await page.show(['split', 'week']);
    expect(page.fetched.slice(before.length).join()).to.match(/weekwright-board/);
  });
});
