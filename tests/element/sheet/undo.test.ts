import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

const open = (): Promise<SheetPage> => openSheet('hours="4" phase="base"');
const undo = (page: SheetPage): Promise<SheetPage> => page.click(page.tool('Undo'));
const redo = (page: SheetPage): Promise<SheetPage> => page.click(page.tool('Redo'));
const hours = (page: SheetPage): number => page.input(0, 'hours').valueAsNumber;
const can = (page: SheetPage): boolean[] => ['Undo', 'Redo'].map((name) => page.tool(name).ariaDisabled === 'false');

describe('taking back', () => {
  it('is not possible at first, nor doing again', async () => {
    const page = await open();
    expect(can(page)).to.deep.equal([false, false]);
    await undo(page);
    expect(hours(page)).to.equal(4);
  });

  it('one drag of a slider is one step', async () => {
    const page = await open();
    const slider = page.input(0, 'hours');
    await page.slide(slider, 4.25, 4.5, 5, 5.5, 6);
    await page.letGo(slider);
    await page.slide(slider, 6.25, 7);
    await page.letGo(slider);
    await undo(page);
    expect(hours(page)).to.equal(6);
    await undo(page);
    expect(hours(page)).to.equal(4);
    expect(can(page)).to.deep.equal([false, true]);
    await redo(page);
    expect(hours(page)).to.equal(6);
    await redo(page);
    expect(hours(page)).to.equal(7);
  });

  it('one drag in the split panel is one step too', async () => {
    const page = await open();
    const slider = page.slider('hours');
    await page.slide(slider, 5, 6, 7);
    await page.letGo(slider);
    await undo(page);
    expect([hours(page), slider.valueAsNumber]).to.deep.equal([4, 4]);
    expect(page.headline).to.match(/^Four hours/);
  });

  it('is heard by the page', async () => {
    const page = await open();
    await page.set(0, 'hours', 6);
    const events = await page.heard(() => undo(page));
    expect(events.map(({ detail }) => detail.inputs.hours)).to.deep.equal([4]);
    expect(page.element.hours).to.equal(4);
  });

  it('after something new has nothing to do again', async () => {
    const page = await open();
    await page.set(0, 'hours', 6);
    await undo(page);
    await page.set(0, 'hours', 5);
    expect(can(page)).to.deep.equal([true, false]);
  });

  it('of everything gives the first state back, and of all that again the last', async () => {
    const page = await open();
    const state = (): string => `${collapsed(page.find('.grid'))} ${String(page.reference)}`;
    const states = [state()];
    const acts: readonly (() => Promise<unknown>)[] = [
      () => page.add(),
      () => page.set(1, 'hours', 8),
      () => page.rename(1, 'Good week'),
      () => page.override('strength_minutes', 1, '100'),
      () => page.chooseFromMenu(1, 'Compare the others with this'),
      () => page.chooseFromMenu(0, 'Copy'),
      () => page.chooseFromMenu(2, 'Move to the front'),
      () => page.set(2, 'phase', 4),
      () => page.chooseFromMenu(0, 'Remove'),
    ];
    for (const act of acts) {
      await act();
      states.push(state());
    }
    expect(new Set(states), 'every act can be seen').to.have.length(states.length);
    for (const before of states.slice(0, -1).reverse()) {
      await undo(page);
      expect(state()).to.equal(before);
    }
    expect(can(page)).to.deep.equal([false, true]);
    for (const after of states.slice(1)) {
      await redo(page);
      expect(state()).to.equal(after);
    }
    expect(can(page)).to.deep.equal([true, false]);
    expect(page.scenarios).to.deep.equal(['Good week', '4 h, taper']);
    expect(page.shown('strength_minutes', 0).said).to.equal(', set by hand');
  });
});

describe('the keys for it', () => {
  const ways = [
    [['Control'], 'z', ['Control', 'Shift'], 'z'],
    [['Control'], 'z', ['Control'], 'y'],
    [['Meta'], 'z', ['Meta', 'Shift'], 'z'],
  ] as const;
  for (const [back, backKey, again, againKey] of ways)
    it(`${back.join('+')}+${backKey}, ${again.join('+')}+${againKey} work on the grid`, async () => {
      const page = await open();
      await page.set(0, 'hours', 6);
      await page.goTo(page.cell('strength_minutes'));
      await page.pressWith(back, backKey);
      expect(hours(page)).to.equal(4);
      expect(page.focus).to.equal('strength_minutes a');
      await page.pressWith(again, againKey);
      expect(hours(page)).to.equal(6);
      expect(page.detail).to.equal(null);
    });

  it('work on a slider and on a button', async () => {
    const page = await open();
    await page.set(0, 'hours', 6);
    page.input(0, 'hours').focus();
    await page.pressWith(['Control'], 'z');
    expect(hours(page)).to.equal(4);
    page.tool('Copy link').focus();
    await page.pressWith(['Control'], 'y');
    expect(hours(page)).to.equal(6);
  });

  it('belong to the text in a text field', async () => {
    const page = await open();
    await page.set(0, 'hours', 6);
    await page.open(page.cell('strength_minutes'));
    await page.fill(page.formula, '100');
    await page.pressWith(['Control'], 'z');
    expect(hours(page)).to.equal(6);
    await page.press('Escape');
    page.nameField(0).focus();
    await page.pressWith(['Control'], 'z');
    expect(hours(page)).to.equal(6);
  });
});
