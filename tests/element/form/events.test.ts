import { expect } from '@open-wc/testing';
import { openForm, type FormPage } from './form-page.js';

const watched = ['input', 'change', 'plan-change'];

/** What somebody who listens on the page hears while something is done. */
async function heard(page: FormPage, act: () => Promise<unknown>): Promise<string[]> {
  const names: string[] = [];
  const note = ({ type, target }: Event): void => {
    names.push(target === page.element ? type : `${type} of something else`);
  };
  for (const name of watched) document.addEventListener(name, note);
  try {
    await act();
    await page.settled();
  } finally {
    for (const name of watched) document.removeEventListener(name, note);
  }
  return names;
}

const release = (slider: HTMLElement): boolean => slider.dispatchEvent(new Event('change', { bubbles: true }));

describe('a form with a planner hears', () => {
  for (const [name, act] of Object.entries<(page: FormPage) => Promise<unknown>>({
    'a choice from a list': (page) => page.choose(page.list('event'), 1),
    'a typed value': (page) => page.type('hours', '7.5'),
    'a step button': (page) => page.click(page.stepButton('strengthCap', 'less')),
    'sessions picked': (page) => page.choose(page.sessionList('strength'), 1),
  }))
    it(`input and change once each: ${name}`, async () => {
      const page = await openForm();
      const names = await heard(page, () => act(page));
      expect(names.toSorted()).to.deep.equal(['change', 'input', 'plan-change']);
      expect(names.indexOf('input')).to.be.below(names.indexOf('change'));
    });

  it('input with every move of a slider, and change when it is let go', async () => {
    const page = await openForm();
    const moves = await heard(page, async () => {
      for (const hours of [5, 6, 7]) await page.drag('hours', hours);
    });
    expect(moves.toSorted()).to.deep.equal(['input', 'input', 'input', ...Array<string>(3).fill('plan-change')]);
    expect(await heard(page, () => Promise.resolve(release(page.slider('hours'))))).to.deep.equal(['change']);
    expect(await heard(page, () => Promise.resolve(release(page.slider('hours'))))).to.deep.equal([]);
  });

  it('what a button does after a slider was let go', async () => {
    const page = await openForm();
    await page.drag('hours', 6);
    release(page.slider('hours'));
    await page.settled();
    const names = await heard(page, () => page.click(page.stepButton('hours', 'more')));
    expect(names.toSorted()).to.deep.equal(['change', 'input', 'plan-change']);
  });

  it('finds the plan in the form with each of them', async () => {
    const page = await openForm();
    const entries: boolean[] = [];
    const note = (): void => {
      entries.push(page.entry === JSON.stringify(page.element.plan));
    };
    for (const name of watched) page.form.addEventListener(name, note);
    await page.choose(page.list('event'), 1);
    expect(entries).to.deep.equal([true, true, true]);
  });

  it('nothing of what the page does, of a reset, and of a text that is no value', async () => {
    const page = await openForm();
    const names = await heard(page, async () => {
      page.element.hours = 9;
      await page.settled();
      await page.sets(page.element.value);
      await page.resets();
      await page.type('hours', 'many');
    });
    expect(names).to.deep.equal([]);
  });
});
