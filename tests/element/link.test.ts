import { expect } from '@open-wc/testing';
import { readSheetText, sheetTextLimits, writeSheetText } from '../../src/exchange/sheet-link.js';
import { tableHtml, type TableBlock } from '../../src/exchange/table-text.js';
import { compressed, decompressed } from '../../src/element/link/compression.js';
import { textOf } from '../../src/element/link/base64url.js';
import { linkKey } from '../../src/element/link/fragment.js';
import { contentIn, type LinkPlace } from '../../src/element/link/page-link.js';
import { linkTo } from '../../src/element/link/sheet-link.js';
import type { Scenario, ScenarioSheet } from '../../src/plan/scenarios/document.js';
import type { Outcome, Problem } from '../../src/problem.js';
import { builtInMethod } from '../../src/training/method/built-in.js';

const page = 'https://club.example/plan?group=2';
const key = 'weekwright';
const scenario: Scenario = {
  id: 'a',
  name: 'Früh am Morgen, 朝, 🏃‍♀️ & "quoted"\u{2028}\u{d800}',
  inputs: { hours: 4.1, phase: 'base', level: 'trained', event: '10k', strengthCap: 100 },
  sessions: { strength: [30, 45] },
  week: {
    days: [60, 0, 45, 60, 0, 90, 120],
    free: [1],
    longRun: 6,
    restDays: 2,
    pinned: [{ category: 'tempo', minutes: 35, day: 0 }],
    done: [],
    passed: 0,
    sessions: { strength: [30, 45] },
    before: null,
  },
  season: {
    date: '2027-04-11',
    weeks: 16,
    hours: 4,
    taperDrop: 0.5,
    phases: [{ phase: 'base', weeks: null }],
    events: [{ date: '2027-03-07', event: '10k' }],
    byHand: [{ start: '2027-02-15', hours: 0, reason: 'holiday', sessions: { strength: [30] } }],
    longestRun: 75,
  },
  overrides: { slow_minutes: 'max(value, 90)' },
  rulesOff: ['strength-cap'],
};
const sheet: ScenarioSheet = {
  method: builtInMethod,
  formulas: { strength_minutes: 'weekly_minutes * 0.25' },
  rows: [{ id: 'half', name: 'Half', formula: 'slow_minutes / 2' }],
  rulesOff: [],
  scenarios: [scenario, { ...scenario, id: 'b', name: '', week: null, season: null, overrides: {} }],
  reference: 'b',
};

function valueOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
const linkAt = async (href: string): Promise<string> => valueOf(await linkTo(sheet, { href, key }));
/** The text in a link. */
async function sheetTextIn(place: LinkPlace): Promise<Outcome<string | null>> {
  const content = await contentIn(place);
  return content.ok ? { ok: true, value: content.value?.text ?? null } : content;
}
const read = (href: string): Promise<Outcome<string | null>> => sheetTextIn({ href, key });
const withSheet = (value: string): string => `${page}#weekwright=${value}`;
async function problemOf(href: string): Promise<Problem | undefined> {
  const outcome = await read(href);
  return outcome.ok ? undefined : outcome.problems[0];
}

/** Letters and digits that no compression makes short. */
function noise(length: number): string {
  let state = 1;
  return Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return state.toString(36).at(-1);
  }).join('');
}
const packed = async (text: string): Promise<string> => `1.${textOf(await compressed(text))}`;

