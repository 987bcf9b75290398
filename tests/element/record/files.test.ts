import { expect } from '@open-wc/testing';
import { mishaps } from '../mishaps.js';
import { onRealDay } from './on-day.js';
import { openRecord, scene } from './record-page.js';
import { openTables, tableFile, TablePage } from './table-page.js';

after(onRealDay);

const text = '\uFEFFDate,Kind,Minutes\r\n2026-11-30,easy run,35\r\n2026-12-01,gym,40\r\n';
const english = 'hours="4" phase="base"';

describe('a table that is opened from a disk', () => {
  it('is understood as one that is pasted, and is shown to be looked at', async () => {
    const page = await (await openTables()).opensFile(tableFile(text));
    await page.readTable();
    expect([page.result, page.paste.value.includes('gym')]).to.deep.equal([
      ...['2 lines are understood. 0 lines are not, and stay out.', true],
    ]);
    await page.takesOver();
    expect(page.lead).to.contain('2 of 7 sessions done, 75 of 240 minutes.');
  });

  it('is opened again when it is chosen again', async () => {
    const page = await (await openTables()).opensFile(tableFile(text));
    await page.readTable();
    await page.pastes(' ');
    expect(page.find<HTMLInputElement>('.record-in input[type="file"]').value).to.equal('');
    await page.opensFile(tableFile(text));
    await page.readTable();
    expect(page.understood).to.have.length(2);
  });

  it('is a text, whatever browsers call its kind', async () => {
    const page = await (await openTables()).opensFile(new File([text], 'SESSIONS.TXT', { type: '' }));
    await page.readTable();
    expect(page.understood).to.have.length(2);
  });
});

describe('a table that is dropped on the planner', () => {
  for (const panels of ['record', 'split week record', 'record handout', 'split record handout'])
    it(`is read where the page has ${panels}: the box opens, and the focus is there`, async () => {
      const base = await openRecord(scene, panels);
      const page = new TablePage(base.element);
      if (panels.includes('handout')) await page.until(() => page.has('.handout .panel-title'), 'the handout comes');
      const over = page.dragFile('dragover', tableFile(text));
      expect(over.defaultPrevented, 'the page would be left').to.equal(true);
      const drop = page.dragFile('drop', tableFile(text));
      expect(drop.defaultPrevented, 'the page would be left').to.equal(true);
      await page.until(() => page.has('.import-mapping'), 'the table is read');
      expect([page.result, page.find<HTMLDetailsElement>('.record-in').open]).to.deep.equal([
        ...['2 lines are understood. 0 lines are not, and stay out.', true],
      ]);
      await page.until(() => page.hasFocus(page.paste), 'the focus is in the box');
      expect(page.lead, 'nothing is taken over').to.contain('0 of 7');
    });

  it('shows that it may fall here, until it falls or leaves', async () => {
    const page = await openTables();
    const place = page.find('.record');
    page.dragFile('dragenter', tableFile(text));
    expect(place.hasAttribute('data-drop')).to.equal(true);
    const { outlineStyle } = getComputedStyle(place);
    expect(outlineStyle, 'it is seen').to.equal('dashed');
    page.dragFile('dragleave', tableFile(text));
    expect(place.hasAttribute('data-drop')).to.equal(false);
    page.dragFile('dragenter', tableFile(text));
    page.dragFile('drop', tableFile(text));
    expect(place.hasAttribute('data-drop')).to.equal(false);
  });

  it('that is text and no file is left to the browser', async () => {
    const page = await openTables();
    const dataTransfer = new DataTransfer();
    dataTransfer.setData('text/plain', text);
    const event = new DragEvent('drop', { dataTransfer, bubbles: true, composed: true, cancelable: true });
    page.find('.record .panel-title').dispatchEvent(event);
    expect(event.defaultPrevented).to.equal(false);
  });
});

describe('what is no table', () => {
  for (const [name, content, fault] of [
    ['an empty file', '', 'There is no table in it.'],
    ['a file of nothing but delimiters', ',,,\n,,,\n', 'There is no table in it.'],
    [
      'a file that is cut off inside a quotation',
      'Date,Kind,Minutes\n2026-11-30,"easy,45\n',
      'The document is damaged or incomplete: line 2 is the first that cannot be read.',
    ],
  ] as const)
    it(`is ${name}: that is told, and the record is as it was`, async () => {
      const page = await openTables();
      const before = page.lead;
      const heard = await mishaps(async () => {
        await page.opensFile(tableFile(content));
        await page.until(() => page.faults.length > 0, 'that is told');
      });
      expect([heard, page.lead, page.has('.import-mapping')]).to.deep.equal([[], before, false]);
      expect(page.faults).to.deep.equal([fault]);
    });

  it('is a file of a hundred megabytes: it is not read, and that is told', async () => {
    const page = await openTables(english);
    const file = tableFile('x', 'years.csv');
    Object.defineProperty(file, 'size', { value: 100_000_000 });
    Object.defineProperty(file, 'text', { value: () => Promise.reject(new Error('it is read')) });
    page.dragFile('drop', file);
    await page.until(() => page.faults.length > 0, 'that is told');
    expect(page.faults).to.deep.equal(['The table is longer than 2,000,000 characters, the most that can be read.']);
  });

  it('is a picture: no line of it is understood', async () => {
    const bytes = Uint8Array.from({ length: 4000 }, (_, index) => (index * 7919) % 256);
    const page = await openTables();
    const heard = await mishaps(async () => {
      await page.opensFile(new File([bytes], 'run.png', { type: 'image/png' }));
      await page.readTable();
    });
    expect(heard).to.deep.equal([]);
    expect(page.has('.import-read')).to.equal(false);
  });

  it('has too many lines, or too many columns', async () => {
    const page = await openTables();
    await page.enters(`Date,Kind,Minutes\n${'2026-11-30,easy,45\n'.repeat(10_001)}`);
    expect(page.faults).to.deep.equal(['The table has more than 10,000 lines, the most that can be read.']);
    await page.enters(`Date,Kind,Minutes${',x'.repeat(98)}\n2026-11-30,easy,45`);
    expect(page.faults).to.deep.equal(['The table has more than 100 columns, the most that can be read.']);
    await page.enters('Date,Kind,Minutes\n2026-11-30,easy,45');
    expect([page.faults, page.understood.length]).to.deep.equal([[], 1]);
  });
});
