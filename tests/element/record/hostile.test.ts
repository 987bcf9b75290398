import { expect } from '@open-wc/testing';
import { mishaps } from '../mishaps.js';
import { onRealDay } from './on-day.js';
import { openTables, tableFile, type TablePage } from './table-page.js';

after(onRealDay);

const image = '<img src=x onerror="globalThis.hacked = true">';
const script = '<script>globalThis.hacked = true</script>';
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** That nothing that a table brought has become an element, or was run. */
function expectHarmless(page: TablePage): void {
  expect(page.all('.record :is(img, script, iframe, object, a, svg)').map((each) => each.outerHTML)).to.deep.equal([]);
  expect('hacked' in globalThis).to.equal(false);
}

describe('cells that would be more than text', () => {
  for (const [name, kind] of [
    ['an element', image],
    ['a script', script],
    ['a formula', '=HYPERLINK("http://x.invalid","pay")'],
    ['a formula by a sign', '+1+1'],
    ['a name of objects', '__proto__'],
    ['a name of functions', 'constructor'],
    ['a template', '${globalThis.hacked = true}'],
    ['a text from right to left', '\u202Eeciovni'],
  ] as const)
    it(`as ${name} are shown as the text that they are`, async () => {
      const page = await openTables();
      const heard = await mishaps(() => page.pastes(`Date,Kind,Minutes\n2026-11-30,${quoted(kind)},45`));
      expect(heard).to.deep.equal([]);
      expect(page.mapping.at(-1)).to.equal(`${kind.replace(/\s+/g, ' ')}: leave these out`);
      expect(page.unread.join()).to.contain('Line 2: Kind is "');
      expectHarmless(page);
      await page.maps(kind, 'Strength');
      expect(page.understood[0]?.[2]).to.equal('Strength');
      await page.takesOver();
      expect(page.lead).to.contain('1 of 7 sessions done, 45 of 240 minutes.');
      expectHarmless(page);
      expect(Object.keys(Object.prototype)).to.deep.equal([]);
    });

  it('as titles are shown as the text that they are', async () => {
    const page = await openTables();
    await page.pastes(`${quoted(image)},Date,__proto__,Minutes,${quoted(script)}\nx,2026-11-30,easy,45,y`);
    const titles = [...page.list('Date').options].map(({ text }) => text.trim());
    expect(titles).to.deep.equal(['not in the table', image, 'Date', '__proto__', 'Minutes', script]);
    expect(page.result).to.contain(image).and.to.contain(script);
    expectHarmless(page);
  });

  it('as what is faulty are shown as the text that they are', async () => {
    const page = await openTables();
    await page.pastes(`Date,Kind,Minutes,Effort\n${quoted(image)},easy,${quoted(image)},${quoted(script)}`);
    expect(page.unread.join()).to.contain('Date is "<img src=x').and.to.contain('Effort is "<script>');
    expectHarmless(page);
  });

  it('as the name of a file do no harm', async () => {
    const page = await openTables();
    await page.opensFile(tableFile('', `${image}.csv`));
    await page.until(() => page.faults.length > 0, 'that is told');
    expectHarmless(page);
  });

  it('as long texts are cut, and reach out of nothing', async () => {
    const page = await openTables();
    await page.enters(`Date,Kind,Minutes\n${'9'.repeat(5000)},${'x'.repeat(5000)},${'9'.repeat(5000)}`);
    expect((page.unread[0] ?? '').length).to.be.lessThan(600);
    expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
  });
});
