import { expect } from '@open-wc/testing';
import { onRealDay } from './on-day.js';
import { openRecord, scene } from './record-page.js';
import { openTables, TablePage } from './table-page.js';

after(onRealDay);

interface SavedFile {
  readonly name: string;
  readonly text: string;
  readonly type: string;
}

/** What the browser is given to save while something is done. */
async function saved(act: () => Promise<unknown>): Promise<SavedFile[]> {
  const blobs = new Map<string, Blob>();
  const links: HTMLAnchorElement[] = [];
  const createObjectURL = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob: Blob) => {
    const address = createObjectURL(blob);
    blobs.set(address, blob);
    return address;
  };
  HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
    links.push(this);
  };
  await act();
  URL.createObjectURL = createObjectURL;
  // What every element has shows again.
  Reflect.deleteProperty(HTMLAnchorElement.prototype, 'click');
  return Promise.all(
    links.map(async ({ href, download }) => {
      const blob = blobs.get(href);
      // Not `text()`, which would take away the byte order mark.
      const bytes = new TextDecoder('utf-8', { ignoreBOM: true }).decode(await blob?.arrayBuffer());
      return { name: download, text: bytes, type: blob?.type ?? '' };
    }),
  );
}

/** What is copied while something is done; null where nothing is. */
async function copied(act: () => Promise<unknown>, isAllowed: boolean): Promise<string | null> {
  let text: string | null = null;
  const write = async ([item]: readonly ClipboardItem[]): Promise<void> => {
    if (!isAllowed) throw new DOMException('not here', 'NotAllowedError');
    text = (await (await item?.getType('text/plain'))?.text()) ?? null;
  };
  Object.defineProperty(navigator.clipboard, 'write', { configurable: true, value: write });
  await act();
  Reflect.deleteProperty(navigator.clipboard, 'write');
  return text;
}

async function openDone(attributes = scene, panels = 'week record'): Promise<TablePage> {
  const base = await openRecord(attributes, panels);
  const page = new TablePage(base.element);
  await page.ticks(0, 2);
  await page.typesIn(page.field(2, 'effort'), '3,5');
  await page.opens('out');
  return page;
}

const table = 'Date,Kind,Minutes,Effort\r\n2026-11-30,Tempo running,35,\r\n2026-12-02,Slow running,20,3.5\r\n';

describe('the record as a table', () => {
  it('is none while nothing was done', async () => {
    const page = await (await openRecord()).opens('out');
    expect(page.texts('.record-out > :not(summary)')).to.deep.equal(['Nothing was done yet.']);
  });

  it('is saved as CSV, with a mark in front by which spreadsheets know its letters', async () => {
    const page = await openDone();
    const files = await saved(() => page.presses('Save as CSV'));
    expect(files).to.deep.equal([{ name: 'What-was-done-2026-12-02.csv', type: 'text/csv', text: `\uFEFF${table}` }]);
    expect(page.told).to.equal('Saved as What-was-done-2026-12-02.csv.');
  });

  it('is copied', async () => {
    const page = await openDone();
    const text = await copied(async () => {
      await page.presses('Copy it');
      await page.until(() => page.told !== '', 'that is told');
    }, true);
    expect([text, page.told, page.has('.record-out textarea')]).to.deep.equal([table, 'The table is copied.', false]);
  });

  it('is there to be copied by hand where the browser does not let the page copy', async () => {
    const page = await openDone();
    await copied(async () => {
      await page.presses('Copy it');
      await page.until(() => page.has('.record-out textarea'), 'it is there');
    }, false);
    const { value, readOnly, ariaLabel } = page.find<HTMLTextAreaElement>('.record-out textarea');
    expect([value.replaceAll('\n', '\r\n'), readOnly, ariaLabel]).to.deep.equal([table, true, 'To be copied by hand']);
    expect(page.told).to.match(/does not let this page copy/);
  });

  it('to be copied by hand goes when it is no longer what was done', async () => {
    const page = await openDone();
    await copied(async () => {
      await page.presses('Copy it');
      await page.until(() => page.has('.record-out textarea'), 'it is there');
    }, false);
    await page.ticks(1);
    expect(page.has('.record-out textarea')).to.equal(false);
  });

  for (const lang of ['en', 'de'])
    it(`is read again, ${lang}: all of it is in the record already; elsewhere it is the same record`, async () => {
      const page = await openDone(`${scene} lang="${lang}"`);
      const button = page.all<HTMLButtonElement>('.record-out button')[0];
      const [file] = await saved(() => page.click(button ?? page.element));
      await page.opens('in');
      await page.pastes(file?.text ?? '');
      expect([page.understood.length, page.unread, page.takeButton.ariaDisabled]).to.deep.equal([2, [], 'true']);
      expect(page.takeNotes.join()).to.match(
        lang === 'en' ? /^2 more are in the record already\.$/ : /^2 weitere sind schon da\.$/,
      );
      // In the other language too: the ids of the languages differ, dates and numbers do not.
      const other = await openTables(`hours="4" phase="base" lang="${lang}"`);
      await other.pastes(file?.text ?? '');
      await other.takesOver();
      await other.opens('out');
      const again = other.all<HTMLButtonElement>('.record-out button')[0];
      const [copy] = await saved(() => other.click(again ?? other.element));
      expect(copy?.text).to.equal(file?.text);
    });

  it('calls kinds what a coach calls them, and no spreadsheet runs such a name', async () => {
    const { default: club } = await import('../../../demo/club-method.json', { with: { type: 'json' } });
    const page = await openRecord('', 'record');
    page.element.method = {
      ...club,
      categories: club.categories.map((each) => (each.id === 'slow' ? { ...each, name: '=1+1' } : each)),
    };
    await page.until(() => page.panelText.includes('=1+1'), 'the method comes');
    await page.adds('=1+1', '30');
    await page.opens('out');
    const [file] = await saved(() => page.presses('Save as CSV'));
    expect(file?.text.split('\r\n')[1]).to.equal("2026-12-02,'=1+1,30,");
    const tables = new TablePage(page.element);
    await tables.opens('in');
    await tables.pastes(file?.text ?? '');
    expect(tables.takeNotes).to.deep.equal(['One more is in the record already.']);
  });
});
