import { expect } from '@open-wc/testing';
import { resetMouse, sendMouse, setViewport } from '@web/test-runner-commands';
import { expectWeek, openBoard } from './open-board.js';

before(() => setViewport({ width: 1200, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

// Nothing may stay pressed for the next test.
afterEach(() => resetMouse());

describe('a card dragged with the mouse', () => {
  it('shows over each day what the week would cost', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    const costs = page.texts('#board-tools .moves small');
    await page.press('Escape');
    await page.dragCard(page.card('strength', 5));
    for (const day of [4, 3, 6]) {
      await page.dragOn(page.day(day));
      expect(page.dayCarriedOver).to.equal(day);
      expect(page.carried).to.equal(costs[day]);
    }
  });

  it('moves with the pointer', async () => {
    const page = await openBoard();
    const card = page.card('strength', 5);
    const before = card.getBoundingClientRect();
    await page.dragCard(card, page.day(6));
    expect(card.getBoundingClientRect().left - before.left).to.be.greaterThan(before.width / 2);
    await page.press('Escape');
    expect(card.getBoundingClientRect().left).to.be.closeTo(before.left, 1);
  });

  it('dropped it stays on that day, and the page hears of it once', async () => {
    const page = await openBoard();
    await page.dragCard(page.card('strength', 5), page.day(6));
    const { week } = await page.heardOnce(() => page.drop());
    expect(week?.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 6 }]);
    expect(page.card('strength', 6).dataset['state']).to.equal('pinned');
    expect(page.card('strength', 6).style.getPropertyValue('translate')).to.equal('');
    expectWeek(page);
  });

  it('the press that ends a drag opens nothing', async () => {
    const page = await openBoard();
    // Over its own card again, so that down and up are a click.
    const card = page.card('slow', 6);
    await page.dragCard(card, page.day(5), card);
    await page.drop();
    expect(page.tools.hidden).to.equal(true);
    expect(page.dayCarriedOver).to.equal(null);
  });

  it('a press that hardly moves is a press, and opens the tools', async () => {
    const page = await openBoard();
    await page.dragCard(page.card('slow', 6));
    const { left, top, width, height } = page.card('slow', 6).getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(left + width / 2) + 3, Math.round(top + height / 2) + 2] });
    await sendMouse({ type: 'up' });
    await page.settled();
    expect(page.tools.hidden).to.equal(false);
    expect(page.week.wishes.pinned).to.deep.equal([]);
  });

  it('Escape leaves it where it was, and the button let go after that does nothing', async () => {
    const page = await openBoard();
    const { week } = page;
    await page.dragCard(page.card('strength', 5), page.day(6));
    const events = await page.heard(async () => {
      await page.press('Escape');
      await page.drop();
    });
    expect(events).to.deep.equal([]);
    expect([page.week, page.dayCarriedOver, page.tools.hidden]).to.deep.equal([week, null, true]);
    expect(page.card('strength', 5).style.getPropertyValue('translate')).to.equal('');
  });

  it('let go over its own day it changes nothing', async () => {
    const page = await openBoard();
    const { week } = page;
    const events = await page.heard(async () => {
      await page.dragCard(page.card('strength', 5), page.day(6), page.day(5));
      await page.drop();
    });
    expect([events, page.week]).to.deep.equal([[], week]);
  });

  it('done it does not move', async () => {
    const page = await openBoard();
    await page.does('tempo', 0, 'Done');
    await page.dragCard(page.card('tempo', 0), page.day(2));
    expect(page.dayCarriedOver).to.equal(null);
  });

  it('a drag that the system takes away leaves it', async () => {
    const page = await openBoard();
    const { week } = page;
    await page.dragCard(page.card('strength', 5), page.day(6));
    dispatchEvent(new PointerEvent('pointercancel', { bubbles: true, cancelable: true }));
    await page.settled();
    expect([page.week, page.dayCarriedOver]).to.deep.equal([week, null]);
  });
});

describe('a finger', () => {
  const touch = { bubbles: true, composed: true, cancelable: true, pointerType: 'touch', button: 0, isPrimary: true };
  const press = (target: Element): void => {
    const { left, top } = target.getBoundingClientRect();
    target.dispatchEvent(new PointerEvent('pointerdown', { ...touch, clientX: left, clientY: top }));
  };

  it('drags by the grip alone: elsewhere it scrolls the page', async () => {
    const page = await openBoard();
    const { left, top } = page.day(6).getBoundingClientRect();
    const over = (): boolean =>
      dispatchEvent(new PointerEvent('pointermove', { ...touch, clientX: left + 9, clientY: top + 9 }));
    press(page.find('[data-key="strength 5"] strong'));
    over();
    await page.settled();
    expect(page.dayCarriedOver).to.equal(null);

    const grip = page.find('[data-key="strength 5"] .grip');
    expect(getComputedStyle(grip).touchAction).to.equal('none');
    expect(getComputedStyle(page.card('strength', 5)).touchAction).to.equal('auto');
    press(grip);
    over();
    await page.settled();
    expect(page.dayCarriedOver).to.equal(6);
    dispatchEvent(new PointerEvent('pointerup', { ...touch, clientX: left + 9, clientY: top + 9 }));
    await page.laid();
    expect(page.card('strength', 6).dataset['state']).to.equal('pinned');
  });
});
