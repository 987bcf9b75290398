import { expect } from '@open-wc/testing';
import { openEmpty, type BuiltPage } from './built-page.js';

const fallback = '<table><caption>Four hours</caption><tr><th>Strength</th><td>75 minutes</td></tr></table>';

/** The style that the README gives for the time before the script has run. */
async function documentedStyle(): Promise<string> {
  const readme = await (await fetch('/README.md')).text();
  const [, style] = /### Before the script has run.*?```css\n(.*?)```/s.exec(readme) ?? [];
  if (!style) throw new Error('the README has no such style');
  return style;
}

async function openStyled(width: number): Promise<BuiltPage> {
  const page = await openEmpty();
  page.frame.width = String(width);
  const sheet = new page.window.CSSStyleSheet();
  sheet.replaceSync(`${await documentedStyle()} body { margin: 0 }`);
  page.document.adoptedStyleSheets.push(sheet);
  page.put('hours="4"', fallback);
  page.document.body.insertAdjacentHTML('beforeend', '<p>What follows</p>');
  return page;
}

const placeOfNext = (page: BuiltPage): number => page.document.querySelector('p')?.getBoundingClientRect().top ?? NaN;

describe('before the script has run', () => {
  it('what stands between the tags is shown, and the planner in its place afterwards', async () => {
    const page = (await openEmpty()).put('', fallback);
    const table = page.document.querySelector('table');
    expect(table?.checkVisibility()).to.equal(true);
    expect(table?.getBoundingClientRect().height).to.be.greaterThan(20);
    await page.load('/weekwright.js');
    expect(table?.getBoundingClientRect().height).to.equal(0);
    expect(page.planner.getBoundingClientRect().height).to.be.greaterThan(300);
  });

  for (const width of [360, 1000])
    it(`there is the room that the planner takes, by the documented style, ${String(width)} pixels`, async () => {
      const page = await openStyled(width);
      const before = placeOfNext(page);
      await page.load('/weekwright.js');
      await page.rests();
      // What follows is below the window all the while, and moves by less than a tenth of what is reserved.
      expect(before).to.be.greaterThan(600);
      expect(Math.abs(placeOfNext(page) - before)).to.be.lessThan(before / 10);
    });
});
