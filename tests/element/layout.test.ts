import { expect, waitUntil } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { eventIds, levelIds } from '../../src/core.js';
import { openPlanner, type PlannerPage } from './planner-page.js';

/** A planner in a column of a page. */
async function openIn(width: number, attributes = ''): Promise<PlannerPage> {
  const page = await openPlanner(attributes);
  const { style } = page.element;
  style.inlineSize = `${String(width)}px`;
  return page.settled();
}

const open = async (page: PlannerPage): Promise<PlannerPage> => {
  page.find<HTMLDetailsElement>('.cautions').open = true;
  await waitUntil(() => page.all('.cautions li').length > 0, 'the lines come');
  await page.type('hours', 'abc');
  return page.ask('strength_rounded');
};

/** What reaches out of the planner, or is cut off inside it. */
function misfits(page: PlannerPage): string[] {
  const frame = page.element.getBoundingClientRect();
  const visible = page
    .all('.planner *:not(option)')
    .filter((each) => each.checkVisibility() && !each.closest('.visually-hidden, svg'));
  return visible.filter((each) => isMisfit(each, frame)).map((each) => `${each.tagName} ${each.className} ${each.id}`);
}

function isMisfit(each: HTMLElement, frame: DOMRect): boolean {
  const { left, right } = each.getBoundingClientRect();
  const reachesOut = left < frame.left - 1 || right > frame.right + 1;
  const { overflowX, overflowY } = getComputedStyle(each);
  // A list and a text field scroll what they hold; everything else has to show it.
  const cuts = (overflowX !== 'visible' || overflowY !== 'visible') && !/^(?:SELECT|INPUT)$/.test(each.tagName);
  return reachesOut || (cuts && (each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1));
}

describe('a planner fits', () => {
  before(() => setViewport({ width: 1300, height: 900 }));
  after(() => setViewport({ width: 800, height: 600 }));

  for (const width of [320, 360, 500, 640, 900, 1200])
    for (const lang of ['en', 'de'])
      it(`into ${String(width)} pixels, ${lang}, with all open`, async () => {
        const page = await open(await openIn(width, `lang="${lang}" hours="9.75" phase="off-season" event="longer"`));
        expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
        expect(misfits(page)).to.deep.equal([]);
      });

  for (const lang of ['en', 'de', 'fr', 'es', 'ar'])
    it(`into a phone beside the margins of a page that has larger type, ${lang}`, async () => {
      const page = await openIn(280, `lang="${lang}" hours="9.75" phase="off-season" event="longer"`);
      page.element.style.font = '20px serif';
      await open(page);
      expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
      expect(misfits(page)).to.deep.equal([]);
    });

  for (const holder of ['<dialog open>', '<div style="display: flex">', '<div style="float: left">'])
    it(`into what takes the width of its content: ${holder}`, async () => {
      const page = await openPlanner();
      const place = document.createElement('div');
      document.body.append(place);
      place.innerHTML = holder;
      place.firstElementChild?.append(page.element);
      expect(page.element.clientWidth).to.be.at.least(300);
      expect(misfits(page)).to.deep.equal([]);
      place.remove();
    });

  it('into 320 pixels with faulty attributes', async () => {
    const page = await openIn(320, `hours="40" phase="${'long'.repeat(30)}"`);
    expect(misfits(page)).to.deep.equal([]);
  });

  it('into 320 pixels with spaced text', async () => {
    const page = await open(await openIn(320, 'hours="9.75"'));
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    expect(misfits(page)).to.deep.equal([]);
    expect(overlaps(page)).to.deep.equal([]);
  });

  for (const width of [640, 900])
    it(`into ${String(width)} pixels at twice the size of type`, async () => {
      const page = await openIn(width, 'hours="9.75" event="longer"');
      page.element.style.fontSize = '200%';
      await open(page);
      expect(misfits(page)).to.deep.equal([]);
      expect(overlaps(page)).to.deep.equal([]);
    });
});

/** Pairs of texts in the ring that lie on one another. */
function overlaps(page: PlannerPage): string[] {
  const texts = page.all('.ring-label, .ring-middle').map((each) => ({ box: each.getBoundingClientRect(), each }));
  return texts.flatMap(({ box, each }, index) =>
    texts
      .slice(index + 1)
      .filter(
        ({ box: other }) =>
          box.left < other.right && other.left < box.right && box.top < other.bottom && other.top < box.bottom,
      )
      .map(({ each: other }) => `${each.textContent.trim()} / ${other.textContent.trim()}`),
  );
}

describe('targets are 24 by 24 pixels at least', () => {
  for (const width of [320, 900])
    it(`in ${String(width)} pixels`, async () => {
      const page = await open(await openIn(width, 'hours="8"'));
      const targets = page.all('button, input, select, summary').filter((each) => each.checkVisibility());
      expect(targets.length).to.be.greaterThan(25);
      const small = targets.filter((each) => {
        const { width: across, height } = each.getBoundingClientRect();
        return across < 24 || height < 24;
      });
      expect(small.map((each) => each.outerHTML)).to.deep.equal([]);
    });
});

describe('nothing jumps while a slider moves', () => {
  const tops = (page: PlannerPage): string => {
    const { top } = page.element.getBoundingClientRect();
    return page
      .all('input[type="range"], .typed, .step, select:not(.week *)')
      .map((each) => Math.round(each.getBoundingClientRect().top - top))
      .join();
  };

  for (const [width, lang] of [
    [320, 'en'],
    [360, 'en'],
    [360, 'de'],
    [640, 'de'],
    [900, 'en'],
    [900, 'de'],
  ] as const)
    describe(`in ${String(width)} pixels, ${lang}`, () => {
      it('when hours go from 4 to 8 to 1', async () => {
        const page = await openIn(width, `lang="${lang}" hours="4"`);
        const before = tops(page);
        for (const hours of [8, 1, 0.5, 12.75, 20, 4.25, 1.75]) {
          await page.drag('hours', hours);
          expect(tops(page), `${String(hours)} hours`).to.equal(before);
        }
      });

      it('when phase, level and event change', async () => {
        const page = await openIn(width, `lang="${lang}" hours="9.75"`);
        const before = tops(page);
        for (const phase of page.list('phase').options) {
          await page.drag('phase', phase.index);
          expect(tops(page), phase.value).to.equal(before);
        }
        for (const index of levelIds.keys()) await page.drag('level', index);
        for (const index of eventIds.keys()) await page.choose(page.list('event'), index);
        expect(tops(page)).to.equal(before);
      });
    });

  it('the rows of the table keep their places', async () => {
    const page = await openIn(900, 'hours="4"');
    const top = (each: Element): number => each.getBoundingClientRect().top;
    const rows = (): number[] => page.all('.week tr').map((row) => Math.round(top(row) - top(page.element)));
    const before = rows();
    for (const hours of [8, 1, 0.5]) {
      await page.drag('hours', hours);
      expect(rows(), `${String(hours)} hours`).to.deep.equal(before);
    }
  });
});
