import { expect } from '@open-wc/testing';
import { openSheet } from '../sheet/sheet-page.js';
import { openWithSheet, SeasonPage, openSeason, scene } from './season-page.js';

const can = (page: SeasonPage): boolean[] => ['Undo', 'Redo'].map((name) => page.tool(name).ariaDisabled === 'false');
const undo = (page: SeasonPage): Promise<SeasonPage> => page.click(page.tool('Undo'));
const redo = (page: SeasonPage): Promise<SeasonPage> => page.click(page.tool('Redo'));
const weeksOf = ({ season }: SeasonPage): number => season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length;
const row = (page: SeasonPage, title: string): string[] =>
  (page.table('compare').find(([head]) => head === title) ?? []).slice(1);

for (const panels of ['split season sheet', 'sheet season', 'split week season sheet'])
  it(`panels="${panels}" show the season, with nothing to undo at first`, async () => {
    const page = await openWithSheet(scene, panels);
    expect(weeksOf(page)).to.equal(16);
    expect(can(page)).to.deep.equal([false, false]);
    expect(page.root.querySelector('.season-compare')).to.equal(null);
  });

describe('a panel that comes later', () => {
  it('the sheet takes over the season, with what was set', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', '12');
    page.element.panels = 'split season sheet';
    await page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
    expect([weeksOf(page), ...can(page)]).to.deep.equal([12, false, false]);
  });

  it('the season comes to a sheet with scenarios', async () => {
    const page = await openWithSheet();
    await page.add();
    page.element.panels = 'split sheet';
    await page.settled();
    page.element.panels = 'split sheet season';
    await page.until(() => page.root.querySelector('.season-compare') !== null, 'the seasons are side by side');
    expect(weeksOf(page)).to.equal(16);
  });
});

describe('undo with a season', () => {
  it('takes back a way out, and does it again', async () => {
    const page = await openWithSheet();
    await page.typeIn('season-weeks', '8');
    await page.presses('.season-notes button', 'Rise by up to 15% a week');
    expect(page.season.wishes.rise).to.equal(0.15);
    await undo(page);
    expect([page.season.wishes.rise, weeksOf(page)]).to.deep.equal([0.1, 8]);
    await undo(page);
    expect([weeksOf(page), ...can(page)]).to.deep.equal([16, false, true]);
    await redo(page);
    await redo(page);
    expect([page.season.wishes.rise, weeksOf(page), ...can(page)]).to.deep.equal([0.15, 8, true, false]);
  });

  it('is one step for each act, of every kind', async () => {
    const page = await openWithSheet();
    await page.openBox('shape');
    await page.openBox('hand');
    const state = (): string => JSON.stringify([page.season.wishes, page.element.plan?.inputs]);
    const states = [state()];
    const acts: readonly (() => Promise<unknown>)[] = [
      () => page.typeIn('season-weeks', '14'),
      () => page.setDate('season-date', '2027-05-02'),
      () => page.dragTo('season-most', 5.5),
      () => page.chooseText(page.selectOf('season-taper'), '3 weeks'),
      () => page.dragTo('season-rise', 8),
      () => page.pressesNamed('Move phase 1, base, later'),
      () => page.presses('.season-shape button', 'Add an event'),
      () => page.typeIn('season-week-hours', '2'),
      () => page.click(page.showButton),
      () => page.drag('hours', 4.5),
    ];
    for (const act of acts) {
      await act();
      states.push(state());
    }
    expect(new Set(states).size).to.equal(states.length);
    for (const before of states.slice(0, -1).reverse()) {
      await undo(page);
      expect(state()).to.equal(before);
    }
    expect(can(page)).to.deep.equal([false, true]);
  });

  it('of a drag of a slider is one step', async () => {
    const page = await openWithSheet();
    await page.dragTo('season-weeks', 15, 14, 13, 12);
    expect(weeksOf(page)).to.equal(12);
    await undo(page);
    expect([weeksOf(page), ...can(page)]).to.deep.equal([16, false, true]);
  });

  it('of two drags of different sliders is two', async () => {
    const page = await openWithSheet();
    await page.dragTo('season-weeks', 15, 14);
    await page.dragTo('season-most', 5.5, 5);
    await undo(page);
    expect([weeksOf(page), page.season.wishes.mostHours]).to.deep.equal([14, 6]);
    await undo(page);
    expect(weeksOf(page)).to.equal(16);
  });

  it('of two drags of one slider is two', async () => {
    const page = await openWithSheet();
    await page.dragTo('season-weeks', 15, 14);
    await page.dragTo('season-weeks', 13, 12);
    await undo(page);
    expect(weeksOf(page)).to.equal(14);
  });
});

