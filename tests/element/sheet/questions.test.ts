import { expect } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { shownPlan } from '../planner-page.js';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

const open = async (question: 'sweep' | 'backwards' | 'influence', attributes = ''): Promise<SheetPage> =>
  (await openSheet(`hours="4" phase="base" ${attributes}`)).askSheet(question);

describe('a sweep of the hours', () => {
  const reading = (page: SheetPage): HTMLInputElement => page.find('#sweep-reading');
  /** The step of the reading slider at some hours: from half an hour on by quarters. */
  const stepAt = (hours: number): number => (hours - 0.5) * 4;
  const read = async (page: SheetPage, hours: number): Promise<string> => {
    await page.slide(reading(page), stepAt(hours));
    return reading(page).getAttribute('aria-valuetext') ?? '';
  };

  it('draws every kind of training, with its name', async () => {
    const page = await open('sweep');
    const names = ['Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength'];
    expect(page.all('.sweep-plot svg path').length).to.be.at.least(5);
    for (const name of names) expect(collapsed(page.find('.sweep-picture'))).to.include(name);
    expect(collapsed(page.find('.sweep-plot svg title'))).to.match(/by hours a week/i);
  });

  it('lists where rules begin and end: the cap above 6 hours 40 minutes', async () => {
    const page = await open('sweep');
    // 30 % of the week pass 120 minutes above 400 minutes.
    expect(page.texts('.turning-points li')).to.include('Above 6 hours 40 minutes: “Strength cap” begins');
    await page.set(0, 'strength-cap', 90);
    await page.answered();
    // At 90 minutes it would be five hours, but the rule acts above six only.
    expect(page.texts('.turning-points li')).to.include('Above 6 hours: “Strength cap” begins');
  });

  it('is read by a slider, at the scenario’s own hours first', async () => {
    const page = await open('sweep');
    expect(reading(page).getAttribute('aria-valuetext')).to.match(
      /^4 h: Slow running 72; Tempo running 36; Intervals 24; Cross-training 36; Strength 72$/,
    );
    expect(await read(page, 8)).to.match(/^8 h: Slow running 168; .*Strength 120$/);
    expect(collapsed(page.find('.reading-line'))).to.match(/^8 hours/);
    reading(page).focus();
    await page.press('ArrowLeft');
    expect(reading(page).getAttribute('aria-valuetext')).to.match(/^7 h 45 min/);
  });

  it('is read by pointing at the chart', async () => {
    const page = await open('sweep');
    const plot = page.find('.sweep-plot');
    plot.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = plot.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(left + width - 2), Math.round(top + height / 2)] });
    await page.settled();
    expect(reading(page).getAttribute('aria-valuetext')).to.match(/^20 h: /);
  });

  it('gives a value that is read to the scenario on show', async () => {
    const page = await open('sweep');
    await read(page, 6);
    const events = await page.heard(() => page.click(page.named('.reading-line button', 'Use 6 hours')));
    expect(events.map(({ detail }) => detail.inputs.hours)).to.deep.equal([6]);
    expect(page.scenarios).to.deep.equal(['6 h, base']);
    expect(page.input(0, 'hours').valueAsNumber).to.equal(6);
  });

  it('is the same as a table', async () => {
    const page = await open('sweep');
    await page.click(page.find('.sweep-table summary'));
    const rows = page.all<HTMLTableRowElement>('.values tr').map((row) => [...row.cells].map(collapsed));
    expect(rows[0]?.slice(1)).to.deep.equal([
      'Slow running',
      'Tempo running',
      'Intervals',
      'Cross-training',
      'Strength',
    ]);
    // Half an hour to twenty by quarters, and the head.
    expect(rows).to.have.length(1 + 79);
    expect(rows.find(([head]) => head === '4 h')).to.deep.equal(['4 h', '72', '36', '24', '36', '72']);
    expect(rows.find(([head]) => head === '8 h')).to.deep.equal(['8 h', '168', '72', '48', '72', '120']);
  });

  it('follows the scenario on show', async () => {
    const page = await open('sweep');
    await page.set(0, 'phase', 0);
    await page.answered();
    // Off season 25, 15, 0, 20 and 40 % of 240 minutes.
    expect(await read(page, 4)).to.equal(
      '4 h: Slow running 60; Tempo running 36; Intervals 0; Cross-training 48; Strength 96',
    );
  });

  it('draws planned minutes, shares, or one quantity', async () => {
    const page = await open('sweep');
    await page.pick('sweep-drawing', 'rounded');
    await page.answered();
    expect(await read(page, 4)).to.match(/Slow running 70; .*Strength 75$/);
    await page.pick('sweep-drawing', 'share');
    await page.answered();
    expect(await read(page, 4)).to.match(/Slow running 30%; .*Strength 30%$/);
    await page.pick('sweep-drawing', 'one');
    await page.pick('sweep-quantity', 'running_minutes');
    await page.answered();
    // Running is 55 % of the week.
    expect(await read(page, 4)).to.match(/^4 h: .*132$/);
    expect(page.all('.sweep-plot svg path').length).to.be.at.least(1);
  });

  it('of a choice goes over its choices', async () => {
    const page = await open('sweep');
    await page.pick('sweep-input', 'season_phase');
    await page.answered();
    expect(reading(page).max).to.equal('5');
    await page.slide(reading(page), 0);
    expect(reading(page).getAttribute('aria-valuetext')).to.match(/^off season: .*Strength 96$/i);
    const use = page.all('.reading-line button').map(collapsed);
    expect(use).to.deep.equal(['Use off season']);
    await page.click(page.find('.reading-line button'));
    expect(shownPlan(page).inputs.phase).to.equal('off-season');
  });
});

