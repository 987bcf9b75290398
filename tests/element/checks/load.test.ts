import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openChecks, scene, type ChecksPage } from './checks-page.js';

const opened = async (attributes = scene, panels = 'split checks'): Promise<ChecksPage> =>
  (await openChecks(attributes, panels)).opens('own');

const week = [200, 0, 240, 180, 0, 300, 180] as const;

describe('the loads of a runner’s own weeks', () => {
  it('are taken a line for each, of seven numbers or of one', async () => {
    const page = await opened();
    const text = `${week.join(' ')}\n900`;
    const plan = await page.heardOnce(() => page.tellWeeks(text));
    // 200 + 240 + 180 + 300 + 180 = 1,100; the mean of it and 900 is 1,000.
    expect(plan.load?.own.load).to.equal(1000);
    expect(page.ids).to.include.members(['load']);
    expect(page.partOf('load', 'says')).to.contain('1,000');
    expect([page.weeks.value, page.hintOf('checks-weeks')]).to.deep.equal([text, '']);
  });

  it('day by day bring monotony and strain too, where the week lies on days', async () => {
    const page = await opened(scene, 'split week checks');
    await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
    await page.tellWeeks(week.join(' '));
    expect(page.ids).to.include.members(['load', 'monotony', 'strain']);
    await page.tellWeeks('1100');
    expect(page.ids).to.include('load').and.to.not.include('monotony');
  });

  it('may have semicolons, tabs, many spaces and empty lines', async () => {
    const page = await opened();
    await page.tellWeeks('\n 200;0; 240;180\t0   300 180\n\n  900  \n');
    expect(page.load.own.load).to.equal(1000);
    expect(page.hintOf('checks-weeks')).to.equal('');
  });

  it('emptied are not told', async () => {
    const page = await opened();
    const { ids } = page;
    await page.tellWeeks('900');
    await page.heardOnce(() => page.tellWeeks(''));
    expect([page.ids, page.load.own.load]).to.deep.equal([ids, null]);
  });

  for (const [text, says] of [
    ['100 200 300', 'Loads of your own weeks has 3; it has to have seven days, or one number for the week.'],
    ['900\n1 2 3 4 5 6 7 8', 'Loads of your own weeks'],
    ['100 hard 0 0 0 0 0', 'Loads of your own weeks is "hard"; it has to be a number.'],
    ['-5', 'Loads of your own weeks is "-5"; it has to be a number.'],
    ['20001', 'Loads of your own weeks'],
    [Array.from({ length: 13 }, () => '900').join('\n'), 'Loads of your own weeks'],
  ] as const)
    it(`keep a text that cannot be, and tell what is wrong: ${JSON.stringify(text).slice(0, 40)}`, async () => {
      const page = await opened();
      await page.tellWeeks('900');
      const before = JSON.stringify(page.element.plan);
      expect(await page.heard(() => page.tellWeeks(text))).to.deep.equal([]);
      expect(page.hintOf('checks-weeks')).to.contain(says);
      expect(page.hintOf('checks-weeks')).to.not.match(/\{|\[0\]|undefined|problem\./);
      expect(page.told).to.equal(page.hintOf('checks-weeks'));
      expect([page.weeks.value, page.weeks.getAttribute('aria-invalid')]).to.deep.equal([text, 'true']);
      expect(JSON.stringify(page.element.plan)).to.equal(before);
      await page.tellWeeks('950');
      expect([page.hintOf('checks-weeks'), page.weeks.getAttribute('aria-invalid')]).to.deep.equal(['', 'false']);
    });

  it('keep what somebody is still typing when the planner changes', async () => {
    const page = await opened();
    page.weeks.focus();
    page.weeks.value = '900 100';
    page.weeks.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    page.element.hours = 5;
    await page.settled();
    expect(page.weeks.value).to.equal('900 100');
  });

  it('keep a text that cannot be while other things change', async () => {
    const page = await opened();
    await page.tellWeeks('1 2 3');
    await page.typeIn('checks-age', '40');
    await page.drag('hours', 6);
    expect(page.weeks.value).to.equal('1 2 3');
    expect(page.hintOf('checks-weeks')).to.not.equal('');
  });
});

describe('how hard sessions feel', () => {
  const kinds = ['slow', 'tempo', 'intervals', 'cross', 'strength'] as const;

  it('is that of the method to begin with', async () => {
    const page = await opened();
    expect(kinds.map((kind) => page.typedIn(`checks-effort-${kind}`).value)).to.deep.equal(['3', '6', '8', '3', '5']);
    const back = page.named('.checks button.act', 'Efforts of the method');
    expect(back.ariaDisabled).to.equal('true');
    expect(await page.heard(() => page.click(back))).to.deep.equal([]);
  });

  it('counts in the load, by hand', async () => {
    const page = await opened();
    const before = page.load.week;
    const sessions = page.row('strength').sessions.split(' + ').map(Number);
    const minutes = sessions.reduce((sum, each) => sum + each, 0);
    const plan = await page.heardOnce(() => page.typeIn('checks-effort-strength', '7'));
    expect(plan.load?.week).to.equal(before + 2 * minutes);
    expect(plan.load?.efforts.strength).to.equal(7);
  });

  it('is from 0 to 10', async () => {
    const page = await opened();
    for (const effort of ['0', '10', '4.5']) {
      await page.typeIn('checks-effort-slow', effort);
      expect([page.load.efforts.slow, page.hintOf('checks-effort-slow')]).to.deep.equal([Number(effort), '']);
    }
  });

  for (const text of ['11', '10.1', 'hard', '-1'])
    it(`cannot be ${text}, which is kept and told`, async () => {
      const page = await opened();
      const before = JSON.stringify(page.element.plan);
      expect(await page.heard(() => page.typeIn('checks-effort-tempo', text))).to.deep.equal([]);
      expect(page.hintOf('checks-effort-tempo')).to.match(
        /^Effort of tempo running, 0 to 10 is .*(?:allowed: 0 to 10|it has to be a number)\.$/,
      );
      expect([page.typedIn('checks-effort-tempo').value, JSON.stringify(page.element.plan)]).to.deep.equal([
        ...[text, before],
      ]);
    });

  it('emptied goes back to that of the method', async () => {
    const page = await opened();
    await page.typeIn('checks-effort-slow', '4');
    await page.heardOnce(() => page.typeIn('checks-effort-slow', ''));
    expect([page.typedIn('checks-effort-slow').value, page.load.efforts.slow]).to.deep.equal(['3', 3]);
  });

  it('goes back for all kinds by one press, told once, without losing the focus', async () => {
    const page = await opened();
    const before = JSON.stringify(page.load);
    await page.typeIn('checks-effort-slow', '4');
    await page.typeIn('checks-effort-cross', '6');
    const back = page.named('.checks button.act', 'Efforts of the method');
    expect(back.ariaDisabled).to.equal('false');
    await page.goTo(back);
    await page.heardOnce(() => page.press('Enter'));
    expect([JSON.stringify(page.load), page.hasFocus(back), back.ariaDisabled]).to.deep.equal([before, true, 'true']);
  });
});

describe('the box of the load', () => {
  const rows = (page: ChecksPage): string[][] =>
    page
      .all<HTMLTableRowElement>('.checks-load table:not(.day-loads) tr')
      .map((row) => [...row.cells].map(collapsed).slice(0, 3));

  it('without days has the week, and says what is missing for the rest', async () => {
    const page = await (await openChecks()).opens('load');
    expect(rows(page).map(([name]) => name)).to.deep.equal(['Number', 'Load of the week']);
    expect(page.find('.checks-load').textContent).to.contain('Lay the sessions on days to see it.');
    expect(page.has('.day-loads')).to.equal(false);
  });

  it('with days has seven, and mean, deviation, monotony and strain of them', async () => {
    const page = await openChecks(scene, 'split week checks');
    await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
    await page.opens('load');
    expect(page.texts('.day-loads th')).to.have.length(7);
    const days = page.texts('.day-loads td').map(Number);
    const sum = days.reduce((total, each) => total + each, 0);
    const mean = sum / 7;
    // Foster 2001 (D06 in shared/evidence): mean over standard deviation, here of all seven days; strain is load times it.
    const deviation = Math.sqrt(days.reduce((total, each) => total + (each - mean) ** 2, 0) / 7);
    const whole = new Intl.NumberFormat('en', { maximumFractionDigits: 0 });
    expect(
      rows(page)
        .slice(1)
        .map(([name, value]) => `${name ?? ''} ${value ?? ''}`),
    ).to.deep.equal([
      `Load of the week ${whole.format(sum)}`,
      `Mean of a day ${whole.format(mean)}`,
      `Standard deviation ${whole.format(deviation)}`,
      `Monotony ${(mean / deviation).toFixed(1)}`,
      `Strain ${whole.format((sum * mean) / deviation)}`,
    ]);
  });

  it('has the runner’s own weeks beside them, once they are told', async () => {
    const page = await (await opened()).opens('load');
    expect(page.texts('.checks-load thead th')).to.not.include('Your own weeks');
    await page.tellWeeks('900');
    expect(page.texts('.checks-load thead th')).to.include('Your own weeks');
    expect(rows(page)[1]?.[2]).to.equal('900');
  });

  it('has no ratio of weeks, and says why', async () => {
    const page = await (await openChecks()).opens('load');
    expect(collapsed(page.find('.checks-load'))).to.contain('is left out');
  });
});