describe('seasons side by side', () => {
  async function openTwo(): Promise<SeasonPage> {
    const page = await openWithSheet();
    await page.chooseFromMenu(0, 'Copy');
    await page.click(page.radio(1));
    await page.typeIn('season-weeks', '12');
    return page.openBox('compare');
  }

  it('have a column each, with names of their own', async () => {
    const page = await openTwo();
    const [head = []] = page.table('compare');
    expect(head).to.have.length(3);
    expect(new Set(head.slice(1)).size).to.equal(2);
    expect(head[1]).to.match(/^1\. /);
    expect(row(page, 'Weeks up to the event')).to.deep.equal(['16', '12']);
  });

  it('are those of their scenarios: one is changed, the other stays', async () => {
    const page = await openTwo();
    await page.click(page.radio(0));
    expect(weeksOf(page)).to.equal(16);
    await page.dragTo('season-most', 5);
    expect(row(page, 'Most hours a week')[0]).to.equal('5 h');
    expect(row(page, 'Weeks up to the event')).to.deep.equal(['16', '12']);
    await page.click(page.radio(1));
    expect([weeksOf(page), page.season.wishes.mostHours]).to.deep.equal([12, 6]);
  });

  it('are taken back one by one', async () => {
    const page = await openTwo();
    await page.dragTo('season-most', 5);
    await undo(page);
    expect(page.season.wishes.mostHours).to.equal(6);
    await undo(page);
    expect(row(page, 'Weeks up to the event')).to.deep.equal(['16', '16']);
  });

  it('end with the scenarios: the box goes with the last but one', async () => {
    const page = await openTwo();
    await page.chooseFromMenu(1, 'Remove');
    expect([weeksOf(page), page.root.querySelector('.season-compare')]).to.deep.equal([16, null]);
  });

  it('show the week of each in the grid of its scenario', async () => {
    const page = await openTwo();
    await page.readWeek(3);
    await page.click(page.showButton);
    const { plan } = page.element;
    expect(page.shown('strength_rounded', 1).text).to.equal(String(plan?.rounded.strength));
    expect(page.shown('strength_rounded', 0).text).to.equal('75');
  });
});

describe('a link', () => {
  afterEach(() => {
    history.replaceState(null, '', location.pathname + location.search);
  });

  /** The link that the toolbar copies. */
  async function copied(page: SeasonPage): Promise<string> {
    let text = '';
    const write = async ([item]: readonly ClipboardItem[]): Promise<void> => {
      text = (await (await item?.getType('text/plain'))?.text()) ?? '';
    };
    Object.defineProperty(navigator.clipboard, 'write', { configurable: true, value: write });
    await page.click(page.tool('Copy link'));
    await page.until(() => text !== '', 'the link is copied');
    Reflect.deleteProperty(navigator.clipboard, 'write');
    return text;
  }

  it('brings the seasons of all scenarios back', async () => {
    const page = await openWithSheet();
    await page.openBox('hand');
    await page.readWeek(5);
    await page.typeIn('season-week-hours', '0');
    await page.chooseText(page.selectOf('season-week-reason'), 'holiday');
    await page.chooseFromMenu(0, 'Copy');
    await page.click(page.radio(1));
    await page.typeIn('season-weeks', '12');
    const { season } = page;
    const { hash } = new URL(await copied(page));
    page.element.remove();
    history.replaceState(null, '', hash);
    const other = await openWithSheet('hours="6" phase="base" event-date="2027-09-05"');
    await other.until(() => other.message !== '', 'the sheet comes from the link');
    await other.click(other.radio(1));
    expect(other.season).to.deep.equal(season);
    await other.openBox('compare');
    expect(other.table('compare').find(([head]) => head === 'Weeks up to the event')).to.deep.equal([
      ...['Weeks up to the event', '16', '12'],
    ]);
    await other.click(other.radio(0));
    expect([other.hours[4], other.season.wishes.byHand[0]?.reason]).to.deep.equal([0, 'holiday']);
  });

  it('brings its season also where the panel of the season comes after the sheet', async () => {
    const page = await openWithSheet();
    await page.typeIn('season-weeks', '12');
    await page.typeIn('season-most', '5');
    const { season } = page;
    const { hash } = new URL(await copied(page));
    page.element.remove();
    history.replaceState(null, '', hash);
    const sheet = await openSheet(scene, 'split sheet');
    await sheet.until(() => sheet.message !== '', 'the sheet comes from the link');
    sheet.element.panels = 'split season sheet';
    const other = new SeasonPage(sheet.element);
    await other.until(() => other.root.querySelector('#season-week-title') !== null, 'the season comes');
    expect([other.season.wishes, other.hours]).to.deep.equal([season.wishes, season.weeks.map(({ hours }) => hours)]);
  });
});
