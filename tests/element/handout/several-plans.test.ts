import { expect } from '@open-wc/testing';
import { openHandout, type HandoutPage } from './handout-page.js';
import { choosesFile, fileText } from './files.js';

const plan = (name: string, hours: number) => ({
  name,
  kept: '2026-11-20',
  file: JSON.parse(
    fileText({ name }, { inputs: { hours, phase: 'peak', level: 'trained', event: '10k', strengthCap: 100 } }),
  ) as unknown,
});
const several = (...plans: readonly object[]): string =>
  JSON.stringify({ format: 'weekwright-kept', version: 1, plans });

const offered = (page: HandoutPage): string[] => page.texts('.handout > .kept li b');

describe('a file with several plans', () => {
  it('offers them, and opens the one that is chosen', async () => {
    const page = await openHandout();
    const { plan: before } = page.element;
    await choosesFile(page, several(plan('Anna', 5), plan('Ben <b>', 6)));
    await page.hearsBack('The file has several plans. Choose one.');
    expect([offered(page), page.element.plan]).to.deep.equal([['Anna', 'Ben <b>'], before]);
    await page.click(page.find('.handout > .kept [aria-label="Open “Ben <b>”"]'));
    await page.hearsBack('The plan from the file is open.');
    expect([page.element.plan?.inputs.hours, page.typedIn('handout-name').value]).to.deep.equal([6, 'Ben <b>']);
  });

  it('opens another of them after the first, and goes back from there', async () => {
    const page = await openHandout();
    await choosesFile(page, several(plan('Anna', 5), plan('Ben', 6)));
    await page.hearsBack('Choose one');
    await page.click(page.find('.handout > .kept [aria-label="Open “Anna”"]'));
    await page.hearsBack('The plan from the file is open.');
    await page.click(page.find('.handout > .kept [aria-label="Open “Ben”"]'));
    await page.until(() => page.element.plan?.inputs.hours === 6, 'the other is open');
    await page.pressesIn('Back to what was open before');
    await page.until(() => page.element.plan?.inputs.hours === 5, 'the first is back');
  });

  it('that is empty says so, and offers nothing', async () => {
    const page = await openHandout();
    await choosesFile(page, several());
    await page.hearsBack('There is no plan in the file.');
    expect(offered(page)).to.deep.equal([]);
  });

  it('that is faulty says why, and offers nothing', async () => {
    const page = await openHandout();
    await choosesFile(page, several({ name: 'Anna', kept: 3, file: {} }));
    await page.hearsBack('cannot be opened; nothing was changed');
    expect([page.message.includes('plans'), offered(page)]).to.deep.equal([true, []]);
  });

  it('has one that is faulty: the others can be opened', async () => {
    const page = await openHandout();
    await choosesFile(page, several({ name: 'Bad', kept: '2026-11-20', file: { format: 'x' } }, plan('Good', 6)));
    await page.hearsBack('Choose one');
    await page.click(page.find('.handout > .kept [aria-label="Open “Bad”"]'));
    await page.hearsBack('cannot be opened; nothing was changed');
    await page.click(page.find('.handout > .kept [aria-label="Open “Good”"]'));
    await page.hearsBack('The plan from the file is open.');
  });

  it('is forgotten when a file with one plan is opened', async () => {
    const page = await openHandout();
    await choosesFile(page, several(plan('Anna', 5), plan('Ben', 6)));
    await page.hearsBack('Choose one');
    await choosesFile(page, fileText());
    await page.hearsBack('The plan from the file is open.');
    expect(offered(page)).to.deep.equal([]);
  });

  it('cannot be kept where the page forbids it', async () => {
    const page = await openHandout('storage="none"', 'handout');
    await choosesFile(page, several(plan('Anna', 5), plan('Ben', 6)));
    await page.hearsBack('Choose one');
    expect(page.texts('.handout button').filter((text) => /Keep/.test(text))).to.deep.equal([]);
  });
});
