import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { describeWithMedia } from '../media.js';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

/** A sheet in a column of a page, with two scenarios and much of it open. */
async function openAll(width: number, attributes = ''): Promise<SheetPage> {
  const page = await openSheet(`hours="9.75" phase="base" ${attributes}`);
  page.element.style.inlineSize = `${String(width)}px`;
  await page.settled();
  await page.click(page.at('.toolbar button', 0));
  for (const question of ['sweep', 'backwards', 'influence'] as const) await page.askSheet(question);
  await page.override('strength_minutes', 1, '100');
  await page.click(page.find('.sheet > .act'));
  await page.open(page.cell('strength_minutes', 1));
  await page.fill(page.formula, '2 * strenght_cap');
  return page.until(() => page.formula.ariaInvalid === 'true', 'the error is told');
}

/** What reaches out of the planner and does not scroll inside it. */
function misfits(page: SheetPage): string[] {
  const frame = page.element.getBoundingClientRect();
  return page
    .all('.sheet *:not(option, svg *)')
    .filter((each) => each.checkVisibility({ visibilityProperty: true }))
    .filter((each) => !each.closest('.visually-hidden, .scroll, .columns-box, svg'))
    .filter((each) => {
      const { left, right } = each.getBoundingClientRect();
      return left < frame.left - 1 || right > frame.right + 1;
    })
    .map((each) => `${each.tagName} ${each.className} ${each.id}`);
}

/** Texts that are cut off by their own box. */
function cut(page: SheetPage): string[] {
  return (
    page
      .all('.sheet *:not(option, input, select, textarea, svg *)')
      .filter((each) => each.checkVisibility({ visibilityProperty: true }))
      // The names inside the drawing end in dots where they are long; the line under it has them whole.
      .filter((each) => !each.closest('.visually-hidden, .scroll, .columns-box, .sweep-plot'))
      .filter((each) => {
        const { overflowX, overflowY } = getComputedStyle(each);
        const hides = overflowX === 'hidden' || overflowX === 'clip' || overflowY === 'hidden' || overflowY === 'clip';
        return hides && (each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1);
      })
      .map((each) => `${each.tagName} ${each.className} ${each.id}`)
  );
}

const fits = (page: SheetPage): void => {
  expect(misfits(page)).to.deep.equal([]);
  expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
  expect(cut(page)).to.deep.equal([]);
};

describe('a sheet fits', () => {
  before(() => setViewport({ width: 1300, height: 900 }));
  after(() => setViewport({ width: 800, height: 600 }));

  for (const width of [320, 360, 500, 640, 900, 1200])
    for (const lang of ['en', 'de'])
      it(`into ${String(width)} pixels, ${lang}, with much open`, async () => {
        const page = await openAll(width, `lang="${lang}"`);
        fits(page);
        const box = page.find('.columns-box');
        expect(box.scrollWidth, 'two scenarios need no scrolling').to.be.at.most(box.clientWidth);
      });

  for (const width of [320, 640, 1000])
    it(`into ${String(width)} pixels with six scenarios`, async () => {
      const page = await openAll(width);
      for (let time = 0; time < 4; time += 1) await page.click(page.at('.toolbar button', 0));
      expect(page.all('.grid thead th')).to.have.length(7);
      fits(page);
    });

  it('into 320 pixels with spaced text', async () => {
    const page = await openAll(320);
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    await page.settled();
    fits(page);
  });

  for (const width of [640, 900])
    it(`into ${String(width)} pixels at twice the size of type`, async () => {
      const page = await openSheet('hours="9.75"');
      page.element.style.cssText = `inline-size: ${String(width)}px; font-size: 200%`;
      await page.click(page.at('.toolbar button', 0));
      for (const question of ['sweep', 'backwards', 'influence'] as const) await page.askSheet(question);
      await page.open(page.cell('strength_minutes', 1));
      fits(page);
    });

  it('from right to left', async () => {
    fits(await openAll(320, 'lang="ar"'));
    fits(await openAll(900, 'lang="ar"'));
  });
});

