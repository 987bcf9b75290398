import { aTimeout, expect } from '@open-wc/testing';
import { openBoard, scene } from './open-board.js';

/** Long enough for every week that was tried out to be solved, wherever it is. */
const untilAllArrived = (): Promise<void> => aTimeout(3000);

describe('weeks that are only tried out', () => {
  it('are no act: opening the tools of a card fires nothing, however long its days take', async () => {
    const page = await openBoard();
    const { week } = page;
    const events = await page.heard(async () => {
      await page.openCard('strength', 5);
      await untilAllArrived();
    });
    expect(events).to.deep.equal([]);
    expect(page.week).to.deep.equal(week);
    expect(page.texts('#board-tools .moves small')[1]).to.equal('does not fit');
  });

  it('are no act: a card carried over a day without room and left fires nothing', async () => {
    const page = await openBoard();
    await page.pickUp('strength', 5);
    const events = await page.heard(async () => {
      await page.press('ArrowLeft', 'Escape');
      await untilAllArrived();
    });
    expect(events).to.deep.equal([]);
  });

  it('leave nothing to undo', async () => {
    const page = await openBoard(scene, 'split week sheet');
    await page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
    await page.openCard('strength', 5);
    await untilAllArrived();
    expect(page.tool('Undo').ariaDisabled).to.equal('true');
  });

  it('all have their cost in the end', async () => {
    const page = await openBoard('hours="15" phase="build" level="elite" days="180,180,180,180,180,180,180"');
    const [first] = page.all<HTMLButtonElement>('.card');
    if (!first) throw new Error('there is no card');
    await page.click(first);
    await page.until(() => !page.texts('#board-tools .moves small').includes('…'), 'all days are tried out');
    expect(page.all('#board-tools .moves button')).to.have.length(7);
  });
});

it('a week of the page that takes long is no act: it arrives without an event', async () => {
  const events = await (
    await openBoard()
  ).heard(async () => {
    const page = await openBoard('hours="4" phase="base" days="30,0,0,30,0,30,60"');
    expect(page.week.state).to.equal('nothing-fits');
  });
  expect(events).to.deep.equal([]);
});
