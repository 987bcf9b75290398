import { expect } from '@open-wc/testing';
import { openSheet, type SheetPage } from './sheet-page.js';

/** Two scenarios, of 4 and of 6 hours. */
async function openTwo(attributes = ''): Promise<SheetPage> {
  const page = await openSheet(`hours="4" phase="base" ${attributes}`);
  await page.click(page.at('.toolbar button', 0));
  return page.set(1, 'hours', 6);
}

describe('the grid by keyboard', () => {
  it('is one stop of Tab, at the place where one was last', async () => {
    const page = await openTwo();
    expect(page.tabStops).to.have.length(1);
    await page.goTo(page.cell('tempo_minutes', 1));
    expect(page.tabStops).to.deep.equal([page.cell('tempo_minutes', 1)]);
    await page.press('Tab');
    expect(page.root.activeElement?.closest('.grid'), 'Tab leaves').to.equal(null);
    await page.pressWith(['Shift'], 'Tab');
    expect(page.focus).to.equal('tempo_minutes b');
  });

  it('keeps a stop when the row or the column of the last place is gone', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('tempo_minutes', 1));
    await page.chooseFromMenu(1, 'Remove');
    expect(page.tabStops).to.have.length(1);
    await page.goTo(page.cell('slow_share'));
    await page.openGroup('shares');
    expect(page.tabStops).to.have.length(1);
  });

  it('goes by arrows, and stays at the edges', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('slow_minutes', 0));
    for (const [key, place] of [
      ['ArrowDown', 'tempo_minutes a'],
      ['ArrowRight', 'tempo_minutes b'],
      ['ArrowRight', 'tempo_minutes b'],
      ['ArrowUp', 'slow_minutes b'],
      ['ArrowLeft', 'slow_minutes a'],
      ['ArrowLeft', 'slow_minutes head'],
      ['ArrowLeft', 'slow_minutes head'],
      ['ArrowUp', 'group minutes head'],
      ['ArrowUp', 'sessions strength head'],
    ] as const) {
      await page.press(key);
      expect(page.focus, key).to.equal(place);
      expect(page.tabStops, key).to.have.length(1);
    }
  });

  it('goes to the ends of a row by Home and End, of the grid with Ctrl', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('slow_minutes', 0));
    await page.press('End');
    expect(page.focus).to.equal('slow_minutes b');
    await page.press('Home');
    expect(page.focus).to.equal('slow_minutes head');
    await page.pressWith(['Control'], 'End');
    expect(page.focus).to.match(/^group splits/);
    await page.pressWith(['Control'], 'Home');
    expect(page.focus).to.equal('group planned head');
  });

  it('goes by ten rows by PageDown and PageUp', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('slow_rounded', 1));
    await page.press('PageDown');
    // Five more kinds and all together, the head of the sessions, four of their rows: the tenth is cross-training.
    expect(page.focus).to.equal('sessions cross b');
    await page.press('PageUp', 'PageUp');
    expect(page.focus).to.match(/^group planned/);
  });

  it('opens and shuts a group', async () => {
    const page = await openTwo();
    await page.goTo(page.group('limits'));
    expect(page.group('limits').ariaExpanded).to.equal('false');
    expect(page.all('[data-row="slow_shortest"]')).to.have.length(0);
    await page.press('Enter');
    expect(page.group('limits').ariaExpanded).to.equal('true');
    expect(page.shown('slow_shortest').text).to.equal('20');
    expect(page.hasFocus(page.group('limits'))).to.equal(true);
    await page.press('ArrowDown');
    expect(page.focus).to.equal('slow_shortest head');
    await page.press('ArrowUp', ' ');
    expect(page.group('limits').ariaExpanded).to.equal('false');
  });

  it('takes letters with Ctrl, Alt or Meta for what they are, and not for typing', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('slow_minutes'));
    await page.pressWith(['Alt'], 'x');
    expect(page.detail).to.equal(null);
  });
});

