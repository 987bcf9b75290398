import { expect, fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { collapsed } from '../text.js';
import { HandoutPage } from './handout-page.js';
import { finish, printing, sizes } from './printer.js';

/** A red square of 8 by 8 dots (BMP), made up. */
function redSquare(): string {
  const [side, head] = [8, 54];
  const bytes = new Uint8Array(head + side * side * 3);
  const view = new DataView(bytes.buffer);
  bytes.set([0x42, 0x4d]);
  const fields = [bytes.length, 0, head, 40, side, side, 1 | (24 << 16)];
  fields.forEach((value, index) => {
    view.setUint32(2 + index * 4, value, true);
  });
  for (let dot = 0; dot < side * side; dot += 1) bytes.set([0, 0, 255], head + dot * 3); // blue, green, red
  return `data:image/bmp;base64,${btoa(String.fromCharCode(...bytes))}`;
}

const name = '<b slot="logo">Lowmere Lamplighters</b>';
const image = (alt: string, attributes = ''): string =>
  `<img slot="logo" alt="${alt}" src="${redSquare()}" ${attributes}>`;
const drawing =
  '<svg slot="logo" class="ours" width="40" height="20"><path class="line" d="M0 0h40v20"/><path d="M0 0h9" fill="currentColor"/></svg>';

async function openWith(content: string): Promise<HandoutPage> {
  const tag = `<weekwright-planner hours="4" phase="base" panels="split handout">${content}</weekwright-planner>`;
  const element = await fixture<WeekwrightPlanner>(tag);
  await Promise.all([...element.querySelectorAll('img')].map((each) => each.decode().catch(() => undefined)));
  const page = new HandoutPage(element);
  await page.until(() => page.has('.handout .panel-title'), 'the panel comes');
  return page;
}

/** The logo as it goes to the printer: its pieces. `look` is called while they are with it. */
async function printedLogo(page: HandoutPage, look: (pieces: Element[]) => void = () => undefined): Promise<Element[]> {
  const [sheet] = await printing(() => page.acts('Print'));
  if (!sheet) throw new Error('nothing is printed');
  expect(sizes(sheet).every(({ width }) => width <= sheet.document.body.clientWidth + 1)).to.equal(true);
  const pieces = [...sheet.document.querySelectorAll('.p-logo > *')];
  look(pieces);
  finish(sheet);
  return pieces;
}

const nameOf = (piece: Element): string => piece.localName;

describe('the logo of a handout', () => {
  it('is none where the page has none, and takes no room', async () => {
    const page = await openWith('');
    expect(await printedLogo(page)).to.deep.equal([]);
    const [header, title] = [page.find('.paper header'), page.find('.paper h3')];
    expect(title.getBoundingClientRect().width).to.equal(header.getBoundingClientRect().width);
  });

  it('has the pictures and the text of the slot in their order, on paper and on its likeness', async () => {
    const page = await openWith(`${image('A lamp')}${name}${drawing}`);
    const pieces = await printedLogo(page);
    expect(pieces.map(nameOf)).to.deep.equal(['canvas', 'b', 'svg']);
    expect(page.all('.paper .p-logo > *').map(nameOf)).to.deep.equal(['canvas', 'b', 'svg']);
    expect(collapsed(page.find('.paper .p-logo'))).to.equal('Lowmere Lamplighters');
  });

  it('draws a picture in its colours, and calls it what the page calls it', async () => {
    const link = `<a slot="logo" href="#top">${image('A lamp').replace('slot="logo"', '')}</a>`;
    await printedLogo(await openWith(link), ([canvas]) => {
      expect([canvas?.role, canvas?.ariaLabel]).to.deep.equal(['img', 'A lamp']);
      const dots = (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(1, 1, 1, 1).data ?? [];
      expect([...dots]).to.deep.equal([255, 0, 0, 255]);
    });
  });

  it('leaves a picture that is only decoration unnamed', async () => {
    const [canvas] = await printedLogo(await openWith(image('')));
    expect([canvas?.role, canvas?.ariaHidden]).to.deep.equal([null, 'true']);
  });

  it('paints a drawing as the page does; what has the colour of its text is ink', async () => {
    const page = await openWith(
      `<style>.ours { color: rgb(250, 250, 250) } .line { fill: none; stroke: rgb(0, 128, 0) }</style>${drawing}`,
    );
    const [svg] = await printedLogo(page);
    const [line, rest] = [...(svg?.querySelectorAll('path') ?? [])].map(({ style }) => [style.fill, style.stroke]);
    expect([line, rest?.[0]]).to.deep.equal([['none', 'rgb(0, 128, 0)'], 'currentcolor']);
    expect(svg?.getAttribute('viewBox')).to.equal('0 0 40 20');
    const shown = page.find('.paper .p-logo svg').getBoundingClientRect();
    expect(shown.width / shown.height).to.be.closeTo(2, 0.1);
  });

  it('leaves the rules of a drawing to the page', async () => {
    const rules =
      '<svg slot="logo" viewBox="0 0 9 9"><style>path { fill: rgb(0, 0, 128) }</style><path d="M0 0h9"/></svg>';
    const page = await openWith(rules);
    const [svg] = await printedLogo(page);
    expect([...(svg?.children ?? [])].map(nameOf)).to.deep.equal(['path']);
    expect(svg?.querySelector('path')?.style.fill).to.equal('rgb(0, 0, 128)');
    expect(page.all('.p-logo style')).to.deep.equal([]);
  });

  it('leaves out what the page hides, as one of two for light and dark', async () => {
    const page = await openWith(`${image('for dark pages', 'style="display: none"')}${image('for light pages')}`);
    expect((await printedLogo(page)).map(({ ariaLabel }) => ariaLabel)).to.deep.equal(['for light pages']);
  });

  it('is on paper alone where the page hides all of it', async () => {
    const page = await openWith(
      `<div slot="logo" style="display: none">${drawing.replace('slot="logo"', '')} Lowmere</div>`,
    );
    expect(page.element.querySelector('div')?.checkVisibility()).to.equal(false);
    const pieces = await printedLogo(page);
    expect(pieces.map(nameOf)).to.deep.equal(['svg', 'b']);
    expect(page.find('.paper .p-logo svg').getBoundingClientRect().height).to.be.greaterThan(10);
  });

  it('stands above the title on a phone, and beside it where there is room', async () => {
    const page = await openWith(
      `<div slot="logo">${drawing.replace('slot="logo"', '')} Lowmere Lamplighters by the Water</div>`,
    );
    const [logo, title] = [page.find('.p-logo'), page.find('.paper h3')];
    for (const [width, isBeside] of [
      ['340px', false],
      ['780px', true],
    ] as const) {
      page.element.style.inlineSize = width;
      await page.settled();
      const [around, beside] = [logo.getBoundingClientRect(), title.getBoundingClientRect()];
      expect(isBeside ? around.left >= beside.right : around.bottom <= beside.top, width).to.equal(true);
      expect(title.clientWidth, width).to.be.greaterThan(200);
    }
  });

  it('does without a picture that does not load, and has one that comes late', async () => {
    const page = await openWith(`<img slot="logo" alt="A lamp" src="data:image/png;base64,none">${name}`);
    expect((await printedLogo(page)).map(nameOf)).to.deep.equal(['b']);
    page.element.querySelector('img')?.setAttribute('src', redSquare());
    await page.element.querySelector('img')?.decode();
    expect((await printedLogo(page)).map(nameOf)).to.deep.equal(['canvas', 'b']);
  });
});
