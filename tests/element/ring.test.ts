import { expect } from '@open-wc/testing';
import { openPlanner, type PlannerPage } from './planner-page.js';

interface Circle {
  readonly x: number;
  readonly y: number;
  /** From the middle to the inner and to the outer edge of the ring, on the screen. */
  readonly inner: number;
  readonly outer: number;
}

function circleOf(page: PlannerPage): Circle {
  const svg = page.find<SVGSVGElement>('.ring svg').getBoundingClientRect();
  const arc = page.find<SVGCircleElement>('.arc');
  const scale = svg.width / page.find<SVGSVGElement>('.ring svg').viewBox.baseVal.width;
  const [radius, half] = [arc.r.baseVal.value, Number.parseFloat(getComputedStyle(arc).strokeWidth) / 2];
  return {
    x: svg.left + svg.width / 2,
    y: svg.top + svg.height / 2,
    inner: (radius - half) * scale,
    outer: (radius + half) * scale,
  };
}

/** Boxes of the letters in an element, line by line: a line is a little higher than its letters. */
function lines(element: Element): DOMRect[] {
  const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const boxes: DOMRect[] = [];
  while (texts.nextNode()) {
    const range = document.createRange();
    range.selectNodeContents(texts.currentNode);
    for (const { x, y, width, height } of range.getClientRects())
      boxes.push(new DOMRect(x, y + height * 0.2, width, height * 0.6));
  }
  return boxes;
}

function distances({ x, y }: Circle, { left, right, top, bottom }: DOMRect): { nearest: number; farthest: number } {
  const [dx, dy] = [Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom)];
  const [farX, farY] = [Math.max(x - left, right - x), Math.max(y - top, bottom - y)];
  return { nearest: Math.hypot(dx, dy), farthest: Math.hypot(farX, farY) };
}

describe('the words of the ring keep off its parts', () => {
  for (const width of [320, 360, 700, 1100])
    for (const lang of ['en', 'de'])
      it(`in ${String(width)} pixels, ${lang}`, async () => {
        const page = await openPlanner(`lang="${lang}"`);
        page.element.style.inlineSize = `${String(width)}px`;
        for (const [hours, phase] of [
          [4, 2],
          [19.75, 0],
          [0.5, 2],
          [1.25, 5],
          [9.75, 4],
        ] as const) {
          await page.drag('hours', hours);
          await page.drag('phase', phase);
          const circle = circleOf(page);
          const at = `${String(hours)} h, phase ${String(phase)}`;
          for (const line of lines(page.find('.ring-middle')))
            expect(distances(circle, line).farthest, `${at}, middle`).to.be.at.most(circle.inner + 1);
          for (const label of page.all('.ring-label'))
            for (const line of lines(label))
              expect(distances(circle, line).nearest, `${at}, ${label.textContent}`).to.be.at.least(circle.outer - 1);
        }
      });
});

describe('the parts of the ring', () => {
  it('are as long as the minutes, and fill it', async () => {
    const page = await openPlanner('hours="4"');
    const drawn = page.all('.arc').map((arc) => Number.parseFloat(arc.getAttribute('stroke-dasharray') ?? ''));
    const expected = [70, 35, 25, 35, 75].map((minutes) => minutes / 240);
    for (const [index, share] of expected.entries()) expect(drawn[index]).to.be.closeTo(share, 0.01);
  });

  it('each have their own colour, and their name beside them', async () => {
    const page = await openPlanner('hours="4"');
    const colours = page.all('.arc').map((arc) => getComputedStyle(arc).stroke);
    expect(new Set(colours)).to.have.property('size', 5);
    expect(page.texts('.ring-label > span')).to.have.length(5);
  });
});