describe('the details of a cell', () => {
  for (const key of ['Enter', 'F2', ' '])
    it(`open by "${key}", with the focus in the field; Escape goes back`, async () => {
      const page = await openTwo();
      await page.goTo(page.cell('strength_minutes', 1));
      await page.press(key);
      expect(page.hasFocus(page.formula)).to.equal(true);
      expect(page.cell('strength_minutes', 1).ariaExpanded).to.equal('true');
      expect(page.detailText).to.include('Strength in “6 h, base”');
      await page.press('Escape');
      expect(page.detail).to.equal(null);
      expect(page.focus).to.equal('strength_minutes b');
      expect(page.cell('strength_minutes', 1).ariaExpanded).to.equal('false');
    });

  it('open by a press, and close by their button and by a second press', async () => {
    const page = await openTwo();
    await page.click(page.cell('strength_minutes'));
    expect(page.hasFocus(page.formula)).to.equal(true);
    await page.click(page.detailButton('Close'));
    expect([page.detail, page.focus]).to.deep.equal([null, 'strength_minutes a']);
    await page.click(page.cell('strength_minutes'));
    await page.click(page.cell('strength_minutes'));
    expect(page.detail).to.equal(null);
  });

  it('say why the number is so, and lead on to what it was worked out with', async () => {
    const page = await openTwo();
    await page.set(1, 'hours', 8);
    await page.open(page.cell('strength_minutes', 1));
    expect(page.detailText).to.include('Why 120 minutes of strength?').and.include('Strength cap');
    const further = page.find('.detail [data-quantity="weekly_minutes"]');
    further.focus();
    await page.press('Enter');
    expect(page.detailText).to.include('480 minutes');
    expect(page.root.activeElement).to.not.equal(null);
  });

  it('of sessions explain the whole minutes that they are cut from', async () => {
    const page = await openTwo();
    await page.open(page.cell('sessions strength', 0));
    expect(page.detailText).to.include('Why 75 minutes of strength, in whole steps?');
    expect(page.all('.detail [role="combobox"]')).to.have.length(0);
    expect(page.root.activeElement?.closest('.detail')).to.not.equal(null);
    await page.press('Escape');
    expect(page.focus).to.equal('sessions strength a');
  });

  it('open beside one cell at a time', async () => {
    const page = await openTwo();
    await page.open(page.cell('strength_minutes', 1));
    await page.open(page.cell('slow_share', 0));
    expect(page.all('.grid .detail')).to.have.length(1);
    expect(page.detailText).to.include('Slow running in “4 h, base”');
  });

  it('put the scenario of their cell on show', async () => {
    const page = await openTwo();
    expect(page.onShow).to.equal(1);
    await page.open(page.cell('strength_minutes', 0));
    expect(page.onShow).to.equal(0);
  });
});

describe('the focus stays in the sheet', () => {
  const open = async (): Promise<SheetPage> => {
    const page = await openTwo();
    return page.open(page.cell('strength_minutes', 1));
  };
  const acts: Readonly<Record<string, (page: SheetPage) => Promise<unknown>>> = {
    'when a value is set': async (page) => {
      await page.fill(page.formula, '100');
      return page.take();
    },
    'when a value is lifted by the field': async (page) => {
      await page.fill(page.formula, '100');
      await page.take();
      await page.press('Enter');
      await page.fill(page.formula, '');
      return page.take();
    },
    'when a value is lifted by the button': async (page) => {
      await page.fill(page.formula, '100');
      await page.take();
      await page.press('Enter');
      page.detailButton('Lift').focus();
      return page.press('Enter');
    },
    'when the details are closed': (page) => {
      page.detailButton('Close').focus();
      return page.press('Enter');
    },
  };
  for (const [name, act] of Object.entries(acts))
    it(name, async () => {
      const page = await open();
      await act(page);
      expect(page.focus).to.equal('strength_minutes b');
    });
});

