import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { accessibleControls } from '../accessibility-tree.js';
import { tabTo } from '../by-keys.js';
import { openStrength, scene } from './strength-page.js';

describe('by keys alone', () => {
  it('every control of strength is reached, in the order in which it stands', async () => {
    const page = await (await openStrength(scene, 'strength')).opensAll();
    const controls = page.all('.strength :is(button, select, input, summary)').filter((each) => each.checkVisibility());
    const [first] = controls;
    if (!first) throw new Error('there are no controls');
    expect(controls.length).to.be.greaterThan(50);
    await page.goTo(first);
    const reached: Element[] = [first];
    for (let press = 1; press < controls.length; press += 1) {
      await sendKeys({ press: 'Tab' });
      if (page.root.activeElement) reached.push(page.root.activeElement);
    }
    expect(reached.map((each) => controls.findIndex((control) => control === each))).to.deep.equal(
      controls.map((_, at) => at),
    );
  });

  for (const key of ['Enter', ' '])
    it(`a movement opens and closes by ${key}, and its form is next`, async () => {
      const page = await openStrength(scene, 'strength');
      await page.goTo(page.summaryOf('Goblet squat'));
      await page.press(key);
      await page.until(() => page.detailsOf('Goblet squat').querySelector('select') !== null, 'it opens');
      await page.press('Tab');
      expect(page.hasFocus(page.formsOf('Goblet squat'))).to.equal(true);
      // The form before it is one easier.
      await page.press('ArrowUp');
      expect(page.movements(0)).to.include('Squat');
      expect(page.hasFocus(page.formsOf('Squat'))).to.equal(true);
      await page.goTo(page.summaryOf('Squat'));
      await page.press(key);
      await page.until(() => page.detailsOf('Squat').querySelector('select') === null, 'it closes');
    });

  it('equipment is ticked by Space, and minutes go by arrows', async () => {
    const page = await openStrength(scene, 'strength');
    await page.goTo(page.equipment('a barbell'));
    await page.press(' ');
    expect(page.movements(0)).to.include('Squat with a barbell');
    expect(page.hasFocus(page.equipment('a barbell'))).to.equal(true);
    await page.goTo(page.sliderOf('strength-minutes'));
    await page.press('ArrowLeft');
    expect(page.strength.wishes.minutes).to.equal(30);
  });

  it('shows where it is: every control has an outline', async () => {
    const page = await (await openStrength(scene, 'strength')).opensAll();
    for (const selector of ['input[type="checkbox"]', 'input[type="range"]', '.typed.text', 'select', 'summary']) {
      const control = page.find(`.strength ${selector}`);
      await tabTo(page, control);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      expect(outlineStyle, selector).to.not.equal('none');
      expect(Number.parseFloat(outlineWidth), selector).to.be.at.least(2);
    }
  });
});

describe('what a screen reader is given of strength', () => {
  it('is a name for every control, and groups for what belongs together', async () => {
    const page = await (await openStrength(scene, 'strength')).opensAll();
    const controls = await accessibleControls();
    expect(controls.length).to.be.greaterThan(30);
    expect(controls.filter(({ name }) => name.trim() === '')).to.deep.equal([]);
    const legends = page.texts('.strength legend');
    expect(legends).to.include.members(['There is', 'Goblet squat', 'Hip hinge with dumbbells']);
    expect(new Set(legends).size).to.equal(legends.length);
  });

  it('has headings in order, ids that stand once, and a place for what is told before anything is told', async () => {
    const page = await (await openStrength(scene, 'strength')).opensAll();
    expect(page.all('.strength :is(h1, h2, h3, h4, h5)').map(({ tagName }) => tagName)).to.deep.equal([
      ...['H3', 'H4', 'H4'],
    ]);
    const ids = page.all('[id]').map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) < index)).to.deep.equal([]);
    expect([page.all('.strength > [role="status"]').length, page.told]).to.deep.equal([1, '']);
  });
});
