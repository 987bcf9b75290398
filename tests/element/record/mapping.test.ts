import { expect } from '@open-wc/testing';
import { onRealDay } from './on-day.js';
import { openTables } from './table-page.js';

after(onRealDay);

describe('how a table is read is guessed', () => {
  it('from titles in German, days first and hours', async () => {
    const page = await openTables('hours="4" phase="base" lang="de"');
    await page.pastes('Tag;Sportart;Dauer;Belastung\n13.11.2026;Dauerlauf;1:05;4,5\n14.11.2026;Radfahren;0:45;3');
    expect(page.mapping).to.deep.equal([
      ...['Datum: Tag', 'Art: Sportart', 'Minuten: Dauer', 'Anstrengung: Belastung'],
      ...['Datumsangaben: Tag, Monat, Jahr', 'Längen: als Stunden und Minuten: 0:45'],
      ...['Dauerlauf: Langsames Laufen', 'Radfahren: Ausgleichs\u00ADtraining'],
    ]);
    expect(page.understood.map((row) => row.slice(1))).to.deep.equal([
      ['Freitag, 13. November 2026', 'Langsames Laufen', '65', '4,5'],
      ['Samstag, 14. November 2026', 'Ausgleichs\u00ADtraining', '45', '3'],
    ]);
  });

  it('without titles from the cells, and columns are numbered', async () => {
    const page = await openTables();
    await page.pastes('2026-11-30,easy,45\n2026-12-01,gym,40');
    expect(page.mapping).to.deep.equal([
      ...['Date: column 1', 'Kind: column 2', 'Minutes: column 3', 'Effort: not in the table'],
      ...['Dates are written: year, month, day', 'Lengths are written: in minutes: 45'],
      ...['easy: Slow running', 'gym: Strength'],
    ]);
    expect(page.understood.map(([line]) => line)).to.deep.equal(['1', '2']);
  });
});

describe('how a table is read is changed', () => {
  it('by the order of its dates', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Minutes\n02/11/2026,easy,45');
    // Either may be meant: nobody guesses.
    expect([page.chosen('Dates are written'), page.understood]).to.deep.equal(['year, month, day', []]);
    await page.maps('Dates are written', 'day, month, year');
    expect(page.understood[0]?.[1]).to.equal('Monday, November 2, 2026');
    await page.maps('Dates are written', 'month, day, year');
    expect(page.understood[0]?.[1]).to.equal('Wednesday, February 11, 2026');
  });

  it('by the way lengths are written', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Time\n2026-11-30,easy,1:30');
    const seen: (string | undefined)[] = [];
    for (const way of ['as hours and minutes: 0:45', 'as minutes and seconds: 45:00']) {
      await page.maps('Lengths are written', way);
      seen.push(page.understood[0]?.[3]);
    }
    expect(seen).to.deep.equal(['90', '2']);
    await page.pastes('Date,Kind,Time\n2026-11-30,easy,1.5');
    await page.maps('Lengths are written', 'in hours: 0.75');
    expect(page.understood[0]?.[3]).to.equal('90');
  });

  it('by its columns; a column without a field is named as not used', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Minutes,Moving,Mood,\n2026-11-30,easy,45,40,6,x');
    expect(page.result).to.contain('Not used: Moving, Mood, and #6.');
    await page.maps('Minutes', 'Moving');
    expect([page.understood[0]?.[3], page.result]).to.satisfy(
      ([minutes = '', result = '']: readonly string[]) =>
        minutes === '40' && result.includes('Not used: Minutes, Mood'),
    );
    await page.maps('Effort', 'Mood');
    expect([page.understood[0]?.[4], page.chosen('Effort')]).to.deep.equal(['6', 'Mood']);
    await page.maps('Effort', 'not in the table');
    expect(page.understood[0]?.[4]).to.equal('');
  });

  it('to no column of minutes: no line is understood, and each says what is missing', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Minutes\n2026-11-30,easy,45');
    await page.maps('Minutes', 'not in the table');
    expect([page.unread, page.takeButton.ariaDisabled]).to.deep.equal([['Line 2: Minutes is missing.'], 'true']);
  });

  it('to another column of kinds, whose texts are guessed anew', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Also,Minutes\n2026-11-30,easy,gym,45\n2026-12-01,easy,bike,45');
    expect(page.mapping.slice(6)).to.deep.equal(['easy: Slow running']);
    await page.maps('Kind', 'Also');
    expect(page.mapping.slice(6)).to.deep.equal(['gym: Strength', 'bike: Cross-training']);
    expect(page.understood.map(([, , kind]) => kind)).to.deep.equal(['Strength', 'Cross-training']);
    await page.maps('Kind', 'not in the table');
    expect(page.mapping.slice(6)).to.deep.equal([]);
  });

  it('with the focus on the list that was changed', async () => {
    const page = await openTables();
    await page.pastes('Date,Kind,Minutes\n02/11/2026,easy,45');
    await page.goTo(page.list('Dates are written'));
    await page.press('ArrowDown');
    expect([page.chosen('Dates are written'), page.hasFocus(page.list('Dates are written'))]).to.deep.equal([
      ...['day, month, year', true],
    ]);
    expect(page.understood).to.have.length(1);
  });

  it('of many kinds the first sixty have a list, and the others are counted', async () => {
    const page = await openTables();
    const rows = Array.from({ length: 63 }, (_, index) => `2026-11-30,"club ${String(index)}",45`);
    await page.enters(['Date,Kind,Minutes', ...rows].join('\n'));
    expect(page.mapping).to.have.length(6 + 60);
    expect(page.texts('.import-mapping .hint')).to.include('and 3 more, which are left out');
  });
});
