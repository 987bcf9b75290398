import { expect } from '@open-wc/testing';
import { resetMouse, sendMouse, setViewport } from '@web/test-runner-commands';
import type { SheetPage } from '../sheet/sheet-page.js';
import { collapsed } from '../text.js';
import { openPlace, panelNames, places } from './places.js';

const sliders = (page: SheetPage, root: string): HTMLInputElement[] =>
  page.all<HTMLInputElement>(`${root} input[type="range"]:not(:disabled)`).filter((each) => each.checkVisibility());

const shareOf = ({ valueAsNumber, min, max }: HTMLInputElement): number =>
  (valueAsNumber - Number(min)) / (Number(max) - Number(min));

/** Presses once at a share of the width of a slider. */
async function pressAt(slider: HTMLInputElement, share: number): Promise<void> {
  slider.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = slider.getBoundingClientRect();
  await sendMouse({ type: 'click', position: [Math.round(left + share * width), Math.round(top + height / 2)] });
}

before(() => setViewport({ width: 1000, height: 700 }));
after(() => setViewport({ width: 800, height: 600 }));
afterEach(() => resetMouse());

// WCAG 2.2, success criterion 2.5.7: what can be dragged can be done by single presses.
describe('every slider goes where it is pressed once', () => {
  for (const panel of ['split', 'sheet', 'week', 'season', 'strength'] as const)
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      const { root } = places[panel];
      const count = sliders(page, root).length;
      expect(count).to.be.greaterThan(0);
      for (let place = 0; place < count; place += 1)
        for (const share of [0.25, 0.75]) {
          const slider = sliders(page, root)[place];
          if (!slider) continue; // what another one set has taken it away
          const name = slider.getAttribute('aria-labelledby') ?? slider.id;
          await pressAt(slider, share);
          await page.settled();
          const now = sliders(page, root)[place];
          // Choices have few places to stand at.
          if (now) expect(shareOf(now), `${name} at ${String(share)}`).to.be.closeTo(share, 0.2);
        }
    });
});

it('a card of the week has a button for every day', async () => {
  const page = await openPlace('week', 'open');
  const buttons = page.all('#board-tools .moves button').map(collapsed);
  expect(buttons.map((text) => text.split(' ')[0])).to.deep.equal(
    'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' '),
  );
});

describe('a file that can be dropped can be chosen', () => {
  for (const panel of ['record', 'handout'] as const)
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      const [file] = page.all(`${places[panel].root} input[type="file"]`);
      expect(file?.checkVisibility()).to.equal(true);
    });
});

describe('nothing else takes gestures for itself', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      const taken = page
        .all(`${places[panel].root} *`)
        .filter((each) => each.checkVisibility() && getComputedStyle(each).touchAction === 'none');
      expect(
        taken.filter((each) => !each.matches('.grip')).map(({ outerHTML }) => outerHTML.slice(0, 100)),
      ).to.deep.equal([]);
    });
});
