// Every panel alone on a page, in the states that it can be in: what all of them owe to everybody is tested over this table.
import { aTimeout, fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import '../board/workers.js';
import { onDay, onRealDay } from '../record/on-day.js';
import { SheetPage } from '../sheet/sheet-page.js';

export type PanelName = (typeof panelNames)[number];
export const panelNames = [
  ...(['split', 'sheet', 'week', 'season', 'running', 'strength', 'checks', 'basis', 'record', 'handout'] as const),
];

export type StateName = (typeof stateNames)[number];
export const stateNames = ['shut', 'open', 'faulty', 'bare'] as const;

/** A text that is no value in any field, and too long for those that take words. */
const longText = 'twenty minutes '.repeat(9);
const wrongTexts = { faulty: 'abc', flooded: longText } as const;

interface Place {
  /** The panels that it needs, itself at the end. */
  readonly panels: string;
  /** What of the planner it is. */
  readonly root: string;
  readonly usual: string;
  /** Where there is as little to show as there can be. */
  readonly bare: string;
  /** What is no value there; where fields take words, one that is too long. */
  readonly wrong?: string;
  /** What opens by other means than a box. */
  readonly more?: (page: SheetPage) => Promise<unknown>;
}

const days = 'days="60,0,45,60,0,90,120"';
const runner = 'phase="build" level="developing"';
const little = 'hours="0.5" level="new" event="none"';

function inSight(page: SheetPage, selector: string): HTMLElement {
  const found = page.all(selector).find((each) => each.checkVisibility());
  if (!found) throw new Error(`no ${selector} is in sight`);
  return found;
}

export const places: Readonly<Record<PanelName, Place>> = {
  split: {
    ...{ panels: 'split', root: '.planner', usual: 'hours="9.75" event="longer"', bare: little },
    more: (page) => page.click(inSight(page, '.week .why-number')),
  },
  sheet: {
    ...{ panels: 'sheet', root: '.sheet', usual: `hours="4" phase="base"`, bare: little },
    more: async (page) => {
      await page.click(inSight(page, '.toolbar button'));
      await page.override('strength_minutes', 1, '100');
      await page.open(page.cell('strength_minutes', 1));
    },
  },
  week: {
    ...{ panels: 'week', root: '.board', usual: `hours="4" phase="base" ${days}`, bare: 'days="0,0,0,0,0,0,0"' },
    more: (page) => page.click(page.find('.card[data-key^="strength"]')),
  },
  season: {
    ...{ panels: 'season', root: '.season-panel', bare: little },
    usual: `hours="4" ${runner} event="half-marathon" event-date="2027-04-11"`,
  },
  running: {
    ...{ panels: 'running', root: '.running', usual: `hours="4" ${runner} race="10k 45:00"`, bare: little },
  },
  strength: {
    ...{ panels: 'strength', root: '.strength', usual: `hours="4" ${runner}`, bare: `${little} equipment="none"` },
  },
  checks: { panels: 'checks', root: '.checks', usual: `hours="8" ${runner}`, bare: little },
  basis: { panels: 'basis', root: '.basis-panel', usual: 'hours="4"', bare: little },
  record: { panels: 'week record', root: '.record', usual: `hours="4" phase="base" ${days}`, bare: little },
  handout: {
    ...{ panels: 'week handout', root: '.handout', usual: `hours="4" ${runner} ${days}`, bare: little },
    wrong: longText,
  },
};

/** Until a panel has come, and nothing of it has changed for a while. */
export async function rested(page: SheetPage, root: string): Promise<SheetPage> {
  let before = '';
  for (let quiet = 0; quiet < 4;) {
    await aTimeout(60);
    await page.settled();
    const now =
      page
        .all(root)
        .map(({ outerHTML }) => outerHTML)
        .join() + page.all('[data-loading]:empty').length;
    quiet = now === before && page.all(root).length > 0 && !/aria-busy="true"/.test(now) ? quiet + 1 : 0;
    before = now;
  }
  return page;
}

/** Opens boxes until none is shut; the menus of the sheet close one another. */
async function openBoxes(page: SheetPage, root: string): Promise<void> {
  for (;;) {
    const boxes = page.all<HTMLDetailsElement>(`${root} details:not([open], .menu)`);
    const shut = boxes.filter((each) => each.checkVisibility());
    if (shut.length === 0) return;
    for (const box of shut) box.open = true;
    await rested(page, root);
  }
}

/** Writes into every field what is no value there. */
async function writeWrong(page: SheetPage, root: string, text: string): Promise<void> {
  for (const { id } of page.all(`${root} :is(input[type="text"], textarea)[id]:not([role])`)) {
    const field = page.root.querySelector<HTMLInputElement>(`#${CSS.escape(id)}`);
    if (!field) continue; // what was written before can take others away
    field.focus();
    field.value = text;
    field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
    field.blur();
    await page.settled();
  }
}

/** A panel on an empty page in a state, `flooded` with long texts that are no values; `attributes` say more of the planner. */
export async function openPlace(
  panel: PanelName,
  state: StateName | 'flooded' = 'shut',
  attributes = '',
): Promise<SheetPage> {
  onDay('2026-12-02');
  const { panels, root, usual, bare, wrong, more } = places[panel];
  const scene = `panels="${panels}" ${state === 'bare' ? bare : usual} ${attributes}`;
  const page = new SheetPage(await fixture<WeekwrightPlanner>(`<weekwright-planner ${scene}></weekwright-planner>`));
  await rested(page, root);
  if (state === 'open') await more?.(page);
  if (state !== 'shut') await openBoxes(page, root);
  if (state === 'faulty' || state === 'flooded') await writeWrong(page, root, wrong ?? wrongTexts[state]);
  return rested(page, root);
}

after(onRealDay);
