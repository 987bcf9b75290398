import type { BuiltPage } from './built-page.js';

const tell = (control: Element, ...types: readonly string[]): void => {
  for (const type of types) control.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
};

/** Moves every slider within one part of the planner to its end and to its start; gives their number. */
export async function moveSliders(page: BuiltPage, part: string): Promise<number> {
  const sliders = page.all<HTMLInputElement>(`${part} input[type="range"]`);
  for (const slider of sliders)
    for (const end of [slider.max, slider.min]) {
      slider.value = end;
      tell(slider, 'input', 'change');
      await page.settled();
    }
  return sliders.length;
}

/** Chooses the last entry and then the first one in every list within one part of the planner; gives their number. */
export async function useLists(page: BuiltPage, part: string): Promise<number> {
  const lists = page.all<HTMLSelectElement>(`${part} select`);
  for (const list of lists)
    for (const index of [list.options.length - 1, 0]) {
      list.selectedIndex = index;
      tell(list, 'input', 'change');
      await page.settled();
    }
  return lists.length;
}

/** Ticks every box within one part of the planner, and takes the ticks away again; gives their number. */
export async function tickBoxes(page: BuiltPage, part: string): Promise<number> {
  const boxes = page.all<HTMLInputElement>(`${part} input[type="checkbox"]`);
  for (const box of [...boxes, ...boxes]) {
    box.click();
    await page.settled();
  }
  return boxes.length;
}