describe('a link to a sheet', () => {
  it('gives the sheet back', async () => {
    const href = await linkAt(page);
    expect(href).to.match(/^https:\/\/club\.example\/plan\?group=2#weekwright=1\.[\w-]+$/);
    const text = valueOf(await read(href)) ?? '';
    expect(text).to.equal(writeSheetText(sheet));
    expect(valueOf(readSheetText(text, builtInMethod))).to.deep.equal(sheet);
    // As the browser has it after following it.
    expect(new URL(href).href).to.equal(href);
  });

  it('replaces an earlier one, and keeps other parts of the form key=value as they are', async () => {
    const [, value = ''] = (await linkAt(page)).split('#');
    for (const [before, after] of [
      ['', value],
      ['top', value],
      ['top&a=1', `a=1&${value}`],
      ['a=%201&weekwright=1.old&b=x=y&flag&=3', `a=%201&b=x=y&${value}`],
      ['weekwright-two=1.x', `weekwright-two=1.x&${value}`],
      [value, value],
    ])
      expect(await linkAt(`${page}#${before}`)).to.equal(`${page}#${after}`);
  });

  it('has a part for each planner of a page', async () => {
    const [one, two] = [linkKey(''), linkKey('left & right=1')];
    expect([one, two]).to.deep.equal(['weekwright', 'weekwright-left%20%26%20right%3D1']);
    const other = { ...sheet, reference: 'a' };
    const first = valueOf(await linkTo(sheet, { href: page, key: one }));
    const href = valueOf(await linkTo(other, { href: first, key: two }));
    expect(valueOf(await sheetTextIn({ href, key: one }))).to.equal(writeSheetText(sheet));
    expect(valueOf(await sheetTextIn({ href, key: two }))).to.equal(writeSheetText(other));
  });

  it('is refused where the sheet is too long for one', async () => {
    const problem = async (own: ScenarioSheet): Promise<Problem | undefined> => {
      const outcome = await linkTo(own, { href: page, key });
      return outcome.ok ? undefined : outcome.problems[0];
    };
    const withFormulas = (count: number, formula: (index: number) => string): ScenarioSheet => ({
      ...sheet,
      rows: Array.from({ length: count }, (_, index) => ({ id: `row_${index}`, name: '', formula: formula(index) })),
    });
    const simple = '1 + '.repeat(400);
    expect(await problem(withFormulas(36, () => simple))).to.equal(undefined);
    const { characters } = sheetTextLimits;
    const tooLong = { path: 'link', code: 'too-long' };
    expect(await problem(withFormulas(41, () => simple))).to.deep.include({
      ...tooLong,
      allowed: { most: characters },
    });
    const random = noise(30_000);
    const part = (index: number): string => random.slice(index * 1500, (index + 1) * 1500);
    expect(await problem(withFormulas(20, part))).to.deep.include({ ...tooLong, allowed: { most: 16_000 } });
  });
});

describe('an address without a sheet', () => {
  for (const hash of [
    '',
    '#',
    '#top',
    '#a=1',
    '#weekwright',
    '#weekwright-two=1.x',
    '#my-weekwright=1.x',
    '#a=weekwright=1.',
  ])
    it(`ending in "${hash}" has none`, async () => {
      expect(await read(page + hash)).to.deep.equal({ ok: true, value: null });
    });
});

describe('a link that cannot be read says why:', () => {
  it('a newer version', async () => {
    for (const [value, version] of [
      ['3.abc', 3],
      ['10.', 10],
      [`999999999.${'x'.repeat(20_000)}`, 999_999_999],
    ] as const)
      expect(await problemOf(withSheet(value))).to.deep.equal({
        path: 'link',
        value: version,
        code: 'newer-version',
        allowed: { most: 2 },
      });
  });

  for (const value of [
    '',
    '1',
    '1.',
    '0.abc',
    '01.abc',
    '-1.abc',
    'abc',
    '1u.abc',
    '9999999999.a',
    '1.A',
    '1.ab cd',
    '1.ab%20cd',
    '1.ab+/',
    '1.abcd==',
    '1.é',
    '1.AAAA',
    '1.eJw',
  ])
    it(`damaged, as "${value}" is`, async () => {
      const problem = { path: 'link', value, code: 'damaged', allowed: {} };
      expect(await problemOf(withSheet(value))).to.deep.equal(problem);
    });

  it('cut off anywhere', async () => {
    const href = await linkAt(page);
    const start = href.indexOf('1.') + 2;
    for (let end = start; end < href.length; end += 7)
      expect((await problemOf(href.slice(0, end)))?.code, `cut at ${end}`).to.equal('damaged');
  });

  it('any letter another one: never another sheet', async () => {
    const href = await linkAt(page);
    const text = writeSheetText(sheet);
    let damaged = 0;
    for (let at = href.indexOf('1.') + 2; at < href.length; at += 1) {
      const outcome = await read(href.slice(0, at) + (href[at] === 'A' ? 'B' : 'A') + href.slice(at + 1));
      if (outcome.ok) expect(outcome.value, `letter ${at}`).to.equal(text);
      else expect(outcome.problems[0]?.code).to.equal('damaged');
      damaged += outcome.ok ? 0 : 1;
    }
    expect(damaged).to.be.greaterThan(200);
  });

  it('more behind it than belongs to it', async () => {
    expect((await problemOf(`${await linkAt(page)}AAAA`))?.code).to.equal('damaged');
  });

  it('bytes that are no text', async () => {
    const stream = new Blob([Uint8Array.of(0xff, 0xfe, 0x80)]).stream().pipeThrough(new CompressionStream('deflate'));
    const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
    expect((await problemOf(withSheet(`1.${textOf(bytes)}`)))?.code).to.equal('damaged');
  });

  it('too long a text, by one character', async () => {
    const { characters } = sheetTextLimits;
    for (const length of [characters - 1, characters])
      expect(valueOf(await read(withSheet(await packed('é'.repeat(length)))))).to.have.lengthOf(length);
    const problem = await problemOf(withSheet(await packed('é'.repeat(characters + 1))));
    expect(problem).to.deep.include({ code: 'too-long', allowed: { most: characters } });
  });

  it('too long a link, by one character', async () => {
    for (const [length, code] of [
      [15_999, 'damaged'],
      [16_000, 'damaged'],
      [16_001, 'too-long'],
    ] as const)
      expect((await problemOf(withSheet(`1.${'x'.repeat(length)}`)))?.code).to.equal(code);
  });
});

describe('a text that unpacks to very much', () => {
  const megabyte = 1_000_000;
  let bomb = new Uint8Array();
  before(async () => {
    const zeros = new Blob(Array.from({ length: 100 }, () => new Uint8Array(megabyte)));
    const stream = zeros.stream().pipeThrough(new CompressionStream('deflate'));
    bomb = new Uint8Array(await new Response(stream).arrayBuffer());
  });

  /** The bytes that come out of the browser's unpacking while `act` runs. */
  async function unpackedDuring(act: () => Promise<unknown>): Promise<number> {
    const Original = DecompressionStream;
    let bytes = 0;
    class Counting {
      readonly readable: ReadableStream<Uint8Array>;
      readonly writable: WritableStream<BufferSource>;
      constructor(format: CompressionFormat) {
        const inner = new Original(format);
        const count = new TransformStream<Uint8Array, Uint8Array>({
          transform(chunk, controller) {
            bytes += chunk.length;
            controller.enqueue(chunk);
          },
        });
        this.writable = inner.writable;
        this.readable = inner.readable.pipeThrough(count);
      }
    }
    Object.assign(globalThis, { DecompressionStream: Counting });
    try {
      await act();
    } finally {
      Object.assign(globalThis, { DecompressionStream: Original });
    }
    return bytes;
  }

  it('is refused by its length: 100 MB of zeros do not fit into a link', async () => {
    const href = withSheet(`1.${textOf(bomb)}`);
    expect(await unpackedDuring(async () => expect((await problemOf(href))?.code).to.equal('too-long'))).to.equal(0);
  });

  it('is left as soon as it is too long', async () => {
    const bytes = await unpackedDuring(async () => {
      expect(await decompressed(bomb, sheetTextLimits.characters)).to.equal(null);
    });
    expect(bytes).to.be.within(sheetTextLimits.characters + 1, megabyte);
  });

  it('is left in a link of allowed length too', async () => {
    const href = withSheet(await packed('0'.repeat(10 * megabyte)));
    expect(href.length).to.be.lessThan(16_000);
    const bytes = await unpackedDuring(async () => expect((await problemOf(href))?.code).to.equal('too-long'));
    expect(bytes).to.be.within(sheetTextLimits.characters + 1, megabyte);
  });
});

describe('a block as an HTML table', () => {
  const texts = ['<script>alert(1)</script>', '"&amp;"', "it's", 'a\r\nb', '</td></table>', '=1+1', ''];
  const block: TableBlock = { caption: '<i>x', head: ['', ...texts], rows: [{ head: '<td>', cells: [...texts] }] };
  const shown = texts.map((text) => (text.startsWith('=') ? `'${text}` : text));

  it('reads back as the same texts', () => {
    const { body } = new DOMParser().parseFromString(tableHtml(block, String), 'text/html');
    const textsOf = (selector: string): (string | null)[] =>
      [...body.querySelectorAll(selector)].map(({ textContent }) => textContent);
    expect(textsOf('caption')).to.deep.equal(['<i>x']);
    expect(textsOf('thead th[scope=col]')).to.deep.equal(['', ...shown]);
    expect(textsOf('tbody th[scope=row]')).to.deep.equal(['<td>']);
    expect(textsOf('tbody td')).to.deep.equal(shown);
    expect(body.querySelectorAll('script, i')).to.have.lengthOf(0);
    expect(body.children).to.have.lengthOf(1);
  });
});
