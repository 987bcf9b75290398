import { expect } from '@open-wc/testing';
import { onRealDay } from './on-day.js';
import { openTables, type TablePage } from './table-page.js';

after(onRealDay);

const lines = [
  ['Date', 'Kind', 'Minutes', 'Effort'],
  ['2026-11-30', 'Tempo running', '35', '7'],
  ['2026-12-01', 'Strength', '40', ''],
  ['2026-12-02', 'Slow running', '50', '3.5'],
] as const;
const tableWith = (delimiter: string): string => lines.map((line) => line.join(delimiter)).join('\n');

/** Whole dates as English writes them. */
const read = [
  ['2', 'Monday, November 30, 2026', 'Tempo running', '35', '7'],
  ['3', 'Tuesday, December 1, 2026', 'Strength', '40', ''],
  ['4', 'Wednesday, December 2, 2026', 'Slow running', '50', '3.5'],
];

const done = (page: TablePage): string => page.lead.replace(/.*\d: /, '').replace(/ Left.*/, '');

describe('a table that is pasted', () => {
  for (const [name, delimiter] of [
    ['tabs, as spreadsheets copy', '\t'],
    ['commas', ','],
    ['semicolons', ';'],
  ] as const)
    it(`with ${name} is understood line by line`, async () => {
      const page = await (await openTables()).pastes(tableWith(delimiter));
      expect([page.result, page.understood, page.unread]).to.deep.equal([
        ...['3 lines are understood. 0 lines are not, and stay out.', read, []],
      ]);
      expect(page.mapping.slice(0, 4)).to.deep.equal([
        ...['Date: Date', 'Kind: Kind', 'Minutes: Minutes', 'Effort: Effort'],
      ]);
    });

  it('is read at once, before the field is left', async () => {
    const page = await openTables();
    page.paste.focus();
    page.paste.dispatchEvent(new ClipboardEvent('paste', { bubbles: true, composed: true }));
    document.execCommand('insertText', false, tableWith(','));
    await page.readTable();
    expect([page.result, page.hasFocus(page.paste)]).to.deep.equal([
      ...['3 lines are understood. 0 lines are not, and stay out.', true],
    ]);
  });

  it('adds nothing to the record before that is asked for, then all of it, once', async () => {
    const page = await (await openTables()).pastes(tableWith(','));
    expect([done(page), page.ticked.includes(true)]).to.deep.equal(['0 of 7 sessions done, 0 of 240 minutes.', false]);
    expect(page.takeButton.textContent.trim()).to.equal('Take over 3 sessions');
    const events = await page.heard(() => page.takesOver());
    expect([events, done(page)]).to.deep.equal([[], '3 of 7 sessions done, 125 of 240 minutes.']);
    expect([page.told, page.hasFocus(page.find('#record-title'))]).to.deep.equal(['3 sessions are taken over.', true]);
    expect([page.paste.value, page.has('.import-mapping')]).to.deep.equal(['', false]);
  });

  it('has its efforts taken over too', async () => {
    const page = await (await openTables()).pastes(tableWith(','));
    await page.takesOver();
    const efforts = page.all<HTMLInputElement>('.record-fields [id$="-effort"]').map(({ value }) => value);
    expect(efforts.sort()).to.deep.equal(['', '3.5', '7']);
  });

  it('again adds nothing, and that is told', async () => {
    const page = await (await openTables()).pastes(tableWith(','));
    await page.takesOver();
    await page.pastes(tableWith(';'));
    expect([page.takeButton.textContent.trim(), page.takeButton.ariaDisabled, page.takeNotes]).to.deep.equal([
      ...['Take over 0 sessions', 'true', ['3 more are in the record already.']],
    ]);
    await page.takesOver();
    expect(done(page)).to.equal('3 of 7 sessions done, 125 of 240 minutes.');
  });

  it('of which some are new adds those alone', async () => {
    const page = await (await openTables()).pastes(tableWith(','));
    await page.takesOver();
    await page.pastes(`${tableWith(',')}\n2026-12-03,Intervals,25,8`);
    expect([page.takeButton.textContent.trim(), page.takeNotes]).to.deep.equal([
      ...['Take over one session', ['3 more are in the record already.']],
    ]);
    await page.takesOver();
    expect([done(page), page.told]).to.deep.equal([
      ...['4 of 7 sessions done, 150 of 240 minutes.', 'One session is taken over.'],
    ]);
  });

  it('is emptied, and nothing of it is left', async () => {
    const page = await (await openTables()).pastes(tableWith(','));
    await page.pastes(' ');
    expect([page.has('.import-mapping'), page.faults]).to.deep.equal([false, []]);
  });

  it('is pasted, read and taken over by keys alone', async () => {
    const page = await openTables();
    await page.pastes(tableWith('\t'));
    await page.goTo(page.takeButton);
    await page.press('Enter');
    expect(done(page)).to.equal('3 of 7 sessions done, 125 of 240 minutes.');
  });
});

