import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

const minutes = ({ week }: BoardPage): readonly number[] => week.wishes.days;

describe('the minutes of a day', () => {
  it('are moved with a slider: the week is laid again, once for each step', async () => {
    const page = await openBoard();
    page.minutesSlider(0).focus();
    const { week } = await page.heardOnce(() => page.press('ArrowRight'));
    expect(week?.wishes.days).to.deep.equal([65, 0, 45, 60, 0, 90, 120]);
    expect([page.typedMinutes(0).value, page.minutesSlider(0).ariaValueText]).to.deep.equal(['65', '65 minutes']);
    expect(page.hasFocus(page.minutesSlider(0)), 'the focus stays').to.equal(true);
    expectWeek(page);
  });

  it('are typed', async () => {
    const page = await openBoard();
    const { week } = await page.heardOnce(() => page.typeMinutes(1, '60'));
    expect(week?.wishes.days).to.deep.equal([60, 60, 45, 60, 0, 90, 120]);
    expect(page.minutesSlider(1).valueAsNumber).to.equal(60);
    expectWeek(page);
  });

  it('can be more than the slider offers when typed, and the slider shows that', async () => {
    const page = await openBoard();
    await page.typeMinutes(6, '300');
    expect(page.minutesSlider(6).valueAsNumber).to.equal(300);
    expectWeek(page);
  });

  it('of 0 make a day off', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, '0');
    await page.laid();
    expect(page.shownDays[0]).to.deep.equal([]);
    expect([page.dayTotal(0), page.day(0).dataset['free']]).to.deep.equal(['day off', 'true']);
    expectWeek(page);
  });

  it('typed as they were are no act', async () => {
    const page = await openBoard();
    expect(await page.heard(() => page.typeMinutes(0, '60'))).to.deep.equal([]);
  });

  it('of one day leave the others, and what was put on days, as they are', async () => {
    const page = await openBoard();
    await page.does('tempo', 0, 'Stay on this day');
    page.minutesSlider(6).focus();
    await page.press('ArrowLeft', 'ArrowLeft');
    expect(minutes(page)).to.deep.equal([60, 0, 45, 60, 0, 90, 110]);
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'tempo', minutes: 35, day: 0 }]);
  });
});

it('a text that is half typed is not lost when a week arrives', async () => {
  const page = await openBoard();
  page.typedMinutes(6).focus();
  page.typedMinutes(6).select();
  await sendKeys({ type: '10' });
  page.element.requestUpdate();
  await page.settled();
  expect(page.typedMinutes(6).value).to.equal('10');
  await sendKeys({ type: '5' });
  await page.press('Enter');
  expect(minutes(page)[6]).to.equal(105);
});

describe('a text that is no number of minutes', () => {
  const faulty: readonly (readonly [text: string, allowed: RegExp])[] = [
    ['an hour', /an hour.*number/],
    ['-5', /-5/],
    ['1500', /1,?500.*0 to 1,?440/],
    ['22.5', /22\.5.*\b1\b/],
    ['', /\S/],
  ];

  for (const [text, allowed] of faulty)
    it(`"${text}" stays as it was typed, with what is allowed under it; the week is as it was`, async () => {
      const page = await openBoard();
      const { week } = page;
      const events = await page.heard(() => page.typeMinutes(0, text));
      expect(events).to.deep.equal([]);
      expect(page.week).to.equal(week);
      expect(page.typedMinutes(0).value).to.equal(text);
      expect(page.typedMinutes(0).ariaInvalid).to.equal('true');
      expect(page.minutesNote(0))
        .to.match(/Monday/)
        .and.match(allowed);
      expect(page.typedMinutes(0).getAttribute('aria-describedby')).to.equal(page.find('#day-0-note').id);
    });

  it('is still there after other acts, and gone with a good one', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, 'an hour');
    await page.typeMinutes(1, '45');
    await page.drag('hours', 4.5);
    expect([page.typedMinutes(0).value, minutes(page)[0]]).to.deep.equal(['an hour', 60]);
    await page.typeMinutes(0, '75');
    expect([page.minutesNote(0), page.typedMinutes(0).ariaInvalid, minutes(page)[0]]).to.deep.equal(['', 'false', 75]);
  });

  it('goes when the slider is moved', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, 'an hour');
    page.minutesSlider(0).focus();
    await page.press('ArrowLeft');
    expect([page.typedMinutes(0).value, page.minutesNote(0)]).to.deep.equal(['55', '']);
  });

  it('taken back to the number that counts is no longer wrong', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, 'an hour');
    await page.typeMinutes(0, '60');
    expect([page.minutesNote(0), page.typedMinutes(0).ariaInvalid]).to.deep.equal(['', 'false']);
  });
});

it('twenty keys on a slider are twenty weeks, each with its own minutes', async () => {
  const page = await openBoard();
  page.minutesSlider(3).focus();
  const events = await page.heard(async () => {
    for (let key = 0; key < 20; key += 1) await sendKeys({ press: 'ArrowRight' });
    await page.laid();
  });
  const told = new Set(events.map(({ detail }) => detail.week?.wishes.days[3]));
  expect([...told]).to.deep.equal(Array.from({ length: 20 }, (_, key) => 65 + 5 * key));
  expectWeek(page);
});
