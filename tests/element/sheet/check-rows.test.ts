import { expect } from '@open-wc/testing';
import { openSheet, type SheetPage } from './sheet-page.js';

const opened = async (attributes: string): Promise<SheetPage> => {
  const page = await openSheet(attributes, 'split sheet checks');
  return page.until(() => page.root.querySelector('[data-row="check:activity"]') !== null, 'checks become rows');
};

describe('checks in the sheet', () => {
  it('stand side by side for the scenarios, the level first, then what it was measured from', async () => {
    const page = await opened('hours="1" phase="build" level="developing"');
    await page.add();
    await page.set(1, 'hours', 4);
    // By hand: of one hour 33 minutes are running, which count as 66 moderate ones, and 9 are cross-training.
    expect(page.across('check:activity')).to.deep.equal(['worth a look', 'in line']);
    expect(page.across('fact:strength_sessions')).to.deep.equal(['1', '2']);
    expect(page.across('check:strength-days')).to.deep.equal(['worth a look', 'in line']);
    const rows = page.all('[data-row]').map(({ dataset }) => dataset['row'] ?? '');
    const last = rows.findLastIndex((row) => row.startsWith('check:'));
    expect(rows.findIndex((row) => row.startsWith('fact:'))).to.be.greaterThan(last);
  });

  it('are not asked of who is not meant, and show a dash there', async () => {
    const page = await opened('hours="4" level="developing"');
    expect(page.across('check:hard-sessions')).to.deep.equal(['–']);
    expect(page.across('check:strength-cap')).to.deep.equal(['–']);
  });

  it('are nothing to be set by hand', async () => {
    const page = await opened('hours="4"');
    await page.open(page.cell('check:activity'));
    expect(page.all('.detail [role="combobox"]')).to.have.length(0);
    await page.press('Escape');
    await page.open(page.cell('strength_minutes'));
    expect(page.all('.detail [role="combobox"]')).to.have.length(1);
  });

  it('follow what is told in their panel', async () => {
    const page = await opened('hours="4"');
    expect(page.root.querySelector('[data-row="check:hours-rise"]')).to.equal(null);
    page.element.checks = { hoursBefore: 3 };
    await page.until(() => page.root.querySelector('[data-row="check:hours-rise"]') !== null, 'its row comes');
    expect(page.across('check:hours-rise')).to.deep.equal(['worth a look']);
    page.element.checks = { hoursBefore: 4 };
    await page.settled();
    expect(page.across('check:hours-rise')).to.deep.equal(['in line']);
  });
});
