import { expect } from '@open-wc/testing';
import { openHandout, scene, type HandoutPage } from './handout-page.js';

/** The databases of this page's origin that are the planner's. */
const databases = async (): Promise<string[]> =>
  (await indexedDB.databases()).flatMap(({ name }) => (name?.startsWith('weekwright') ? [name] : []));

const forget = (): Promise<void> =>
  new Promise((resolve) => {
    const request = indexedDB.deleteDatabase('weekwright');
    request.addEventListener('success', () => {
      resolve();
    });
  });

const status = (page: HandoutPage): string => page.textOf('.handout-keep [role="status"]');
const kept = (page: HandoutPage): string[] => page.texts('.handout-keep .kept li b');

async function openBox(attributes = scene): Promise<HandoutPage> {
  const page = await openHandout(attributes);
  await page.opensBox('keep');
  return page.until(() => !page.textOf('.handout-keep').includes('Looking what is kept'), 'it is known what is kept');
}

async function keeps(page: HandoutPage, name: string): Promise<HandoutPage> {
  await page.paste('handout-name', name);
  await page.pressesIn(`Keep “${name}”`);
  return page.until(() => kept(page).includes(name) && status(page) !== '', `${name} is kept`);
}

beforeEach(forget);
after(forget);

describe('plans on this device', () => {
  it('are none, and there is no database, before somebody keeps one', async () => {
    const page = await openBox();
    expect(page.textOf('.handout-keep')).to.contain('Nothing is kept on this device.');
    expect(page.textOf('.shared-computer')).to.match(/^On a computer that others use, keep nothing/);
    expect(await databases()).to.deep.equal([]);
  });

  it('need a name', async () => {
    const page = await openBox();
    await page.pressesIn('Keep this plan');
    await page.until(() => status(page) !== '', 'that is told');
    expect(status(page)).to.equal('Give the plan a name first.');
    expect(await databases()).to.deep.equal([]);
  });

  it('are listed by name, opened, replaced and taken out; with the last one the database goes', async () => {
    const page = await keeps(await openBox(), 'Spring');
    expect(status(page)).to.equal('“Spring” is kept on this device.');
    page.element.hours = 6;
    await page.settled();
    await keeps(page, 'Autumn');
    expect(kept(page)).to.deep.equal(['Autumn', 'Spring']);
    await page.click(page.find('.kept button[aria-label="Open “Spring”"]'));
    await page.until(() => page.element.plan?.inputs.hours === 4, 'Spring is open');
    expect(page.typedIn('handout-name').value).to.equal('Spring');
    await page.pressesIn('Keep “Spring”');
    await page.until(() => status(page).includes('in place of'), 'it is replaced');
    expect(kept(page)).to.deep.equal(['Autumn', 'Spring']);
    for (const name of ['Spring', 'Autumn']) {
      await page.click(page.find(`.kept button[aria-label="Take out “${name}”"]`));
      await page.until(() => !kept(page).includes(name), `${name} is gone`);
    }
    expect(await databases()).to.deep.equal([]);
  });

  it('are there for another planner of the site, until all is wiped', async () => {
    await keeps(await openBox(), 'Spring');
    const page = await openBox();
    expect(kept(page)).to.deep.equal(['Spring']);
    await page.pressesIn('Wipe all');
    expect(await databases(), 'asked once more').to.deep.equal(['weekwright']);
    await page.pressesIn('Leave them');
    expect(kept(page)).to.deep.equal(['Spring']);
    await page.pressesIn('Wipe all');
    await page.pressesIn('Yes, wipe the plan');
    await page.until(() => status(page).startsWith('Everything is wiped'), 'all is wiped');
    expect([kept(page), await databases()]).to.deep.equal([[], []]);
  });

  it('are put back after they were taken out, or replaced, until the next act', async () => {
    const page = await keeps(await openBox(), 'Spring');
    expect(page.has('.put-back')).to.equal(false);
    await page.click(page.find('.kept button[aria-label="Take out “Spring”"]'));
    await page.until(() => kept(page).length === 0 && page.has('.put-back'), 'it is out');
    expect(page.root.activeElement?.id, 'its button is gone').to.equal('handout-title');
    await page.click(page.find('.put-back'));
    await page.until(() => kept(page).includes('Spring'), 'it is back');
    expect(status(page)).to.equal('What was kept before is there again.');
    expect([page.has('.put-back'), page.root.activeElement?.id]).to.deep.equal([false, 'handout-title']);

    page.element.hours = 6;
    await page.settled();
    await page.pressesIn('Keep “Spring”');
    await page.until(() => page.has('.put-back'), 'it is replaced');
    await page.click(page.find('.put-back'));
    await page.until(() => !page.has('.put-back'), 'it is as it was');
    await page.click(page.find('.kept button[aria-label="Open “Spring”"]'));
    await page.until(() => page.element.plan?.inputs.hours === 4, 'with the hours of before');

    await page.pressesIn('Keep “Spring”');
    await page.until(() => page.has('.put-back'), 'it is replaced again');
    await page.pressesIn('Wipe all');
    await page.pressesIn('Yes, wipe the plan');
    await page.until(() => status(page).startsWith('Everything is wiped'), 'all is wiped');
    expect(page.has('.put-back'), 'what was wiped stays wiped').to.equal(false);
  });

  it('are kept and found where a browser has no list of its databases', async () => {
    const has = Object.getOwnPropertyDescriptor(IDBFactory.prototype, 'databases');
    if (!has) throw new Error('there is no list to take away');
    Reflect.deleteProperty(IDBFactory.prototype, 'databases');
    try {
      const page = await openBox();
      expect(page.textOf('.handout-keep')).to.contain('Nothing is kept on this device.');
      await keeps(page, 'Spring');
      expect(kept(await openBox())).to.deep.equal(['Spring']);
    } finally {
      Object.defineProperty(IDBFactory.prototype, 'databases', has);
    }
  });

  it('are none where the browser forbids it, which is told', async () => {
    const page = await openBox();
    const open = indexedDB.open.bind(indexedDB);
    indexedDB.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    try {
      await page.paste('handout-name', 'Spring');
      await page.pressesIn('Keep “Spring”');
      await page.until(() => status(page) !== '', 'that is told');
    } finally {
      indexedDB.open = open;
    }
    expect(status(page)).to.match(/^The browser, or the page around this one, does not let plans be kept/);
  });
});

describe('a page that says `storage="none"`', () => {
  it('lets nothing be kept', async () => {
    const page = await openHandout(`${scene} storage="none"`);
    await page.until(() => !page.has('.handout-keep'), 'there is no such box');
    expect(page.panelText).to.not.contain('Keep');
    expect(page.element.problems).to.deep.equal([]);
  });

  it('or something else, is told what it may say', async () => {
    const page = await openHandout(`${scene} storage="never"`);
    const problem = { path: 'storage', value: 'never', code: 'not-one-of', allowed: { choices: ['ask', 'none'] } };
    await page.until(() => page.element.problems.length > 0, 'the problem is told');
    expect(page.element.problems).to.deep.equal([problem]);
  });
});
