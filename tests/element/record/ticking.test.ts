import { expect } from '@open-wc/testing';
import { accessibleNames } from '../accessibility-tree.js';
import { needs } from '../instruments.js';
import { onRealDay } from './on-day.js';
import { monday, openRecord, scene, sunday, wednesday } from './record-page.js';

after(onRealDay);

describe('the sessions of a week', () => {
  it('stand in the order of their days, none of them done, with what is left in a sentence', async () => {
    const page = await openRecord();
    expect(page.sessions).to.deep.equal([
      ...['Tempo running Monday, 35 min', 'Intervals Wednesday, 25 min', 'Slow running Wednesday, 20 min'],
      ...['Cross-training Thursday, 35 min', 'Strength Thursday, 25 min', 'Strength Saturday, 50 min'],
      'Slow running Sunday, 50 min',
    ]);
    expect(page.ticked).to.deep.equal(Array.from({ length: 7 }, () => false));
    expect(page.lead).to.equal(
      'Nov 30 – Dec 6, 2026: 0 of 7 sessions done, 0 of 240 minutes. Left: 70 minutes of slow running, ' +
        '35 minutes of tempo running, 25 minutes of intervals, 35 minutes of cross-training, and 75 minutes of strength.',
    );
  });

  needs('accessibleValues', () => {
    it('are told with their kind, day and minutes apart', async () => {
      await openRecord();
      const [first] = await accessibleNames(/^checkbox$/);
      expect(first).to.equal('checkbox: Tempo running Monday, 35 min');
    });
  });

  it('are for any day where the planner has no days', async () => {
    const page = await openRecord(scene, 'split record');
    expect(page.sessions.every((each) => / any day, \d+ min$/.test(each))).to.equal(true);
    await page.ticks(0);
    // Any day will do: it was today.
    expect(page.doneOf(0)[0]).to.equal('Wednesday');
  });

  it('are ticked off: day and minutes as planned, and less is left', async () => {
    const page = await openRecord();
    const events = await page.heard(() => page.ticks(0, 1));
    expect(events, 'the plan is as it was').to.deep.equal([]);
    expect(page.ticked).to.deep.equal([true, true, false, false, false, false, false]);
    expect([page.doneOf(0), page.doneOf(1)]).to.deep.equal([
      ['Monday', '35', ''],
      ['Wednesday', '25', ''],
    ]);
    expect(page.lead).to.equal(
      'Nov 30 – Dec 6, 2026: 2 of 7 sessions done, 60 of 240 minutes. Left: 70 minutes of slow running, ' +
        '35 minutes of cross-training, and 75 minutes of strength.',
    );
  });

  it('all ticked off, leave nothing', async () => {
    const page = await openRecord(scene, undefined, sunday);
    await page.ticks(0, 1, 2, 3, 4, 5, 6);
    expect(page.lead).to.equal('Nov 30 – Dec 6, 2026: 7 of 7 sessions done, 240 of 240 minutes. Nothing is left.');
  });

  it('are unticked, and are open again', async () => {
    const page = await openRecord();
    const { lead } = page;
    await page.ticks(0, 2);
    await page.ticks(2, 0);
    expect([page.lead, page.ticked.includes(true), page.has('.record-fields')]).to.deep.equal([lead, false, false]);
  });

  it('are ticked by a press on their words too', async () => {
    const page = await openRecord();
    await page.click(page.find('.record-sessions > li:nth-child(4) .record-what b'));
    expect(page.ticked.indexOf(true)).to.equal(3);
  });

  it('ticked off before their day are done today; on their day or after it, on their day', async () => {
    const page = await openRecord();
    await page.ticks(0, 2, 6);
    expect([page.doneOf(0)[0], page.doneOf(2)[0], page.doneOf(6)[0]]).to.deep.equal([
      ...['Monday', 'Wednesday', 'Wednesday'],
    ]);
    const early = await openRecord(scene, undefined, monday);
    await early.ticks(5);
    expect(early.doneOf(5)[0]).to.equal('Monday');
  });
});

describe('what was done', () => {
  it('on another day than planned is that session', async () => {
    const page = await openRecord();
    await page.ticks(3);
    await page.picks(page.dayField(3), 'Friday');
    expect([page.doneOf(3), page.ticked.indexOf(true), page.sessions]).to.deep.equal([
      ...[['Friday', '35', ''], 3],
      (await openRecord()).sessions,
    ]);
  });

  it('has the minutes that it had, and they count', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), '48');
    expect(page.doneOf(0)).to.deep.equal(['Monday', '48', '']);
    expect(page.lead).to.contain('1 of 7 sessions done, 48 of 240 minutes.');
    expect(page.kind('tempo')).to.deep.equal([35, 48, 0]);
  });

  it('has an effort where one is told, with a decimal comma or point, and none again where it is emptied', async () => {
    const page = await openRecord();
    await page.ticks(1);
    for (const [typed, shown] of [
      ['7', '7'],
      ['6,5', '6.5'],
      ['0', '0'],
      ['10', '10'],
      ['', ''],
    ] as const) {
      await page.typesIn(page.field(1, 'effort'), typed);
      expect([page.field(1, 'effort').value, page.noteOf(1, 'effort')], typed).to.deep.equal([shown, '']);
    }
  });

  it('is not done where its minutes are emptied', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), '');
    expect([page.ticked.includes(true), page.kind('tempo')]).to.deep.equal([false, [35, 0, 35]]);
  });
});

describe('an entry that is wrong', () => {
  for (const [name, text, note] of [
    ['minutes', 'an hour', 'Minutes is "an hour"; it has to be a number.'],
    ['minutes', '0', 'Minutes is 0; allowed: 1 to 1,440.'],
    ['minutes', '1441', 'Minutes is 1441; allowed: 1 to 1,440.'],
    ['minutes', '45.5', 'Minutes is 45.5; allowed: steps of 1.'],
    ['minutes', '1:30', 'Minutes is "1:30"; it has to be a number.'],
    ['minutes', '-5', 'Minutes is "-5"; it has to be a number.'],
    ['effort', '11', 'Effort, 0 to 10 is 11; allowed: 0 to 10.'],
    ['effort', 'hard', 'Effort, 0 to 10 is "hard"; it has to be a number.'],
  ] as const)
    it(`"${text}" as ${name} is told, and stays as it was typed`, async () => {
      const page = await openRecord();
      await page.ticks(0);
      const { lead } = page;
      await page.typesIn(page.field(0, name), text);
      const field = page.field(0, name);
      expect([field.value, field.ariaInvalid, page.noteOf(0, name), page.told]).to.deep.equal([
        text,
        'true',
        note,
        note,
      ]);
      expect(field.getAttribute('aria-describedby')).to.equal(page.find(`#record-planned-0-${name}-hint`).id);
      expect([page.lead, page.hasFocus(field)]).to.deep.equal([lead, true]);
    });

  it('is gone with a good one', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), 'long');
    await page.typesIn(page.field(0, 'minutes'), '40');
    expect([page.noteOf(0, 'minutes'), page.told, page.field(0, 'minutes').ariaInvalid]).to.deep.equal([
      ...['', '', 'false'],
    ]);
  });

  it('stays with its own session when another is ticked off', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), 'long');
    await page.ticks(1);
    expect([page.field(0, 'minutes').value, page.field(1, 'minutes').value]).to.deep.equal(['long', '25']);
  });

  it('is not shown in another week, nor when its session is ticked off anew', async () => {
    const page = await openRecord(scene, undefined, wednesday);
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), 'long');
    await page.ticks(0);
    await page.ticks(0);
    expect(page.field(0, 'minutes').value).to.equal('35');
  });
});
