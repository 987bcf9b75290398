import { expect, nextFrame } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import type { SheetPage } from '../sheet/sheet-page.js';
import { openPlace, panelNames, places } from './places.js';

/** Everything of a planner that Tab has to reach: a grid and a group of radio buttons have one stop each. */
function controlsOf(page: SheetPage): HTMLElement[] {
  const reached = 'button, select, input, summary, textarea, a[href], [tabindex="0"]';
  return page
    .all(`:is(${reached}):not([tabindex="-1"], input[type="radio"]:not(:checked), :disabled)`)
    .filter((each) => each.checkVisibility({ visibilityProperty: true }));
}

const named = (each: Element): string => each.outerHTML.replace(/\s+/g, ' ').slice(0, 140);

/** Places of what is in the window of a control: its middle, and near its corners. */
function places5(box: DOMRect): [number, number][] {
  const [left, top] = [Math.max(0, box.left), Math.max(0, box.top)];
  const [width, height] = [Math.min(innerWidth, box.right) - left, Math.min(innerHeight, box.bottom) - top];
  return [
    [0.5, 0.5],
    [0.15, 0.25],
    [0.85, 0.25],
    [0.15, 0.75],
    [0.85, 0.75],
  ].map(([x = 0, y = 0]) => [left + x * width, top + y * height]);
}

/** What of it is in the window is seen at one place at least: WCAG 2.2, success criterion 2.4.11. */
function isSeen(page: SheetPage, control: Element): boolean {
  return places5(control.getBoundingClientRect()).some(([x, y]) => {
    const top = page.root.elementFromPoint(x, y);
    return top !== null && (control.contains(top) || top.contains(control)) && top !== page.find('.planner');
  });
}

/** Its own outline, or that of the entry around it, which a field takes for its own. */
function hasOutline(control: Element): boolean {
  return [control, control.closest('.entry')].some((each) => {
    const style = each && getComputedStyle(each);
    return style !== null && style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
  });
}

interface Walk {
  readonly reached: ReadonlySet<Element>;
  readonly hidden: readonly string[];
  readonly bare: readonly string[];
  readonly isOut: boolean;
}

/** Firefox scrolls to what has the focus a little later. */
async function comesInSight(page: SheetPage, control: Element): Promise<boolean> {
  for (let frame = 0; frame < 6 && !isSeen(page, control); frame += 1) await nextFrame();
  return isSeen(page, control);
}

/** One stop back, and on again the same way: on a busy machine Firefox now and then does not scroll at all. */
async function comeAgain(key: 'Tab' | 'Shift+Tab'): Promise<void> {
  const [turn, turnBack] = key === 'Tab' ? (['down', 'up'] as const) : (['up', 'down'] as const);
  await sendShift(turn);
  await sendKeys({ press: 'Tab' });
  await sendShift(turnBack);
  await sendKeys({ press: 'Tab' });
}

const sendShift = (way: 'down' | 'up'): Promise<void> => sendKeys(way === 'down' ? { down: 'Shift' } : { up: 'Shift' });

/** From before a planner by Tab through all of it, and out again. */
async function walk(page: SheetPage, most: number, key: 'Tab' | 'Shift+Tab'): Promise<Walk> {
  const [reached, hidden, bare] = [new Set<Element>(), new Set<string>(), new Set<string>()];
  if (key === 'Shift+Tab') await sendShift('down');
  for (let press = 0; press < most; press += 1) {
    await sendKeys({ press: 'Tab' });
    const now = page.root.activeElement;
    if (!now) break;
    reached.add(now);
    if (!(await comesInSight(page, now))) {
      await comeAgain(key);
      if (page.root.activeElement !== now || !(await comesInSight(page, now))) hidden.add(named(now));
    }
    if (!hasOutline(now)) bare.add(named(now));
  }
  if (key === 'Shift+Tab') await sendShift('up');
  return { reached, hidden: [...hidden], bare: [...bare], isOut: page.root.activeElement === null };
}

after(() => setViewport({ width: 800, height: 600 }));

for (const [width, height] of [
  [1000, 600],
  [320, 480],
] as const)
  describe(`by Tab through everything, ${String(width)} × ${String(height)} pixels`, () => {
    before(() => setViewport({ width, height }));

    for (const panel of panelNames)
      for (const key of ['Tab', 'Shift+Tab'] as const)
        it(`${panel}, by ${key}`, async () => {
          const page = await openPlace(panel, 'open');
          const outside = document.createElement('button');
          if (key === 'Tab') document.body.prepend(outside);
          else document.body.append(outside);
          outside.focus();
          const controls = controlsOf(page);
          expect(controls.length).to.be.greaterThan(2);
          let walked: Walk | null = null;
          const heard = await page.heard(async () => {
            // A date has several stops of its own.
            walked = await walk(page, controls.length * 2 + 20, key);
          });
          outside.remove();
          const { reached, hidden, bare, isOut } = walked ?? (await walk(page, 0, key));
          expect(
            controls.filter((each) => !reached.has(each)).map(named),
            `${places[panel].root} not reached`,
          ).to.deep.equal([]);
          expect([hidden, bare], 'covered, or without an outline').to.deep.equal([[], []]);
          expect([isOut, heard], 'out again, and nothing changed').to.deep.equal([true, []]);
        });
  });
