import { aTimeout, expect } from '@open-wc/testing';
import { copiedHash } from '../copied-hash.js';
import { mishaps } from '../mishaps.js';
import { openStrength, scene, type StrengthPage } from './strength-page.js';

/** All that a person does with strength. */
async function drive(page: StrengthPage): Promise<void> {
  await page.ticks('a barbell');
  await page.dragTo('strength-minutes', 45);
  await page.opensMovement('Squat with a barbell');
  await page.chooseText(page.formsOf('Squat with a barbell'), 'Goblet squat');
  await page.opens('lifted');
  await page.typeIn('strength-goblet-squat-kilograms', '40');
  await page.typeIn('strength-goblet-squat-repetitions', '5');
  await page.typeIn('strength-age', 'old');
}

describe('strength on a page', () => {
  it('asks the network for nothing but our own parts, keeps nothing, and asks for no part twice', async () => {
    const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);
    await drive(await openStrength());
    await aTimeout(300);
    const before = new Set(asked());
    await drive(await openStrength());
    await aTimeout(300);
    for (const url of asked()) expect(new URL(url).origin).to.equal(location.origin);
    expect(asked().filter((url) => !before.has(url))).to.deep.equal([]);
    expect([localStorage.length, sessionStorage.length, document.cookie, location.hash]).to.deep.equal([0, 0, '', '']);
  });

  it('lets no event of its inputs out', async () => {
    const heard: string[] = [];
    const note = ({ type }: Event): number => heard.push(type);
    const types = ['input', 'change', 'toggle', 'beforetoggle'];
    for (const type of types) document.addEventListener(type, note);
    await drive(await openStrength());
    for (const type of types) document.removeEventListener(type, note);
    expect(heard).to.deep.equal([]);
  });

  it('does not touch another planner beside it', async () => {
    const one = await openStrength();
    const other = await openStrength('hours="5" equipment="none"');
    const { strength, text } = { strength: other.strength, text: other.text };
    await drive(one);
    await other.settled();
    expect([other.strength, other.text]).to.deep.equal([strength, text]);
  });

  it('is as it was when the planner is taken away and put back, without an error', async () => {
    const heard = await mishaps(async () => {
      const page = await openStrength();
      await drive(page);
      const { text, strength } = page;
      page.element.remove();
      await aTimeout(100);
      document.body.append(page.element);
      await page.settled();
      expect([page.text, page.strength]).to.deep.equal([text, strength]);
      page.element.remove();
    });
    expect(heard).to.deep.equal([]);
  });

  it('leaves no error where the planner is gone before the panel comes, or in the middle of an act', async () => {
    const heard = await mishaps(async () => {
      const early = document.createElement('weekwright-planner');
      early.setAttribute('panels', 'strength');
      document.body.append(early);
      early.remove();
      const page = await openStrength();
      const done = page.ticks('a barbell');
      page.element.remove();
      await done;
      await aTimeout(300);
    });
    expect(heard).to.deep.equal([]);
  });

  it('without its panel is not there', async () => {
    const page = await openStrength();
    page.element.panels = 'split';
    await page.settled();
    expect(page.root.querySelector('.strength')?.checkVisibility() ?? false).to.equal(false);
  });

  it('comes back as it was where the panel is shown again', async () => {
    const page = await openStrength();
    await page.ticks('a barbell');
    await page.dragTo('strength-minutes', 45);
    const { panelText } = page;
    page.element.panels = 'split';
    await page.settled();
    page.element.panels = 'split strength';
    await page.until(() => page.has('.strength .lead'), 'the panel comes back');
    expect(page.panelText).to.equal(panelText);
  });
});

describe('strength beside the what-if sheet', () => {
  it('puts nothing of its wishes into the link', async () => {
    const page = await openStrength(scene, 'split sheet strength');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    const before = await copiedHash(page);
    await drive(page);
    expect(await copiedHash(page)).to.equal(before);
  });

  it('leaves nothing to undo, and stays when another scenario is on show', async () => {
    const page = await openStrength(scene, 'split sheet strength');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await drive(page);
    expect(page.tool('Undo').ariaDisabled).to.equal('true');
    const { wishes } = page.strength;
    await page.add();
    await page.click(page.radio(1));
    await page.set(1, 'hours', 6);
    expect(page.strength.wishes).to.deep.equal(wishes);
  });
});
