import { expect } from '@open-wc/testing';
import { shownPlan } from '../planner-page.js';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

const open = (): Promise<SheetPage> => openSheet('hours="4" phase="base"');

describe('adding a scenario', () => {
  it('copies the one on show, behind it, and puts the copy on show', async () => {
    const page = await open();
    await page.set(0, 'hours', 5);
    await page.add();
    await page.set(1, 'hours', 6);
    page.radio(0).click();
    await page.settled();
    await page.add();
    expect(page.scenarios).to.deep.equal(['5 h, base', '5 h, base', '6 h, base']);
    expect(page.onShow).to.equal(1);
  });

  it('is possible until there are six; then the button says that it is not, and does nothing', async () => {
    const page = await open();
    await page.add(4);
    expect(page.tool('Add a scenario').ariaDisabled).to.equal('false');
    await page.add();
    expect(page.scenarios).to.have.length(6);
    expect(page.tool('Add a scenario').ariaDisabled).to.equal('true');
    await page.add();
    expect(page.scenarios).to.have.length(6);
  });

  it('past six tells why nothing happens', async () => {
    const page = await open();
    await page.add(6);
    expect(collapsed(page.find('.sheet'))).to.include('6 scenarios at most');
  });

  it('by the menu copies that column', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    await page.chooseFromMenu(0, 'Copy');
    expect(page.scenarios).to.deep.equal(['4 h, base', '4 h, base', '6 h, base']);
  });
});

describe('a scenario', () => {
  it('is called by its hours and phase until it has a name, everywhere', async () => {
    const page = await open();
    await page.rename(0, 'Bad week');
    expect(page.scenarios).to.deep.equal(['Bad week']);
    expect(page.menu(0).ariaLabel).to.equal('Bad week: more');
    await page.set(0, 'hours', 5);
    expect(page.scenarios).to.deep.equal(['Bad week']);
    await page.rename(0, '');
    expect(page.scenarios).to.deep.equal(['5 h, base']);
  });

  it('moves to the front and to the back, with all its numbers', async () => {
    const page = await open();
    await page.add(2);
    await page.set(1, 'hours', 5);
    await page.set(2, 'hours', 6);
    await page.chooseFromMenu(2, 'Move to the front');
    expect(page.scenarios).to.deep.equal(['4 h, base', '6 h, base', '5 h, base']);
    // 30 % of the minutes, by the table of common practice.
    expect(page.across('strength_minutes')).to.deep.equal(['72', '108', '90']);
    await page.chooseFromMenu(0, 'Move to the back');
    expect(page.scenarios).to.deep.equal(['6 h, base', '4 h, base', '5 h, base']);
    expect(page.reference).to.equal(1);
  });

  it('at an end is not offered to move further, and the only one not to be removed', async () => {
    const page = await open();
    const items = (column: number): string[] => page.texts(`.inputs-table th:nth-of-type(${column + 2}) .items button`);
    expect(items(0)).to.deep.equal(['Copy']);
    await page.add();
    expect(items(0)).to.deep.equal(['Copy', 'Move to the back', 'Remove']);
    expect(items(1)).to.deep.equal(['Compare the others with this', 'Copy', 'Move to the front', 'Remove']);
  });

  it('that is removed while on show gives its place to the reference', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    await page.chooseFromMenu(1, 'Remove');
    expect(page.scenarios).to.deep.equal(['4 h, base']);
    expect(page.onShow).to.equal(0);
    expect(page.headline).to.match(/^Four hours in base/);
    expect(shownPlan(page).inputs.hours).to.equal(4);
  });

  it('that is removed as the reference makes the first one left the reference', async () => {
    const page = await open();
    await page.add(2);
    await page.chooseFromMenu(0, 'Remove');
    expect([page.scenarios.length, page.reference]).to.deep.equal([2, 0]);
  });
});

