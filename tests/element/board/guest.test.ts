import { aTimeout, expect } from '@open-wc/testing';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { builtInWeek } from '../../../src/training/method/built-in-week.js';
import type { BoardPage } from './board-page.js';
import { openBoard } from './open-board.js';
import { SourceWorker } from './workers.js';

/** A coach whose weeks can be full: with many hours they take some hundred milliseconds to lay. */
const fullWeeks = {
  ...builtInMethod,
  id: 'full-weeks',
  week: { ...builtInWeek, sessions_a_day: 3, rest_days: 0 },
};
const days = '100,110,120,130,140,150,160';

/** A board with an easy week, which then is asked for one that takes long. */
async function openLong(): Promise<BoardPage> {
  const content = `<script type="application/json" slot="method">${JSON.stringify(fullWeeks)}</script>`;
  const page = await openBoard(`hours="6" phase="build" level="elite" days="${days}"`, 'split week', content);
  expect([page.week.state, page.element.problems]).to.deep.equal(['laid', []]);
  return page;
}

/** Workers that count themselves. */
function countedWorkers(): { readonly running: () => number; readonly stop: () => void } {
  const running = new Set<Worker>();
  globalThis.Worker = class extends SourceWorker {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      running.add(this);
    }

    override terminate(): void {
      running.delete(this);
      super.terminate();
    }
  };
  return {
    running: () => running.size,
    stop: () => {
      globalThis.Worker = SourceWorker;
    },
  };
}

/** All that a person does with a board. */
async function drive(page: BoardPage): Promise<void> {
  await page.typeMinutes(0, '75');
  await page.pickUp('strength', 5);
  await page.press('ArrowRight', ' ');
  await page.laid();
  await page.openDay(2);
  await page.click(page.toolsButton('This day fell out'));
  await page.click(page.proposalButton('Take it'));
  await page.laid();
  await page.choose(page.wishList('rest-days'), 2);
  await page.laid();
  await page.click(page.kindButton('cross', 'Add a session'));
  await page.laid();
}

describe('a board on a page', () => {
  it('asks the network for nothing but our own parts, keeps nothing, and asks for no part twice', async () => {
    const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);
    const page = await openBoard();
    await drive(page);
    await aTimeout(500);
    const before = new Set(asked());
    await drive(await openBoard());
    await aTimeout(500);
    for (const url of asked()) expect(new URL(url).origin).to.equal(location.origin);
    expect(asked().filter((url) => !before.has(url))).to.deep.equal([]);
    expect([localStorage.length, sessionStorage.length, document.cookie, location.hash]).to.deep.equal([0, 0, '', '']);
  });

  it('lets no event of its inputs out', async () => {
    const heard: string[] = [];
    const note = ({ type }: Event): number => heard.push(type);
    const types = ['input', 'change', 'toggle', 'beforetoggle'];
    for (const type of types) document.addEventListener(type, note);
    await drive(await openBoard());
    for (const type of types) document.removeEventListener(type, note);
    expect(heard).to.deep.equal([]);
  });

  it('does not touch another one beside it', async () => {
    const one = await openBoard();
    const other = await openBoard('hours="5" phase="base" days="60,60,0,60,0,90,120"');
    const { week, text } = { week: other.week, text: other.text };
    await drive(one);
    await other.settled();
    expect([other.week, other.text]).to.deep.equal([week, text]);
  });
});

describe('a planner that is taken away', () => {
  it('leaves the search for its week: nothing arrives, and no worker runs on', async () => {
    const workers = countedWorkers();
    const page = await openLong();
    page.element.hours = 16;
    await page.settled();
    expect([page.week.state, workers.running()]).to.deep.equal(['looking', 1]);
    page.element.remove();
    expect(workers.running()).to.equal(0);
    await aTimeout(1500);
    expect(page.week.state).to.equal('looking');
    workers.stop();
  });

  it('goes on with it when it is put back', async () => {
    const page = await openLong();
    page.element.hours = 16;
    await page.settled();
    expect(page.week.state).to.equal('looking');
    page.element.remove();
    await aTimeout(50);
    document.body.append(page.element);
    await page.laid();
    expect(page.week.state).to.equal('laid');
    page.element.remove();
  });

  it('has its week as it was when it is put back', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, '75');
    const { shownDays } = page;
    page.element.remove();
    document.body.append(page.element);
    await page.laid();
    expect([page.shownDays, page.week.wishes.days[0]]).to.deep.equal([shownDays, 75]);
    page.element.remove();
  });
});

describe('a week that takes long', () => {
  it('is said to be looked for, and leaves the week before in sight until it is there', async () => {
    const page = await openLong();
    const before = page.shownDays;
    page.element.hours = 16;
    await page.settled();
    expect(page.week.state).to.equal('looking');
    expect(page.verdict).to.include('Still looking for the best week.');
    expect([page.find('.days').dataset['state'], page.shownDays]).to.deep.equal(['looking', before]);
    await page.laid();
    await page.settled();
    expect([page.find('.days').dataset['state'], page.shownDays]).to.deep.equal(['laid', page.week.days]);
  });

  it('that a person asked for is heard of when it is there', async () => {
    const page = await openLong();
    const events = await page.heard(async () => {
      await page.drag('hours', 16);
      await page.laid();
    });
    expect(events.at(-1)?.detail.week?.state).to.equal('laid');
    expect(events.length).to.be.at.most(2);
  });

  it('can be driven on: what is asked for last is what comes', async () => {
    const page = await openLong();
    const { cost } = page.week;
    for (const hours of [16, 15.5, 6]) await page.drag('hours', hours);
    await page.laid();
    await aTimeout(1000);
    expect(page.element.plan?.inputs.hours).to.equal(6);
    expect([page.week.state, page.week.cost]).to.deep.equal(['laid', cost]);
    expect(page.shownDays).to.deep.equal(page.week.days);
  });
});
