import { aTimeout, expect } from '@open-wc/testing';
import { copiedHash } from '../copied-hash.js';
import { mishaps } from '../mishaps.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

/** All that a person does with paces and runs. */
async function drive(page: RunningPage): Promise<void> {
  await page.chooseDistance('10 km');
  await page.typeIn('running-time', '45:00');
  await page.setDate('running-date', '2020-02-02');
  await page.chooseText(page.selectOf('running-unit'), 'miles');
  await page.opensAll();
  await page.typeIn('running-age', '40');
  await page.typeIn('running-weight', '70');
  await page.typeIn('running-resting', 'low');
}

describe('paces and runs on a page', () => {
  it('ask the network for nothing but our own parts, keep nothing, and ask for no part twice', async () => {
    const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);
    await drive(await openRunning());
    await aTimeout(300);
    const before = new Set(asked());
    await drive(await openRunning());
    await aTimeout(300);
    for (const url of asked()) expect(new URL(url).origin).to.equal(location.origin);
    expect(asked().filter((url) => !before.has(url))).to.deep.equal([]);
    expect([localStorage.length, sessionStorage.length, document.cookie, location.hash]).to.deep.equal([0, 0, '', '']);
  });

  it('let no event of their inputs out', async () => {
    const heard: string[] = [];
    const note = ({ type }: Event): number => heard.push(type);
    const types = ['input', 'change', 'toggle', 'beforetoggle'];
    for (const type of types) document.addEventListener(type, note);
    await drive(await openRunning());
    for (const type of types) document.removeEventListener(type, note);
    expect(heard).to.deep.equal([]);
  });

  it('do not touch another planner beside them', async () => {
    const one = await openRunning();
    const other = await openRunning('hours="5" race="5k 21:00"');
    const { running, text } = { running: other.running, text: other.text };
    await drive(one);
    await other.settled();
    expect([other.running, other.text]).to.deep.equal([running, text]);
  });

  it('are as they were when the planner is taken away and put back, without an error', async () => {
    const heard = await mishaps(async () => {
      const page = await openRunning();
      await drive(page);
      const { text, running } = page;
      page.element.remove();
      await aTimeout(100);
      document.body.append(page.element);
      await page.settled();
      expect([page.text, page.running]).to.deep.equal([text, running]);
      page.element.remove();
    });
    expect(heard).to.deep.equal([]);
  });

  it('leave no error where the planner is gone before the panel comes, or in the middle of an act', async () => {
    const heard = await mishaps(async () => {
      const early = document.createElement('weekwright-planner');
      early.setAttribute('panels', 'running');
      document.body.append(early);
      early.remove();
      const page = await openRunning();
      const done = page.chooseDistance('10 km');
      page.element.remove();
      await done;
      await aTimeout(300);
    });
    expect(heard).to.deep.equal([]);
  });

  it('without their panel ask for nothing of a runner', async () => {
    const page = await openRunning();
    page.element.panels = 'split';
    await page.settled();
    expect(page.root.querySelector('.running')?.checkVisibility() ?? false).to.equal(false);
  });

  it('come back as they were where the panel is shown again', async () => {
    const page = await openRunning();
    await page.chooseDistance('10 km');
    await page.typeIn('running-time', '45:00');
    const { panelText } = page;
    page.element.panels = 'split';
    await page.settled();
    page.element.panels = 'split running';
    await page.until(() => page.has('.running .lead'), 'the panel comes back');
    expect(page.panelText).to.equal(panelText);
  });
});

describe('paces and runs beside the what-if sheet', () => {
  it('put nothing of a runner into the link', async () => {
    const page = await openRunning(scene, 'split sheet running');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    const before = await copiedHash(page);
    await drive(page);
    expect(await copiedHash(page)).to.equal(before);
  });

  it('leave nothing to undo, and stay when another scenario is on show', async () => {
    const page = await openRunning(scene, 'split sheet running');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await drive(page);
    expect(page.tool('Undo').ariaDisabled).to.equal('true');
    const { wishes } = page.running;
    await page.add();
    await page.click(page.radio(1));
    await page.set(1, 'hours', 6);
    expect(page.running.wishes).to.deep.equal(wishes);
  });
});
