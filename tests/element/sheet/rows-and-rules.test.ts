import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

async function openTwo(): Promise<SheetPage> {
  const page = await openSheet('hours="4" phase="base"');
  await page.add();
  return page.set(1, 'hours', 8);
}

describe('the formula of a quantity, for all scenarios', () => {
  it('is changed on the head of its row, and goes back to the method’s', async () => {
    const page = await openTwo();
    await page.open(page.rowHead('strength_minutes'));
    const field = page.find<HTMLInputElement>('#formula-all');
    expect(page.hasFocus(field)).to.equal(true);
    const own = field.value;
    expect(own).to.include('strength_share');
    await page.fill(field, 'weekly_minutes / 4');
    await page.take();
    // The rule acts on it as before: 120 minutes in 8 hours are no more than its cap.
    expect(page.across('strength_minutes')).to.deep.equal(['60', '120']);
    expect(page.focus).to.equal('strength_minutes head');
    expect(page.cell('strength_minutes').dataset['mark']).to.equal('none');
    await page.press('Enter');
    await page.click(page.detailButton('Back to the method’s formula'));
    expect(page.across('strength_minutes')).to.deep.equal(['72', '120']);
    await page.open(page.rowHead('strength_minutes'));
    expect(page.find<HTMLInputElement>('#formula-all').value).to.equal(own);
    expect(page.all('.detail button').map(collapsed)).to.not.include('Back to the method’s formula');
  });

  it('gives way to what is set by hand in one scenario', async () => {
    const page = await openTwo();
    await page.override('strength_minutes', 1, '90');
    await page.open(page.rowHead('strength_minutes'));
    await page.fill(page.find<HTMLInputElement>('#formula-all'), 'weekly_minutes / 6');
    await page.take();
    expect(page.across('strength_minutes')).to.deep.equal(['40', '90']);
  });

  it('is not there for what has none', async () => {
    const page = await openTwo();
    await page.open(page.rowHead('sessions strength'));
    expect(page.all('.detail [role="combobox"]')).to.have.length(0);
    await page.press('Escape');
    expect(page.focus).to.equal('sessions strength head');
  });
});

