import { expect } from '@open-wc/testing';
import { openHandout, scene, type HandoutPage } from './handout-page.js';
import { choosesFile, dropsFile, fileText, savesPlan } from './files.js';

const written = (text: string): Record<string, unknown> => JSON.parse(text) as Record<string, unknown>;
const withSheet = (parts: object): string => {
  const file = written(fileText());
  return JSON.stringify({ ...file, sheet: { ...(file['sheet'] as object), ...parts } });
};
const twelveDeep = '['.repeat(20) + ']'.repeat(20);

/** What is wrong with a file, and what has to be said of it. */
const faults: readonly { readonly name: string; readonly text: BlobPart; readonly says: RegExp }[] = [
  { name: 'an empty file', text: '', says: /not valid JSON/ },
  { name: 'text that is no JSON', text: 'Dear coach,\nhere is my plan', says: /not valid JSON: line 1 / },
  { name: 'a file cut off', text: fileText().slice(0, -20), says: /not valid JSON: line/ },
  {
    name: 'a slip on the third line',
    text: '{\n  "format": "weekwright-file",\n  "version" 1,\n  "sheet": {}\n}',
    says: /line 3 is the first that cannot be read/,
  },
  {
    name: 'a picture',
    text: Uint8Array.from({ length: 500 }, (_, index) => (index * 37) % 256),
    says: /not valid JSON/,
  },
  { name: 'a list', text: '[1, 2]', says: /has to be/ },
  { name: 'null', text: 'null', says: /has to be/ },
  { name: 'another document', text: '{"format":"other","version":1}', says: /format is "?other/ },
  { name: 'a plan by another method', text: withSheet({ method: 'club' }), says: /method.*club/ },
  {
    name: 'a newer version',
    text: JSON.stringify({ ...written(fileText()), version: 2 }),
    says: /version is 2, a newer version than the 1/,
  },
  { name: 'a newer version of the sheet', text: withSheet({ version: 9 }), says: /version is 9/ },
  { name: 'a field that nobody knows', text: fileText({ colour: 'red' }), says: /colour/ },
  {
    name: 'hours that nobody has',
    text: fileText({}, { inputs: { hours: 900, phase: 'peak', level: 'trained', event: '10k', strengthCap: 100 } }),
    says: /hours is 900/,
  },
  {
    name: 'a session of the past that is none',
    text: fileText({ record: [{ date: 'x', category: 'slow', minutes: 1 }] }),
    says: /record/,
  },
  {
    name: 'a note that is too long',
    text: fileText({ handout: { note: 'x'.repeat(1001) } }),
    says: /note is too long/,
  },
  { name: 'answers about the health', text: fileText({ checks: { answers: ['pain'] } }), says: /answers/ },
  {
    name: 'answers about the health, though none was given',
    text: fileText({ checks: { answers: [] } }),
    says: /answers/,
  },
  { name: 'very deep nesting', text: fileText({ running: JSON.parse(twelveDeep) as unknown }), says: /deep|nest/ },
  { name: 'more than a plan has', text: `${fileText()}${' '.repeat(1_000_001)}`, says: /too long|too large|too big/ },
];

async function openTold(panels: string): Promise<HandoutPage> {
  const page = await openHandout(scene, panels);
  if (panels.includes('sheet')) await page.until(() => page.has('.grid'), 'the sheet comes');
  await page.typeIn('handout-name', 'Mine');
  return page.writeNote('Mine too');
}

const state = async (page: HandoutPage): Promise<string> =>
  `${JSON.stringify(page.element.plan)} ${(await savesPlan(page)).text}`;

describe('a faulty file is told by line or field, and changes nothing:', () => {
  let page: HandoutPage;
  beforeEach(async () => {
    page = await openTold('split sheet checks strength handout');
  });

  for (const { name, text, says } of faults)
    it(name, async () => {
      const before = await state(page);
      const events = await page.heard(() => choosesFile(page, text));
      await page.hearsBack('cannot be opened; nothing was changed');
      expect(page.message).to.match(says);
      expect(page.message).to.not.match(/undefined|\[object|NaN/);
      expect([events, await state(page)]).to.deep.equal([[], before]);
      expect(page.panelText).to.not.contain('Back to what was open before');
    });

  it('a formula that cannot be read', async () => {
    const before = await state(page);
    const events = await page.heard(() => choosesFile(page, fileText({}, { overrides: { strength_minutes: '2 +' } })));
    await page.hearsBack('cannot be opened; nothing was changed');
    expect(page.message).to.match(/2 \+/);
    expect([events, await state(page)]).to.deep.equal([[], before]);
  });

  it('dropped too', async () => {
    const before = await state(page);
    await dropsFile(page, 'no plan');
    await page.hearsBack('cannot be opened; nothing was changed');
    expect(await state(page)).to.equal(before);
  });

  it('one that is huge is not even read', async () => {
    const before = await state(page);
    let isRead = false;
    const file = new File(['x'], 'huge.json');
    Object.defineProperty(file, 'size', { value: 80_000_001 });
    file.text = () => {
      isRead = true;
      return Promise.resolve('x');
    };
    await page.opensBox('open');
    const input = page.find<HTMLInputElement>('.handout-open input[type="file"]');
    Object.defineProperty(input, 'files', { configurable: true, value: [file] });
    input.dispatchEvent(new Event('change', { bubbles: true }));
    Reflect.deleteProperty(input, 'files');
    await page.hearsBack('huge.json is too long');
    expect([isRead, await state(page)]).to.deep.equal([false, before]);
  });

  it('one that cannot be read from its disk', async () => {
    await page.opensBox('open');
    const file = new File(['x'], 'gone.json');
    file.text = () => Promise.reject(new DOMException('gone', 'NotReadableError'));
    const input = page.find<HTMLInputElement>('.handout-open input[type="file"]');
    Object.defineProperty(input, 'files', { configurable: true, value: [file] });
    const unheard: PromiseRejectionEvent[] = [];
    const note = (event: PromiseRejectionEvent): void => {
      event.preventDefault();
      unheard.push(event);
    };
    addEventListener('unhandledrejection', note);
    input.dispatchEvent(new Event('change', { bubbles: true }));
    Reflect.deleteProperty(input, 'files');
    await page.answered();
    removeEventListener('unhandledrejection', note);
    expect(unheard).to.deep.equal([]);
    expect(page.message).to.equal('Gone.json cannot be read from its disk; nothing was changed.');
  });
});

it('a file with many faults tells the first of them, and how many more there are', async () => {
  const page = await openHandout();
  const fields = Object.fromEntries(Array.from({ length: 20 }, (_, index) => [`field_${String(index)}`, 1]));
  await choosesFile(page, fileText(fields));
  await page.hearsBack('cannot be opened');
  expect(page.texts('.handout .message .wrong')).to.have.length(7);
  expect(page.texts('.handout .message .wrong').at(-1)).to.match(/14/);
});

it('texts of a faulty file are shown as texts', async () => {
  const page = await openHandout();
  await choosesFile(page, fileText({ '<img src=x onerror=alert(1)>': 1 }));
  await page.hearsBack('cannot be opened');
  expect(page.has('.handout .message img')).to.equal(false);
});

it('a byte order mark in front, as some editors leave it, is no fault', async () => {
  const page = await openHandout();
  await choosesFile(page, `\uFEFF${fileText()}`);
  await page.hearsBack('The plan from the file is open.');
});

it('the same file may be opened again after it was put right', async () => {
  const page = await openHandout();
  await choosesFile(page, 'x');
  await page.hearsBack('cannot be opened');
  await choosesFile(page, fileText());
  await page.hearsBack('The plan from the file is open.');
  expect(page.find<HTMLInputElement>('.handout-open input[type="file"]').value).to.equal('');
});
