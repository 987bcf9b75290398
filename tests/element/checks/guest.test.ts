import { aTimeout, expect } from '@open-wc/testing';
import { copiedHash } from '../copied-hash.js';
import { mishaps } from '../mishaps.js';
import { openPlanner, shownPlan } from '../planner-page.js';
import { openChecks, scene, type ChecksPage } from './checks-page.js';

/** All that a person does with checks. */
async function drive(page: ChecksPage): Promise<void> {
  await page.typeIn('checks-age', '67');
  await page.typeIn('checks-hours', '3');
  await page.typeIn('checks-run', 'far');
  await page.opensAll();
  await page.tellWeeks('900\n1 2 3');
  await page.tellWeeks('900');
  await page.typeIn('checks-effort-slow', '4');
  await page.ticks('pregnant', 'symptoms');
  await page.ticks('symptoms');
}

describe('checks on a page', () => {
  it('ask the network for nothing but our own parts, keep nothing, and ask for no part twice', async () => {
    const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);
    await drive(await openChecks());
    await aTimeout(300);
    const before = new Set(asked());
    await drive(await openChecks());
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
    await drive(await openChecks());
    for (const type of types) document.removeEventListener(type, note);
    expect(heard).to.deep.equal([]);
  });

  it('fire a plan with its checks and its load for each act that tells something new', async () => {
    const page = await openChecks();
    const events = await page.heard(() => drive(page));
    // The age, the hours, the weeks and the effort; what cannot be read and answers tell nothing.
    expect(events).to.have.length(4);
    for (const { detail } of events) {
      expect(detail.checks?.length).to.be.greaterThan(10);
      expect(detail.load?.week).to.be.greaterThan(0);
      expect(structuredClone(detail)).to.deep.equal(detail);
    }
  });

  it('are in the plan that the page hears of whatever is changed', async () => {
    const page = await openChecks();
    const plan = await page.heardOnce(() => page.drag('hours', 7));
    expect(plan.checks?.map(({ id }) => id)).to.include('strength-cap');
  });

  it('are no part of a plan where the page does not show them', async () => {
    const page = await openChecks(scene, 'checks');
    expect(page.element.plan?.checks.length).to.be.greaterThan(10);
    const { load, checks } = shownPlan(await openPlanner(scene));
    expect([load, checks]).to.deep.equal([null, []]);
  });

  it('do not touch another planner beside them', async () => {
    const one = await openChecks();
    const other = await openChecks('hours="5"');
    const { load, text } = other;
    await drive(one);
    await other.settled();
    expect([other.load, other.text]).to.deep.equal([load, text]);
  });

  it('are as they were when the planner is taken away and put back, without an error', async () => {
    const heard = await mishaps(async () => {
      const page = await openChecks();
      await drive(page);
      const { text, load } = page;
      page.element.remove();
      await aTimeout(100);
      document.body.append(page.element);
      await page.settled();
      expect([page.text, page.load]).to.deep.equal([text, load]);
      page.element.remove();
    });
    expect(heard).to.deep.equal([]);
  });

  it('leave no error where the planner is gone before the panel comes, or in the middle of an act', async () => {
    const heard = await mishaps(async () => {
      const early = document.createElement('weekwright-planner');
      early.setAttribute('panels', 'checks basis');
      document.body.append(early);
      early.remove();
      const page = await (await openChecks()).opens('start');
      const done = page.ticks('symptoms');
      page.element.remove();
      await done;
      await aTimeout(300);
    });
    expect(heard).to.deep.equal([]);
  });

  it('come back as they were where the panel is shown again', async () => {
    const page = await openChecks();
    await drive(page);
    const { panelText } = page;
    page.element.panels = 'split';
    await page.settled();
    expect(page.has('.checks')).to.equal(false);
    page.element.panels = 'split checks';
    await page.until(() => page.has('.checks .lead'), 'the panel comes back');
    expect(page.panelText).to.equal(panelText);
  });
});

describe('checks beside the what-if sheet', () => {
  it('put nothing of what is told into the link', async () => {
    const page = await openChecks(scene, 'split sheet checks');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    const before = await copiedHash(page);
    await drive(page);
    await page.until(() => page.has('.toolbar'), 'the sheet comes back');
    expect(await copiedHash(page)).to.equal(before);
  });

  it('leave nothing to undo, and hold whatever scenario is on show', async () => {
    const page = await openChecks(scene, 'split sheet checks');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await drive(page);
    await page.until(() => page.has('.toolbar'), 'the sheet comes back');
    expect(page.tool('Undo').ariaDisabled).to.equal('true');
    await page.add();
    await page.click(page.radio(1));
    await page.set(1, 'hours', 8);
    expect(page.ids).to.include.members(['balance-days', 'strength-cap']);
    await page.click(page.radio(0));
    expect(page.ids).to.include('balance-days').and.to.not.include('strength-cap');
  });
});