describe('working backwards', () => {
  const answer = (page: SheetPage): string[] => page.texts('.answer-box p');
  const wanted = (page: SheetPage): HTMLInputElement => page.find('#back-wanted');
  async function want(page: SheetPage, text: string): Promise<SheetPage> {
    await page.fill(wanted(page), text);
    return page.answered();
  }

  it('90 minutes of strength need five hours, which can be used', async () => {
    const page = await open('backwards');
    await want(page, '90');
    // 30 % of 300 minutes.
    expect(answer(page)[0]).to.equal('Minutes of strength: 90 minutes at 5 hours.');
    const events = await page.heard(() => page.click(page.named('.answer-box button', 'Use 5 hours')));
    expect(events.map(({ detail }) => detail.minutes.strength)).to.deep.equal([90]);
    expect(page.scenarios).to.deep.equal(['5 h, base']);
  });

  it('two sessions of 45 are 90 minutes', async () => {
    const page = await open('backwards');
    for (const text of ['2 × 45', '2x45', '2*45', '45 + 45', '90,0']) {
      await want(page, '1');
      await want(page, text);
      expect(answer(page)[0], text).to.equal('Minutes of strength: 90 minutes at 5 hours.');
    }
  });

  it('planned minutes are so over a stretch, whose beginning can be used', async () => {
    const page = await open('backwards');
    await page.pick('back-quantity', 'strength_rounded');
    await want(page, '2 × 45');
    expect(answer(page)[0]).to.match(/90 minutes at 4 hours .* to just under 5 hours/);
    const use = page.find('.answer-box button');
    await page.click(use);
    expect(shownPlan(page).rounded.strength).to.equal(90);
    expect(shownPlan(page).inputs.hours).to.be.within(4.5, 5.5);
  });

  it('what is not reached says what comes nearest, and the rule that holds it', async () => {
    const page = await open('backwards');
    await want(page, '130');
    expect(answer(page)[0]).to.match(/^Minutes of strength: 130 minutes is not reached\. The nearest is 120 minutes/);
    expect(answer(page)[1]).to.include('Strength cap');
    await page.click(page.find('.answer-box button'));
    expect(shownPlan(page).minutes.strength).to.be.closeTo(120, 1e-6);
  });

  it('a share is a part of the whole, in per cent or not', async () => {
    const page = await open('backwards');
    await page.pick('back-quantity', 'strength_share');
    await page.pick('back-input', 'season_phase');
    for (const text of ['40 %', '0.4', '40']) {
      await want(page, '1');
      await want(page, text);
      // The off season has 40 % of strength, and no other phase has.
      expect(answer(page)[0], text).to.match(/40% at off season\.$/);
    }
  });

  it('an input that it does not hang on is told', async () => {
    const page = await open('backwards');
    await page.pick('back-input', 'strength_cap');
    await want(page, '90');
    expect(answer(page)[0]).to.include('90 minutes is not reached').and.include('72 minutes');
    expect(answer(page)[1]).to.include('does not depend on strength cap');
  });

  for (const text of ['ninety', '2 ×', '', '1e999', '45 + x'])
    it(`"${text}" is no amount, which is told beside the field`, async () => {
      const page = await open('backwards');
      await want(page, text);
      expect(wanted(page).ariaInvalid).to.equal('true');
      expect(wanted(page).getAttribute('aria-describedby')).to.equal('back-hint');
      expect(collapsed(page.find('#back-hint'))).to.include('neither a number nor sessions');
      expect(answer(page)).to.deep.equal([]);
      await want(page, '90');
      expect(wanted(page).ariaInvalid).to.equal('false');
      expect(answer(page)[0]).to.include('5 hours');
    });
});

