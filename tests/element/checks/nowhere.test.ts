import { expect, fixture } from '@open-wc/testing';
import { copiedHash } from '../copied-hash.js';
import { ChecksPage, openChecks, questions, scene, type Question } from './checks-page.js';

/** All that do not stop, so that there is a plan to look into. */
const harmless: readonly Question[] = ['known-disease', 'easy-only', 'pain', 'pregnant', 'recent-birth', 'low-energy'];

describe('the answers of a person', () => {
  it('are in no plan: neither in the property nor in what the page hears', async () => {
    const page = await (await openChecks()).opens('start');
    await page.typeIn('checks-age', '40');
    const before = JSON.stringify(page.element.plan);
    await page.ticks(...harmless);
    expect(JSON.stringify(page.element.plan)).to.equal(before);
    const heard = await page.heardOnce(() => page.typeIn('checks-age', '41'));
    const text = JSON.stringify(heard);
    for (const id of ['answers', 'screening-help', ...questions.filter((each) => each.includes('-'))])
      expect(text.includes(`"${id}"`), id).to.equal(false);
  });

  it('are the same nothing to a plan that a person who has answered nothing has', async () => {
    const page = await (await openChecks()).opens('start');
    const [plain] = [JSON.stringify(await page.heardOnce(() => page.drag('hours', 5)))];
    const other = await (await openChecks()).opens('start');
    await other.ticks(...harmless);
    expect(JSON.stringify(await other.heardOnce(() => other.drag('hours', 5)))).to.equal(plain);
  });

  it('are in no link', async () => {
    const page = await (await openChecks(scene, 'split sheet checks')).opens('start');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    const before = await copiedHash(page);
    await page.ticks(...harmless);
    expect(await copiedHash(page)).to.equal(before);
    await page.ticks('symptoms');
    expect([location.hash, location.search]).to.deep.equal(['', new URL(location.href).search]);
  });

  it('are in no attribute, property or storage, and in no address', async () => {
    const page = await (await openChecks()).opens('start');
    const { outerHTML } = page.element;
    const { href } = location;
    const stored = Object.keys(localStorage).length + Object.keys(sessionStorage).length;
    await page.ticks(...harmless, 'symptoms');
    expect([page.element.outerHTML, page.element.checks, location.href]).to.deep.equal([outerHTML, undefined, href]);
    expect(Object.keys(localStorage).length + Object.keys(sessionStorage).length).to.equal(stored);
    expect([stored, document.cookie, await indexedDB.databases(), await caches.keys()]).to.deep.equal([0, '', [], []]);
    expect(history.state).to.equal(null);
  });

  it('are gone with the element: another one knows nothing of them', async () => {
    const page = await (await openChecks()).opens('start');
    await page.ticks('symptoms');
    page.element.remove();
    const other = await (await openChecks()).opens('start');
    expect([other.answers, other.advice, other.element.plan !== null]).to.deep.equal([[], [], true]);
  });

  it('are of one planner only, and stop no other on the page', async () => {
    const one = await (await openChecks()).opens('start');
    const other = new ChecksPage(await fixture(`<weekwright-planner panels="split checks"></weekwright-planner>`));
    await other.until(() => other.has('.checks .panel-title'), 'the other comes');
    await one.ticks('symptoms');
    await other.settled();
    expect([one.element.plan, other.element.plan !== null, other.answers]).to.deep.equal([null, true, []]);
  });

  it('are read by no form around the planner', async () => {
    const form = await fixture<HTMLFormElement>(
      '<form><weekwright-planner panels="checks"></weekwright-planner></form>',
    );
    const element = form.querySelector('weekwright-planner');
    if (!element) throw new Error('there is no planner');
    const page = new ChecksPage(element);
    await page.until(() => page.has('.checks .panel-title'), 'the panel comes');
    await (await page.opens('start')).ticks('pregnant');
    expect([...new FormData(form).entries()]).to.deep.equal([]);
  });

  it('stay when the planner is taken away and put back, and while other scenarios are looked at', async () => {
    const page = await (await openChecks(scene, 'split sheet checks')).opens('start');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await page.ticks('pregnant');
    await page.add();
    await page.click(page.radio(1));
    expect(page.answers).to.deep.equal(['pregnant']);
    expect(page.tool('Undo').ariaDisabled).to.equal('false');
    await page.click(page.tool('Undo'));
    expect(page.answers).to.deep.equal(['pregnant']);
    const { parentNode } = page.element;
    page.element.remove();
    parentNode?.append(page.element);
    await page.settled();
    expect(page.answers).to.deep.equal(['pregnant']);
  });
});
