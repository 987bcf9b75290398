import { roomOn, type Paper } from './papers.js';

/** Sizes of type in points: readable at arm's length on a wall, and what is still readable in the hand. */
const largest = 13;
const smallest = 6.5;
const step = 0.25;

/** Sets a page in the largest type with which it has room on one sheet, in height and width; in the smallest where it has none. */
export function fitPage(page: HTMLElement, paper: Paper): void {
  const room = roomOn(paper).height;
  const fits = (size: number): boolean => {
    page.style.fontSize = `${size}pt`;
    return page.getBoundingClientRect().height <= room && page.scrollWidth <= page.clientWidth;
  };
  let [low, high] = [smallest, largest];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2 / step) * step;
    if (fits(middle)) low = middle;
    else high = middle - step;
  }
  fits(low);
}