describe('differences', () => {
  it('are shown from the reference, with their sign, and none where there is none', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    expect(page.shown('strength_minutes', 0).difference).to.equal('');
    // 30 % of 6 hours less 30 % of 4 hours; the shares are the same.
    expect(page.shown('strength_minutes', 1).difference).to.equal('+36');
    expect(page.shown('strength_share', 1).difference).to.equal('');
    expect(page.shown('total_rounded', 1).difference).to.equal('+120');
  });

  it('follow the reference', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    await page.chooseFromMenu(1, 'Compare the others with this');
    expect(page.reference).to.equal(1);
    expect(page.shown('strength_minutes', 0).difference).to.equal('−36');
    expect(page.shown('strength_minutes', 1).difference).to.equal('');
  });

  it('of shares are points', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'phase', 0);
    // Off season 40 %, in season 30 %: common practice.
    expect(page.shown('strength_share', 1)).to.deep.include({ text: '40%', difference: '+10 pts' });
    expect(page.shown('intervals_share', 1)).to.deep.include({ text: '0%', difference: '−10 pts' });
  });
});

describe('a slider in a column', () => {
  it('changes that column alone and puts it on show', async () => {
    const page = await open();
    await page.add();
    expect(page.onShow).to.equal(1);
    await page.set(0, 'hours', 5);
    expect(page.scenarios).to.deep.equal(['5 h, base', '4 h, base']);
    expect(page.onShow).to.equal(0);
    expect(page.headline).to.match(/^Five hours in base: 90 minutes of strength/);
    expect(page.slider('hours').valueAsNumber).to.equal(5);
  });

  it('is heard by the page as one plan-change a step, and by no inner event', async () => {
    const page = await open();
    await page.add();
    page.input(0, 'hours').focus();
    const inner: string[] = [];
    const note = ({ type }: Event): number => inner.push(type);
    for (const type of ['input', 'change', 'toggle']) document.addEventListener(type, note);
    const events = await page.heard(() => page.press('ArrowRight', 'ArrowRight', 'ArrowLeft'));
    for (const type of ['input', 'change', 'toggle']) document.removeEventListener(type, note);
    expect(events.map(({ detail }) => detail.inputs.hours)).to.deep.equal([4.25, 4.5, 4.25]);
    expect(inner).to.deep.equal([]);
  });

  for (const [label, index, field, value] of [
    ['phase', 0, 'phase', 'off-season'],
    ['level', 3, 'level', 'elite'],
    ['strength-cap', 95, 'strengthCap', 95],
  ] as const)
    it(`sets ${label}`, async () => {
      const page = await open();
      await page.set(0, label, index);
      expect(shownPlan(page).inputs[field]).to.equal(value);
      expect(page.element[field]).to.equal(value);
    });

  it('stands where the typed number and the list beside it do, and follows them', async () => {
    const page = await open();
    await page.fill(page.find<HTMLInputElement>('#a-hours'), '7,5');
    await page.press('Enter');
    expect(page.input(0, 'hours').valueAsNumber).to.equal(7.5);
    await page.choose(page.find<HTMLSelectElement>('select#a-phase'), 4);
    expect(page.input(0, 'phase').valueAsNumber).to.equal(4);
    expect(page.scenarios).to.deep.equal(['7 h 30 min, taper']);
    await page.choose(page.find<HTMLSelectElement>('select#a-event'), 5);
    expect(shownPlan(page).inputs).to.deep.include({ hours: 7.5, phase: 'taper', event: 'longer' });
  });

  it('typed wrong says what is allowed, keeps the text and changes nothing', async () => {
    const page = await open();
    const field = page.find<HTMLInputElement>('#a-hours');
    const events = await page.heard(async () => {
      await page.fill(field, '99');
      await page.press('Enter');
    });
    expect(events).to.deep.equal([]);
    expect([field.value, field.ariaInvalid]).to.deep.equal(['99', 'true']);
    expect(collapsed(page.find(`#${field.getAttribute('aria-describedby') ?? ''}`))).to.equal(
      'Hours a week is 99; allowed: 0.5 to 20.',
    );
    expect(page.scenarios).to.deep.equal(['4 h, base']);
  });
});