describe('what moves it most', () => {
  const rows = (page: SheetPage): string[][] =>
    page.all<HTMLTableRowElement>('.influence tbody tr').map((row) => [...row.cells].map(collapsed));

  it('is the hours for strength at four hours: a step is 4.5 minutes', async () => {
    // In build, trained: a phase or a level next to it has the same split.
    const page = await (await openSheet('hours="4" phase="build" level="trained"')).askSheet('influence');
    // 30 % of the 15 minutes of a step.
    expect(rows(page)[0]).to.deep.equal(['Hours a week', '−4.5', '+4.5']);
    expect(rows(page)).to.have.length(5);
    expect(
      rows(page)
        .find(([name]) => name === 'Strength cap')
        ?.slice(1),
    ).to.deep.equal(['none', 'end of range']);
  });

  it('is the phase where one step leads into the off season: 40 instead of 30 % of 240 minutes', async () => {
    const page = await open('influence');
    expect(rows(page)[0]).to.deep.equal(['Season phase', '+24', 'none']);
  });

  it('is told by its number and by the length of its bar, the longest first', async () => {
    const page = await open('influence', 'level="new"');
    const widths = page
      .all('.influence tbody tr')
      .map((row) =>
        Math.max(
          0,
          ...[...row.querySelectorAll('.bar')].map((bar) => Number.parseFloat(getComputedStyle(bar, '::before').width)),
        ),
      );
    expect(widths).to.deep.equal([...widths].sort((one, other) => other - one));
    expect(widths[0]).to.be.greaterThan(20);
  });

  it('is asked of another quantity, and of another scenario', async () => {
    const page = await open('influence');
    await page.pick('influence-quantity', 'total_rounded');
    await page.answered();
    expect(rows(page)[0]).to.deep.equal(['Hours a week', '−15', '+15']);
    await page.set(0, 'hours', 20);
    await page.answered();
    expect(rows(page).find(([name]) => name === 'Hours a week')).to.deep.equal(['Hours a week', '−15', 'end of range']);
  });
});

it('a question that is shut is not asked again, and opens with what was asked', async () => {
  const page = await open('backwards');
  await page.fill(page.find<HTMLInputElement>('#back-wanted'), '108');
  await page.answered();
  await page.click(page.at('.question > summary', 1));
  expect(page.all('#back-wanted')).to.have.length(0);
  await page.askSheet('backwards');
  expect(page.find<HTMLInputElement>('#back-wanted').value).to.equal('108');
  // 30 % of six hours are 108 minutes.
  expect(page.texts('.answer-box p')[0]).to.include('6 hours');
});