describe('lines that are not understood', () => {
  const table = [
    'Date,Kind,Minutes,Effort,Notes',
    '2026-11-30,Easy run,45,4,fine',
    '2026-02-30,Easy run,45,4,',
    '2026-12-01,Yoga,45,4,',
    '2026-12-02,Easy run,0,4,',
    '2026-12-02,Easy run,soon,11,',
    ',Easy run,45,,',
  ].join('\n');

  it('are told with line, field and reason, and stay out', async () => {
    const page = await (await openTables()).pastes(table);
    expect(page.result).to.equal('One line is understood. 5 lines are not, and stay out. Not used: Notes.');
    const [noDate = '', noKind = '', noMinutes = '', ...others] = page.unread;
    expect(noDate).to.match(/^Line 3: Date is "2026-02-30"; allowed: a day of the calendar/);
    expect(noKind).to.match(/^Line 4: Kind is "Yoga"; allowed: /);
    expect(noMinutes).to.equal('Line 5: Minutes is "0"; allowed: 1 to 1,440.');
    expect(others).to.deep.equal([
      'Line 6: Minutes is "soon"; it has to be a duration such as 45, 45 min or 1:05. Effort is "11"; allowed: 0 to 10.',
      'Line 7: Date is missing.',
    ]);
    await page.takesOver();
    expect(done(page)).to.equal('1 of 7 sessions done, 45 of 240 minutes.');
  });

  it('call the kinds of training what the lists of kinds call them', async () => {
    const page = await (await openTables()).pastes(table);
    expect(page.unread[1]).to.equal(
      'Line 4: Kind is "Yoga"; allowed: Slow running, Tempo running, Intervals, Cross-training, or Strength.',
    );
  });

  it('are told in a list that is reached by keys, and has a name', async () => {
    const page = await (await openTables()).pastes(table);
    const { tabIndex, ariaLabel } = page.find('.import-unread');
    expect([tabIndex, ariaLabel]).to.deep.equal([0, '5 lines are not, and stay out.']);
  });

  it('are understood once their kind is told', async () => {
    const page = await (await openTables()).pastes(table);
    await page.maps('Yoga', 'Strength');
    expect(page.result).to.contain('2 lines are understood. 4 lines are not');
    expect(page.understood[1]?.slice(2)).to.deep.equal(['Strength', '45', '4']);
    await page.maps('Easy run', 'leave these out');
    expect(page.result).to.contain('One line is understood.');
  });

  it('beyond the first hundred are counted', async () => {
    const bad = Array.from({ length: 130 }, () => 'someday,Easy run,45');
    const good = Array.from({ length: 120 }, () => '2026-12-01,Easy run,45');
    const page = await (await openTables()).enters(['Date,Kind,Minutes', ...good, ...bad].join('\n'));
    expect(page.result).to.equal('120 lines are understood. 130 lines are not, and stay out.');
    expect([page.understood.length, page.unread.length, page.unread.at(-1)]).to.deep.equal([100, 101, 'and 30 more']);
    expect(page.takeButton.textContent.trim()).to.equal('Take over 120 sessions');
  });
});
