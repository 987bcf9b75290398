import type { PlannerPage } from '../planner-page.js';
import { collapsed } from '../text.js';

/** What scrolls within itself; tables of data and lists may. */
const scrollers = '.scroll, .columns-box, .p-scroll, .import-unread';
const named = (each: Element): string =>
  `${each.tagName} ${each.getAttribute('class') ?? ''} ${each.id} ${collapsed(each).slice(0, 40)}`;

/** Everything that is drawn, but for drawings; what is there for listeners alone is clipped to nothing. */
function seen(page: PlannerPage, root: string): HTMLElement[] {
  const unseen = new Set<Element>();
  return page.all(`${root} *:not(option, svg, svg *)`).filter((each) => {
    const isInside = each.parentElement !== null && unseen.has(each.parentElement);
    if (isInside || getComputedStyle(each).clipPath === 'inset(50%)') unseen.add(each);
    return !unseen.has(each) && each.checkVisibility({ visibilityProperty: true });
  });
}

/** What reaches out of the planner, but for what is scrolled in a box of its own. */
export function misfits(page: PlannerPage, root: string): string[] {
  const frame = page.element.getBoundingClientRect();
  return seen(page, root)
    .filter((each) => !each.parentElement?.closest(scrollers))
    .filter((each) => {
      const { left, right } = each.getBoundingClientRect();
      return left < frame.left - 1 || right > frame.right + 1;
    })
    .map(named);
}

/** What is cut off by its own box. Fields and lists scroll what they hold; names on a chart, which may end in dots, stand under it too. */
export function cut(page: PlannerPage, root: string): string[] {
  return seen(page, root)
    .filter((each) => !each.matches('input, select, textarea') && !each.closest('.sweep'))
    .filter((each) => {
      const { overflowX, overflowY } = getComputedStyle(each);
      const hides = [overflowX, overflowY].some((overflow) => overflow === 'hidden' || overflow === 'clip');
      return hides && (each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1);
    })
    .map(named);
}

interface Line {
  readonly of: HTMLElement;
  readonly box: DOMRect;
}

/** The part of a box that is not cut off by what is around it. */
function inSight(box: DOMRect, of: Element): DOMRect {
  let { left, right, top, bottom } = box;
  for (let at: Element | null = of; at; at = at.parentElement) {
    const { overflowX, overflowY } = getComputedStyle(at);
    if (overflowX === 'visible' && overflowY === 'visible') continue;
    const frame = at.getBoundingClientRect();
    [left, right] = [Math.max(left, frame.left), Math.min(right, frame.right)];
    [top, bottom] = [Math.max(top, frame.top), Math.min(bottom, frame.bottom)];
  }
  return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
}

/** Boxes of the letters of every text, line by line: a line is higher than its letters. */
function lines(page: PlannerPage, root: string): Line[] {
  const texts = seen(page, root).flatMap((of) => [...of.childNodes].map((node) => ({ of, node })));
  return texts
    .filter(({ node }) => node instanceof Text && node.data.trim() !== '')
    .flatMap(({ of, node }) => {
      const range = document.createRange();
      range.selectNodeContents(node);
      return [...range.getClientRects()].map(({ x, y, width, height }) => ({
        of,
        box: inSight(new DOMRect(x, y + height * 0.25, width, height * 0.5), of),
      }));
    })
    .filter(({ box }) => box.width > 2 && box.height > 2);
}

const cross = (one: DOMRect, other: DOMRect): boolean =>
  one.left < other.right - 2 && other.left < one.right - 2 && one.top < other.bottom && other.top < one.bottom;

/** Pairs of texts that lie on one another; heads that stay in sight lie over what was scrolled under them. */
export function overlaps(page: PlannerPage, root: string): string[] {
  scrollTo(0, 0);
  for (const each of page.all(scrollers)) each.scrollTop = 0;
  const all = lines(page, root);
  return all.flatMap((one, index) =>
    all
      .slice(index + 1)
      .filter(({ of, box }) => of !== one.of && cross(one.box, box))
      .filter(({ of }) => of.closest(scrollers) === one.of.closest(scrollers))
      .map(({ of }) => `${named(one.of)} / ${named(of)}`),
  );
}