describe('an own row', () => {
  async function addRow(page: SheetPage, name: string, formula: string): Promise<SheetPage> {
    await page.click(page.named('.sheet > .act', 'Add a row'));
    await page.fill(page.find<HTMLInputElement>('#row-name'), name);
    await page.fill(page.find<HTMLInputElement>('#formula-row'), formula);
    await page.press('Enter');
    return page.until(() => page.root.querySelector('#row-name') === null, 'the form goes');
  }

  it('has a name and a formula, and a number in every scenario', async () => {
    const page = await openTwo();
    await addRow(page, 'Hard minutes', 'tempo_minutes + intervals_minutes');
    // 25 % of 240 and of 480 minutes.
    expect(page.across('hard_minutes')).to.deep.equal(['60', '120']);
    expect(collapsed(page.rowHead('hard_minutes'))).to.equal('Hard minutes');
    await page.add();
    expect(page.across('hard_minutes')).to.deep.equal(['60', '120', '120']);
  });

  it('says how formulas call it, and may be used in another formula', async () => {
    const page = await openTwo();
    await page.click(page.named('.sheet > .act', 'Add a row'));
    await page.fill(page.find<HTMLInputElement>('#row-name'), 'Härte & Tempo');
    expect(collapsed(page.find('#row-note'))).to.equal('Formulas call it harte_tempo.');
    await page.press('Escape');
    await page.click(page.named('.sheet section .act', 'Cancel'));
    await addRow(page, 'Hard minutes', 'tempo_minutes + intervals_minutes');
    await addRow(page, 'Hard share', 'hard_minutes / weekly_minutes');
    expect(page.across('hard_share')).to.deep.equal(['0.25', '0.25']);
    await addRow(page, 'Hard weight', 'weekly_hours / 16');
    await page.override('strength_minutes', 0, 'strength_cap * hard_weight');
    expect(page.shown('strength_minutes').text).to.equal('30');
  });

  it('is changed and removed on its head; the focus stays in the grid', async () => {
    const page = await openTwo();
    await addRow(page, 'Half', 'slow_minutes / 2');
    await page.open(page.rowHead('half'));
    await page.fill(page.find<HTMLInputElement>('#formula-all'), 'slow_minutes / 3');
    await page.take();
    expect(page.shown('half').text).to.equal('24');
    await page.press('Enter');
    page.detailButton('Remove this row').focus();
    await page.press('Enter');
    expect(page.all('[data-row="half"]')).to.have.length(0);
    expect(page.root.activeElement?.closest('.grid')).to.not.equal(null);
  });

  it('needs a name, and says so beside the field', async () => {
    const page = await openTwo();
    await page.click(page.named('.sheet > .act', 'Add a row'));
    await page.fill(page.find<HTMLInputElement>('#formula-row'), '1 + 1');
    await page.press('Enter');
    await page.until(() => page.find('#row-name').ariaInvalid === 'true', 'the name is missed');
    expect(collapsed(page.find(`#${page.find('#row-name').getAttribute('aria-describedby') ?? ''}`))).to.equal(
      'Give the row a name.',
    );
    expect(page.all('.grid [data-row="group own"]')).to.have.length(0);
  });

  it('with a name that is taken gets another for formulas', async () => {
    const page = await openTwo();
    await addRow(page, 'strength minutes', '1');
    expect(page.all('th[data-row="strength_minutes_2"]')).to.have.length(1);
    expect(page.shown('strength_minutes').text).to.equal('72');
  });

  it('that is missing where another formula names it leaves that one without a value, and says why', async () => {
    const page = await openTwo();
    await addRow(page, 'Half', 'weekly_minutes / 2');
    await page.override('strength_minutes', 0, 'half');
    await page.open(page.rowHead('half'));
    await page.click(page.detailButton('Remove this row'));
    expect(page.cell('strength_minutes').dataset['mark']).to.equal('wrong');
    expect(page.texts('.failures p').join()).to.include('half');
  });

  it('takes the focus when its form opens, gives it to the row when it comes, and back when it is given up', async () => {
    const page = await openTwo();
    const button = (): HTMLElement => page.named('.sheet > .act', 'Add a row');
    button().focus();
    await page.press('Enter');
    expect(page.hasFocus(page.find('#row-name'))).to.equal(true);
    page.named('.sheet section .act', 'Cancel').focus();
    await page.press('Enter');
    expect(page.hasFocus(button())).to.equal(true);
    await addRow(page, 'Half', 'slow_minutes / 2');
    expect(page.focus).to.equal('half head');
  });
});

describe('a rule', () => {
  async function openRules(): Promise<SheetPage> {
    const page = await openTwo();
    await page.add();
    await page.openGroup('rules');
    return page;
  }
  const cap = 'rule strength-cap';
  // 30 % of 240 and of 480 minutes; the rule holds the latter at 120.
  const before = ['72', '120', '120'];

  it('says where it acts', async () => {
    const page = await openRules();
    expect(page.across(cap)).to.deep.equal(['–', 'acts', 'acts']);
    await page.open(page.cell(cap, 1));
    expect(page.detailText).to.include('common practice');
  });

  it('is switched off in one scenario, and on again', async () => {
    const page = await openRules();
    await page.open(page.cell(cap, 1));
    await page.click(page.detailButton('Switch off here'));
    expect(page.across('strength_minutes')).to.deep.equal(['72', '144', '120']);
    expect(page.across(cap)).to.deep.equal(['–', 'off', 'acts']);
    await page.click(page.detailButton('Switch on here'));
    expect(page.across('strength_minutes')).to.deep.equal(before);
  });

  it('is switched off in all scenarios, and on again', async () => {
    const page = await openRules();
    await page.open(page.rowHead(cap));
    expect(page.all('.detail button').map(collapsed)).to.not.include('Switch off here');
    await page.click(page.detailButton('Switch off in all scenarios'));
    expect(page.across('strength_minutes')).to.deep.equal(['72', '144', '144']);
    expect(page.across(cap)).to.deep.equal(['off', 'off', 'off']);
    await page.click(page.detailButton('Switch on in all scenarios'));
    expect(page.across('strength_minutes')).to.deep.equal(before);
  });

  it('switched off is still listed in the split panel’s derivation of what it acts on', async () => {
    const page = await openRules();
    await page.open(page.cell(cap, 1));
    await page.click(page.detailButton('Switch off here'));
    await page.ask('strength_minutes');
    expect(collapsed(page.why)).to.include('Why 144 minutes of strength?').and.include('Strength cap');
  });
});
