import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { accessibleControls, accessibleNodes } from '../accessibility-tree.js';
import { tabTo } from '../by-keys.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const openAll = async (): Promise<RunningPage> =>
  (await openRunning(`${scene} race="10k 45:00"`, 'running')).opensAll();

describe('by keys alone', () => {
  it('every control is reached, in the order in which it stands', async () => {
    const page = await openAll();
    const controls = page
      .all('.running :is(select, input, summary, [tabindex="0"])')
      .filter((each) => each.checkVisibility());
    const [first] = controls;
    if (!first) throw new Error('there are no controls');
    await page.goTo(first);
    const reached: Element[] = [first];
    for (let press = 0; press < controls.length + 6; press += 1) {
      await sendKeys({ press: 'Tab' });
      const now = page.root.activeElement;
      if (!now) break;
      // The browser's own field for dates has several stops.
      if (now !== reached.at(-1)) reached.push(now);
    }
    expect(reached.slice(0, controls.length)).to.deep.equal(controls);
  });

  it('a race is told: a distance from the list, a time, and there is a pace', async () => {
    const page = await openRunning(scene, 'running');
    await page.goTo(page.selectOf('running-distance'));
    // No race, 1,500 m, mile, 3 km, 5 km.
    await page.press('ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowDown');
    await page.press('Tab');
    expect(page.hasFocus(page.typedIn('running-time'))).to.equal(true);
    await sendKeys({ type: '21:00' });
    await page.press('Tab');
    expect(page.running.wishes.race).to.include({ metres: 5000, seconds: 1260 });
    expect(page.paceOf('slow')).to.match(/^\d:\d\d–\d:\d\d a kilometre$/);
    expect(page.root.activeElement).to.not.equal(null);
  });

  for (const key of ['Enter', ' '])
    it(`a box opens and closes by ${key}`, async () => {
      const page = await openRunning(scene, 'running');
      await page.goTo(page.find('.running-heart > summary'));
      await page.press(key);
      await page.until(() => page.has('#running-age'), 'the box opens');
      await page.press(key);
      await page.until(() => !page.has('#running-age'), 'the box closes');
      expect(page.hasFocus(page.find('.running-heart > summary'))).to.equal(true);
    });

  it('shows where it is: every control has an outline', async () => {
    const page = await openAll();
    for (const selector of ['.typed.text', '.typed.date', 'select', 'summary', '.scroll']) {
      const control = page.find(`.running ${selector}`);
      await tabTo(page, control);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      expect(outlineStyle, selector).to.not.equal('none');
      expect(Number.parseFloat(outlineWidth), selector).to.be.at.least(2);
    }
  });
});

describe('what a screen reader is given of paces and runs', () => {
  it('is a name of its own for every control', async () => {
    await openAll();
    const names = (await accessibleControls()).map(({ name }) => name.trim());
    expect(names.length).to.be.at.least(9);
    expect(names).to.not.include('');
    expect(names.filter((name, index) => names.indexOf(name) < index)).to.deep.equal([]);
  });

  it('are the names of the screen', async () => {
    const page = await openAll();
    const names = (await accessibleNodes(/^(?:combobox|textbox|date)$/)).map(({ name }) => name);
    expect(names).to.include.members([
      ...['Recent race', 'Its time', 'Or the threshold pace', 'Distances in', 'Age', 'Resting heart rate'],
    ]);
    expect(page.all('.running label').length).to.equal(page.all('.running :is(input, select)').length);
  });

  it('has headings in order, ids that stand once, and a place for what is told before anything is told', async () => {
    const page = await openAll();
    expect(page.all('.running :is(h1, h2, h3, h4, h5)').map(({ tagName }) => tagName)).to.deep.equal(['H3', 'H4']);
    const ids = page.all('[id]').map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) < index)).to.deep.equal([]);
    expect([page.all('.running > [role="status"]').length, page.told]).to.deep.equal([1, '']);
  });
});
