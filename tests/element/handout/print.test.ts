import { expect } from '@open-wc/testing';
import { needs } from '../instruments.js';
import { collapsed } from '../text.js';
import { openHandout, openWithDays, scene, type HandoutPage } from './handout-page.js';
import { finish, printing, withPrinter, type Printed } from './printer.js';

async function printed(page: HandoutPage, button = 'Print'): Promise<Printed> {
  const [sheet, ...more] = await printing(async () => {
    await page.acts(button);
    await page.settled();
  });
  if (!sheet || more.length > 0) throw new Error(`${String(more.length + (sheet ? 1 : 0))} sheets are printed`);
  return sheet;
}

/** All of the page around a planner that a printout could have touched. */
const around = () => ({
  head: document.head.innerHTML,
  sheets: [...document.adoptedStyleSheets],
  styles: document.styleSheets.length,
  body: [...document.body.children].map(({ outerHTML }) => outerHTML),
  root: document.documentElement.cloneNode(false),
  title: document.title,
});

describe('printing', () => {
  it('is done once, from a frame within the planner, which is gone after it', async () => {
    const page = await openHandout();
    const sheet = await printed(page);
    expect(sheet.frame.getRootNode()).to.equal(page.root);
    expect(page.all('iframe')).to.deep.equal([sheet.frame]);
    finish(sheet);
    await page.settled();
    expect([page.all('iframe'), page.message]).to.deep.equal([[], '']);
  });

  it('touches nothing of the page around the planner', async () => {
    const page = await openHandout();
    const before = around();
    const sheet = await printed(page);
    const during = around();
    finish(sheet);
    await page.settled();
    for (const seen of [during, around()]) {
      expect({ ...seen, root: '' }).to.deep.equal({ ...before, root: '' });
      expect(seen.root.isEqualNode(before.root)).to.equal(true);
    }
  });

  it('prints again, and after that again, also where the browser never tells that it is done', async () => {
    const page = await openHandout();
    const first = await printed(page);
    const second = await printed(page);
    expect(page.all('iframe')).to.deep.equal([second.frame]);
    finish(second);
    expect(page.all('iframe')).to.deep.equal([]);
    const third = await printed(page);
    expect([second.text, third.text]).to.deep.equal([first.text, first.text]);
    finish(third);
  });

  needs('print', () => {
    it('by the browser itself leaves no frame', async () => {
      const page = await openHandout();
      await page.acts('Print');
      await page.until(() => !page.has('iframe'), 'the frame goes');
      expect(page.message).to.equal('');
    });
  });

  it('works from the keyboard, and the focus is back on its button', async () => {
    const page = await openHandout();
    const button = page.handTool('Print');
    const sheets = await printing(async () => {
      await page.goTo(button);
      await page.press('Enter');
      await page.settled();
    });
    expect(sheets).to.have.length(1);
    for (const sheet of sheets) finish(sheet);
    await page.settled();
    expect(page.hasFocus(button)).to.equal(true);
  });

  it('that the browser forbids is said in words, with another way, and leaves no frame', async () => {
    const page = await openHandout();
    const refuse = (): never => {
      throw new DOMException('not here', 'SecurityError');
    };
    await withPrinter(refuse, async () => {
      await page.acts('Print');
      await page.hearsBack('does not let this page print');
    });
    expect(page.all('iframe')).to.deep.equal([]);
    const sheet = await printed(page);
    expect(page.message).to.equal('');
    finish(sheet);
  });

  it('is hidden from eyes, ears and keys while it stands', async () => {
    const page = await openHandout();
    const sheet = await printed(page);
    expect([sheet.frame.getAttribute('aria-hidden'), sheet.frame.tabIndex]).to.deep.equal(['true', -1]);
    expect(sheet.frame.getBoundingClientRect().right).to.be.at.most(0);
    expect(getComputedStyle(sheet.frame).opacity).to.equal('0');
    finish(sheet);
  });
});

describe('a printed sheet', () => {
  it('has a language, a direction, a title, and no script or markup of its own', async () => {
    const page = await openHandout(`${scene} lang="de"`);
    await page.typeIn('handout-name', 'Frühling & <b>mehr</b>');
    const sheet = await printed(page, 'Drucken');
    const { documentElement: root, title } = sheet.document;
    expect([root.lang, root.dir, title]).to.deep.equal(['de', 'ltr', 'Frühling & <b>mehr</b>']);
    expect(sheet.document.querySelectorAll('script, link, img, b b')).to.have.length(0);
    finish(sheet);
  });

  it('is called a training plan until it has a name', async () => {
    const sheet = await printed(await openHandout());
    expect(sheet.document.title).to.equal('Training plan');
    finish(sheet);
  });

  // ISO 216 and ANSI/ASME Y14.1: 210 × 297 mm; 8.5 × 11 inches.
  for (const [paper, size] of [
    ['A4', '210mm 297mm'],
    ['Letter', '215.9mm 279.4mm'],
  ] as const)
    it(`on ${paper} says so to the browser`, async () => {
      const page = await openHandout();
      await page.chooseText(page.selectOf('handout-paper'), paper);
      const sheet = await printed(page);
      expect(sheet.pageRule).to.contain(`size: ${size};`);
      finish(sheet);
    });

  it('is the sheet that is on show', async () => {
    const page = await openWithDays();
    await page.typeIn('handout-runner', 'Anna');
    await page.typeIn('handout-contact', 'Coach');
    await page.writeNote('Easy does it.');
    const sheet = await printed(page);
    expect(sheet.text).to.equal(collapsed(page.find('.handout .paper')));
    finish(sheet);
  });

  it('in black has no colour at all; in colour each kind has its own', async () => {
    const page = await openWithDays();
    const colours = async (): Promise<Set<string>> => {
      const sheet = await printed(page);
      const found = new Set<string>();
      for (const each of sheet.document.body.querySelectorAll('*')) {
        const { color, backgroundColor, borderTopColor, borderInlineStartColor } = getComputedStyle(each);
        for (const colour of [color, backgroundColor, borderTopColor, borderInlineStartColor]) found.add(colour);
      }
      finish(sheet);
      return new Set([...found].filter(isColourful));
    };
    expect(page.optionOf('handout-ink')).to.equal('black only');
    expect([...(await colours())]).to.deep.equal([]);
    await page.chooseText(page.selectOf('handout-ink'), 'in colour');
    const kinds = new Set(page.all('.handout .p-what').map(({ dataset }) => dataset['category']));
    expect((await colours()).size).to.be.at.least(kinds.size);
  });
});

/** A colour that is not grey. */
function isColourful(colour: string): boolean {
  const context = new OffscreenCanvas(1, 1).getContext('2d');
  if (!context) throw new Error('there is no canvas');
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0, alpha = 0] = context.getImageData(0, 0, 1, 1).data;
  return alpha > 0 && Math.max(red, green, blue) - Math.min(red, green, blue) > 8;
}
