import type { Page } from 'puppeteer-core';
import { describe, expect, test } from 'vitest';
import { demoPages } from './demo-pages.js';
import { useBrowser } from './web.js';

const web = useBrowser();

/** What the focus is on. */
interface Stop {
  /** Its place among everything that Tab has to reach, -1 for anything else. */
  readonly place: number;
  readonly name: string;
  readonly hasOutline: boolean;
  readonly isInSight: boolean;
  readonly isDate: boolean;
}

/** Collects what Tab has to reach, through shadow roots, in the order of the document. */
async function collectControls(page: Page): Promise<number> {
  return page.evaluate(() => {
    const controls: Element[] = [];
    const collect = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        const isControl = element.matches('a[href], button, input, select, summary, textarea, [tabindex="0"]');
        // A grid and a group of radio buttons have one stop each; arrows go on from there.
        const isInside = element.matches('[tabindex="-1"], input[type="radio"]:not(:checked)');
        if (isControl && !isInside && element.checkVisibility()) controls.push(element);
        if (element.shadowRoot) collect(element.shadowRoot);
      }
    };
    collect(document);
    Object.assign(globalThis, { controls });
    return controls.length;
  });
}

async function stop(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const controls: unknown = Reflect.get(globalThis, 'controls');
    let focused = document.activeElement;
    while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
    if (!focused || !Array.isArray(controls)) throw new Error('nothing has the focus');
    const { left, top, right, bottom } = focused.getBoundingClientRect();
    // A card may carry the outline of the link inside it.
    const hasOutline = [focused, focused.closest('.card')].some((each) => {
      const style = each && getComputedStyle(each);
      return style !== null && style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
    });
    return {
      place: controls.indexOf(focused),
      name: `${focused.tagName} ${focused.id} ${focused.textContent.trim().slice(0, 40)}`,
      hasOutline,
      isDate: focused.matches('input[type="date"]'),
      isInSight: left < innerWidth && right > 0 && top < innerHeight && bottom > 0,
    };
  });
}

describe.each(demoPages)('$path by keyboard', ({ path }) => {
  test.each([360, 1280])('Tab reaches everything in order, with a focus in sight, %i pixels', async (width) => {
    const { page, close } = await web.open(path, { width, reducedMotion: true });
    const count = await collectControls(page);
    const stops: Stop[] = [];
    while (stops.length < count) {
      await page.keyboard.press('Tab');
      const next = await stop(page);
      // The browser's own field for dates has a stop for day, month, year and calendar: the same element four times.
      const isWithinDate = next.isDate && next.place === stops.at(-1)?.place;
      if (!isWithinDate) stops.push(next);
    }
    expect(stops.map(({ place }) => place)).toEqual(Array.from({ length: count }, (_, place) => place));
    expect(stops.filter(({ hasOutline, isInSight }) => !hasOutline || !isInSight).map(({ name }) => name)).toEqual([]);

    await page.keyboard.down('Shift');
    await page.keyboard.press('Tab');
    await page.keyboard.up('Shift');
    expect((await stop(page)).place, 'and back').toBe(count - 2);
    await close();
  });
});

test('the skip link of each page leads past the head of the page', async () => {
  for (const { path } of demoPages) {
    const { page, close } = await web.open(path);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.querySelector(':target')?.matches('main, main *'))).toBe(true);
    await close();
  }
});