describe('the scenario on show', () => {
  it('takes what the page sets on the planner', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    page.element.setAttribute('hours', '8');
    await page.settled();
    expect(page.scenarios).to.deep.equal(['4 h, base', '8 h, base']);
    page.element.phase = 'taper';
    await page.settled();
    expect(page.scenarios).to.deep.equal(['4 h, base', '8 h, taper']);
  });

  it('takes what a person does in the split panel', async () => {
    const page = await open();
    await page.add();
    await page.drag('hours', 6);
    expect(page.scenarios).to.deep.equal(['4 h, base', '6 h, base']);
  });

  it('keeps the sessions that were picked for it', async () => {
    const page = await open();
    await page.add();
    const list = page.sessionList('strength');
    const index = [...list.options].findIndex(({ text }) => text === '30 + 45');
    await page.choose(list, index);
    expect(page.across('sessions strength')).to.deep.equal(['35 + 40', '30 + 45']);
    page.radio(0).click();
    await page.settled();
    expect(page.row('strength').sessions).to.equal('35 + 40');
    page.radio(1).click();
    await page.settled();
    expect(page.row('strength').sessions).to.equal('30 + 45');
  });

  it('is chosen by its radio, which changes no number of the sheet', async () => {
    const page = await open();
    await page.add();
    await page.set(1, 'hours', 6);
    const before = collapsed(page.find('.grid'));
    const events = await page.heard(() => page.click(page.radio(0)));
    expect(page.onShow).to.equal(0);
    expect(page.headline).to.match(/^Four hours in base/);
    expect(collapsed(page.find('.grid'))).to.equal(before);
    expect(events.map(({ detail }) => detail.inputs.hours)).to.deep.equal([4]);
    expect(page.tool('Undo').ariaDisabled).to.equal('false');
    await page.click(page.tool('Undo'));
    expect(page.scenarios, 'what is on show is no step').to.deep.equal(['4 h, base', '4 h, base']);
  });
});

describe('the focus', () => {
  const inSheet = (page: SheetPage): string => page.root.activeElement?.tagName ?? 'nowhere';

  it('goes along with a scenario that is moved', async () => {
    const page = await open();
    await page.add(2);
    await page.rename(2, 'Third');
    await page.chooseFromMenu(2, 'Move to the front');
    expect(page.hasFocus(page.menu(1))).to.equal(true);
    await page.chooseFromMenu(1, 'Move to the front');
    expect(page.scenarios[0]).to.equal('Third');
    expect(page.hasFocus(page.menu(0))).to.equal(true);
  });

  it('is not lost with a scenario that is removed', async () => {
    const page = await open();
    await page.add(2);
    for (const column of [2, 0, 1]) {
      if (column < page.scenarios.length && page.scenarios.length > 1) await page.chooseFromMenu(column, 'Remove');
      expect(inSheet(page)).to.equal('SUMMARY');
    }
    expect(page.scenarios).to.have.length(1);
  });
});

describe('the menu of a scenario', () => {
  it('closes by Escape, back on its button, and when the focus leaves it', async () => {
    const page = await open();
    const isOpen = (): boolean => page.all('.menu[open]').length > 0;
    page.menu(0).focus();
    await page.press('Enter', 'Tab');
    expect(isOpen()).to.equal(true);
    expect(collapsed(page.root.activeElement ?? page.root)).to.equal('Copy');
    await page.press('Escape');
    expect([isOpen(), page.hasFocus(page.menu(0))]).to.deep.equal([false, true]);
    await page.press('Enter', 'Tab', 'Tab');
    expect(isOpen()).to.equal(false);
  });
});
