import { expect } from '@open-wc/testing';
import { latePanels, openBuilt } from './built-page.js';
import { moveSliders } from './inputs.js';

describe('under a strict policy with Trusted Types', () => {
  it('what the policy forbids is heard', async () => {
    const page = await openBuilt('demo/strict.html');
    const probe = page.document.createElement('p');
    page.document.body.append(probe);
    probe.setAttribute('style', 'color: red');
    await new Promise((done) => setTimeout(done, 100));
    expect(page.heard.join()).to.match(/^refused: style-src/);
  });

  it('the planner is shown and used, and every panel comes, without a violation', async () => {
    const page = await (await openBuilt('demo/strict.html')).settled();
    expect(page.root.querySelector('.answer')?.textContent).to.match(/^\s*Three hours in base/);
    expect(await moveSliders(page, '.inputs')).to.equal(4);
    await page.show(['split', ...latePanels]);
    for (const panel of ['sheet', 'week', 'season', 'strength'])
      expect(await moveSliders(page, `[part~="${panel}"]`), panel).to.be.greaterThan(0);
    await page.rests();
    expect(page.heard).to.deep.equal([]);
  });
});