describe('on a phone', () => {
  before(() => setViewport({ width: 360, height: 740 }));
  after(() => setViewport({ width: 800, height: 600 }));

  const inSight = (page: SheetPage, selector: string): HTMLElement[] =>
    page.all(selector).filter((each) => {
      const { width, height } = each.getBoundingClientRect();
      return width > 1 && height > 1 && each.checkVisibility({ visibilityProperty: true });
    });
  const columns = (page: SheetPage): string[] => inSight(page, '.grid thead th[data-role]').map(collapsed);

  async function openThree(): Promise<SheetPage> {
    const page = await openSheet('hours="4" phase="base"', 'sheet');
    await page.add(2);
    await page.set(2, 'hours', 6);
    page.all<HTMLInputElement>('.chooser input')[1]?.click();
    await page.settled();
    await page.set(1, 'hours', 5);
    return page;
  }

  it('one scenario is seen with the one it is compared with, and its inputs alone', async () => {
    const page = await openThree();
    expect(columns(page)).to.deep.equal(['4 h, base', '5 h, base']);
    expect(inSight(page, '.inputs-table input[type="range"]')).to.have.length(4);
    expect(inSight(page, '.grid td[data-row="strength_minutes"]').map(collapsed)).to.deep.equal(['72', '90 +18']);
  });

  it('another is chosen by its name', async () => {
    const page = await openThree();
    const radios = page.all<HTMLInputElement>('.chooser input');
    expect(inSight(page, '.chooser label').map(collapsed)).to.deep.equal(['4 h, base', '5 h, base', '6 h, base']);
    radios[1]?.focus();
    await page.press('ArrowDown');
    expect(page.hasFocus(radios[2])).to.equal(true);
    expect(columns(page)).to.deep.equal(['4 h, base', '6 h, base']);
    expect(inSight(page, '.chooser label:has(:checked)').map(collapsed)).to.deep.equal(['6 h, base']);
  });

  it('the reference is seen beside the next one', async () => {
    const page = await openThree();
    page.all<HTMLInputElement>('.chooser input')[0]?.click();
    await page.settled();
    expect(columns(page)).to.deep.equal(['4 h, base', '5 h, base']);
    expect(inSight(page, '.inputs-table th[data-role]').length).to.equal(1);
  });

  it('the arrows of the grid stop at no cell out of sight', async () => {
    const page = await openThree();
    await page.goTo(page.cell('slow_minutes', 0));
    await page.press('End');
    const focused = page.root.activeElement;
    expect(focused?.checkVisibility({ visibilityProperty: true }), page.focus).to.equal(true);
    expect(focused?.getBoundingClientRect().width).to.be.greaterThan(10);
  });

  it('the focus is not lost with a copy', async () => {
    const page = await openThree();
    await page.chooseFromMenu(1, 'Copy');
    expect(page.root.activeElement?.tagName).to.equal('SUMMARY');
  });

  it('targets are 24 by 24 pixels at least', async () => {
    const page = await openThree();
    const targets = inSight(page, '.sheet :is(button, select, summary, input:not([type="radio"])), .chooser label');
    expect(targets.length).to.be.greaterThan(15);
    const small = targets.filter((each) => {
      const { width, height } = each.getBoundingClientRect();
      return Math.min(width, height) < 24;
    });
    expect(small.map((each) => each.outerHTML)).to.deep.equal([]);
  });
});

describe('nothing jumps while a slider of a column moves', () => {
  for (const width of [360, 900])
    it(`in ${String(width)} pixels`, async () => {
      const page = await openSheet('hours="4" phase="base"', 'sheet');
      page.element.style.inlineSize = `${String(width)}px`;
      await page.add();
      // On a phone the difference of the last share can take a line more, under everything else that is open.
      const last = width < 640 ? 'group rules' : 'nothing';
      const tops = (): string[] => {
        const all = page.all('.sheet :is(input[type="range"], th[data-row], button)').map((each) => {
          const top = Math.round(each.getBoundingClientRect().top - page.element.getBoundingClientRect().top);
          return `${each.dataset['row'] ?? each.tagName} ${String(top)}`;
        });
        const end = all.findIndex((line) => line.startsWith(last));
        return end === -1 ? all : all.slice(0, end);
      };
      const before = tops();
      const slider = page.input(1, 'hours');
      for (const hours of [8, 4.25, 1, 0.5, 12.75, 20]) {
        await page.slide(slider, hours);
        expect(tops(), `${String(hours)} hours`).to.deep.equal(before);
      }
    });
});

describeWithMedia('with forced colours', { 'forced-colors': 'active' }, () => {
  it('what is set by hand still has its mark and its weight, and what is open its edge', async () => {
    const page = await openSheet('hours="8" phase="base"', 'sheet');
    await page.override('strength_minutes', 0, '100');
    const cell = page.cell('strength_minutes');
    const mark = getComputedStyle(cell, '::before');
    const ground = getComputedStyle(page.find('.planner')).backgroundColor;
    expect(mark.content).to.equal('""');
    expect(mark.borderTopWidth).to.equal('5px');
    expect(mark.borderTopColor).to.not.equal(ground);
    expect(getComputedStyle(cell).fontWeight).to.equal('600');
    expect(getComputedStyle(page.cell('slow_minutes')).fontStyle).to.equal('italic');
    await page.open(cell);
    expect(getComputedStyle(cell).outlineStyle).to.equal('solid');
  });
});