describe('a block', () => {
  /** What the grid gives to the clipboard. */
  function copied(page: SheetPage): { plain: string; html: Document; isTaken: boolean } {
    const clipboardData = new DataTransfer();
    const event = new ClipboardEvent('copy', { clipboardData, bubbles: true, composed: true, cancelable: true });
    page.root.activeElement?.dispatchEvent(event);
    const html = new DOMParser().parseFromString(event.clipboardData?.getData('text/html') ?? '', 'text/html');
    return { plain: event.clipboardData?.getData('text/plain') ?? '', html, isTaken: event.defaultPrevented };
  }
  const tableOf = ({ html }: ReturnType<typeof copied>): string[][] =>
    [...(html.querySelector('table')?.rows ?? [])].map((row) => [...row.cells].map(({ textContent }) => textContent));

  it('is marked by Shift and arrows, from where one was; moving on lets it go', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('tempo_minutes', 0));
    expect(page.marked).to.deep.equal([]);
    await page.pressWith(['Shift'], 'ArrowDown', 'ArrowRight');
    expect(page.marked).to.deep.equal([
      'tempo_minutes a',
      'tempo_minutes b',
      'intervals_minutes a',
      'intervals_minutes b',
    ]);
    await page.pressWith(['Shift'], 'ArrowUp', 'ArrowUp', 'ArrowLeft');
    expect(page.marked).to.deep.equal(['slow_minutes a', 'tempo_minutes a']);
    await page.press('ArrowDown');
    expect(page.marked).to.deep.equal([]);
  });

  it('is marked by Shift and a press', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('tempo_minutes', 0));
    const target = page.cell('intervals_minutes', 1);
    target.dispatchEvent(new MouseEvent('click', { bubbles: true, composed: true, shiftKey: true }));
    await page.settled();
    expect(page.marked).to.have.length(4);
    expect(page.detail).to.equal(null);
  });

  it('is copied as lines with tabs and as a table, exactly what is marked', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('tempo_minutes', 0));
    await page.pressWith(['Shift'], 'ArrowDown', 'ArrowRight');
    const copy = copied(page);
    expect(copy.isTaken).to.equal(true);
    // 15 % and 10 % of 240 and of 360 minutes.
    const lines = [
      ['Quantity', '4 h, base', '6 h, base'],
      ['Exact minutes: Tempo running', '36', '54'],
      ['Exact minutes: Intervals', '24', '36'],
    ];
    expect(copy.plain).to.equal(lines.map((line) => `${line.join('\t')}\r\n`).join(''));
    expect(tableOf(copy)).to.deep.equal(lines);
    expect(copy.html.querySelectorAll('script, style')).to.have.length(0);
  });

  it('of one cell needs no marking, and has the column it stands in', async () => {
    const page = await openTwo();
    await page.goTo(page.cell('strength_share', 1));
    expect(tableOf(copied(page))).to.deep.equal([
      ['Quantity', '6 h, base'],
      ['Shares: Strength', '0.3'],
    ]);
  });

  it('writes numbers as its language does, and a name that begins like a formula as text', async () => {
    const page = await openTwo('lang="de"');
    await page.rename(1, '=1+1');
    await page.goTo(page.cell('strength_share', 1));
    const [head = [], line = []] = tableOf(copied(page));
    expect(head[1]).to.equal("'=1+1");
    expect(line[1]).to.equal('0,3');
  });

  it('leaves the copying of a text in the details alone', async () => {
    const page = await openTwo();
    await page.open(page.cell('strength_share', 1));
    expect(copied(page).isTaken).to.equal(false);
  });
});

describe('in a language from right to left', () => {
  it('the arrows go the other way, as the columns do', async () => {
    const page = await openTwo('lang="ar"');
    const [first, second] = [page.cell('slow_minutes', 0), page.cell('slow_minutes', 1)].map(
      (each) => each.getBoundingClientRect().left,
    );
    expect(first).to.be.greaterThan(second ?? 0);
    await page.goTo(page.cell('slow_minutes', 0));
    await page.press('ArrowLeft');
    expect(page.focus).to.equal('slow_minutes b');
    await page.press('ArrowRight', 'ArrowRight');
    expect(page.focus).to.equal('slow_minutes head');
  });
});
