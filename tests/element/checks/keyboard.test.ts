import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { accessibleControls } from '../accessibility-tree.js';
import { tabTo } from '../by-keys.js';
import { openChecks, scene } from './checks-page.js';

describe('by keys alone', () => {
  it('every control of checks is reached, in the order in which it stands', async () => {
    const page = await (await openChecks(scene, 'checks')).opensAll();
    const controls = page
      .all('.checks :is(button, select, input, textarea, summary, [tabindex="0"])')
      .filter((each) => each.checkVisibility());
    const [first] = controls;
    if (!first) throw new Error('there are no controls');
    // Nine questions, three fields, five efforts, the weeks, a button, four boxes and the checks.
    const others = controls.filter((each) => !each.matches('.scroll'));
    expect(others.length).to.equal(9 + 3 + 5 + 1 + 1 + 4 + page.ids.length);
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

  it('the boxes open and close', async () => {
    const page = await openChecks(scene, 'checks');
    for (const name of ['start', 'load', 'own'] as const)
      for (const key of ['Enter', ' ']) {
        const box = page.find<HTMLDetailsElement>(`.checks-${name}`);
        await page.goTo(page.find(`.checks-${name} > summary`));
        await page.press(key);
        expect(box.open, `${name} ${key}`).to.equal(true);
        await page.press(key);
        expect(box.open, `${name} ${key}`).to.equal(false);
      }
  });

  it('the loads of weeks are typed in lines, and taken on leaving the field', async () => {
    const page = await (await openChecks(scene, 'checks')).opens('own');
    await page.goTo(page.weeks);
    await sendKeys({ type: '900' });
    await sendKeys({ press: 'Enter' });
    await sendKeys({ type: '1100' });
    await page.heardOnce(() => page.press('Tab'));
    expect([page.weeks.value, page.load.own.load]).to.deep.equal(['900\n1100', 1000]);
  });

  it('shows where it is: every control has an outline', async () => {
    const page = await (await openChecks(scene, 'checks')).opensAll();
    for (const selector of ['input[type="checkbox"]', '.typed.text', 'textarea', 'button.act', '.check > summary']) {
      const control = page.find(`.checks ${selector}`);
      await tabTo(page, control);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      expect(outlineStyle, selector).to.not.equal('none');
      expect(Number.parseFloat(outlineWidth), selector).to.be.at.least(2);
    }
  });
});

describe('what a screen reader is given of checks', () => {
  it('is a name for every control, and a group for the questions', async () => {
    const page = await (await openChecks(scene, 'checks')).opensAll();
    const controls = await accessibleControls();
    expect(controls.length).to.be.at.least(19);
    expect(controls.filter(({ name }) => name.trim() === '')).to.deep.equal([]);
    expect(page.texts('.checks fieldset > legend')).to.have.length(1);
    expect(controls.some(({ role, name }) => role === 'checkbox' && name === 'Pregnant')).to.equal(true);
  });

  it('has headings in order, ids that stand once, and a place for what is told before anything is told', async () => {
    const page = await (await openChecks(scene, 'checks')).opensAll();
    const levels = page.all('.checks :is(h1, h2, h3, h4, h5)').map(({ tagName }) => Number(tagName.slice(1)));
    expect(levels[0]).to.equal(3);
    for (const [index, level] of levels.entries())
      if (index > 0) expect(level - (levels[index - 1] ?? 0)).to.be.at.most(1);
    const ids = page.all('[id]').map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) < index)).to.deep.equal([]);
    expect([page.all('.checks > [role="status"]').length, page.told]).to.deep.equal([1, '']);
  });

  it('has headings over numbers that are no headings of rows without a name', async () => {
    const page = await (await openChecks(scene, 'checks')).opens('load');
    expect(page.all('.checks-load :is(thead th:not([scope="col"]), tbody th:not([scope="row"]))')).to.deep.equal([]);
  });
});
