import { expect } from '@open-wc/testing';
import englishTexts from '../../../shared/locales/en.json';
import { onRealDay } from './on-day.js';
import { openRecord, scene } from './record-page.js';
import { openTables, TablePage } from './table-page.js';

after(onRealDay);

describe('what was done, in German', () => {
  it('has its answer in a sentence', async () => {
    const page = await openRecord(`${scene} lang="de"`);
    await page.ticks(0, 1);
    expect(page.lead).to.equal(
      '30. Nov. – 6. Dez. 2026: 2 von 7 Einheiten erledigt, 60 von 240 Minuten. Noch offen: 70 Minuten langsames Laufen, ' +
        '35 Minuten Ausgleichs\u00ADtraining und 75 Minuten Krafttraining.',
    );
    expect(page.sessions[0]).to.equal('Tempolauf Montag, 35 min');
  });

  it('takes a decimal comma, and says what is wrong', async () => {
    const page = await openRecord(`${scene} lang="de"`);
    await page.ticks(0);
    await page.typesIn(page.field(0, 'effort'), '6,5');
    expect(page.field(0, 'effort').value).to.equal('6,5');
    await page.typesIn(page.field(0, 'minutes'), '2000');
    expect(page.noteOf(0, 'minutes')).to.equal('Minuten ist 2000; erlaubt: 1 bis 1.440.');
    await page.typesIn(page.newMinutes, 'lang');
    expect(page.newNote).to.equal('Minuten ist "lang"; nötig ist eine Zahl.');
  });

  it('tells what of a table is not understood, fields without a title by their names', async () => {
    const page = await openTables('hours="4" phase="base" lang="de"');
    await page.pastes('30.11.2026;Yoga;45;4\n01.12.2026;locker;0;3\n02.12.2026;locker;30;11');
    expect(page.result).to.equal('0 Zeilen sind verstanden. 3 Zeilen nicht, sie bleiben draußen.');
    expect(page.unread).to.deep.equal([
      'Zeile 1: Art ist "Yoga"; erlaubt: Langsames Laufen, Tempolauf, Intervalle, Ausgleichs\u00ADtraining oder Krafttraining.',
      'Zeile 2: Minuten ist "0"; erlaubt: 1 bis 1.440.',
      'Zeile 3: Anstrengung ist "11"; erlaubt: 0 bis 10.',
    ]);
  });

  it('leaves no text of its own in English, nor a key', async () => {
    const base = await openRecord(`${scene} lang="de"`, 'week record');
    const page = new TablePage(base.element);
    await page.ticks(0, 2);
    await page.typesIn(page.newMinutes, '30');
    await page.opensAll();
    await page.enters('Datum;Art;Minuten;Notiz\n30.11.2026;locker;45;x\n1.13.2026;Yoga;;y');
    const text = page.panelText;
    expect(text).to.not.match(/\{\w+\}|record\.[a-z]|handout\.|undefined|NaN|null/);
    const english = Object.entries(englishTexts)
      .filter(([key]) => key.startsWith('record.') && !key.startsWith('record.words.'))
      .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
      .filter((message) => !message.includes('{') && message.length > 10);
    expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
  });

  it('changes with the language, and keeps what was done and what was typed', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), 'long');
    page.element.lang = 'de';
    await page.until(() => page.lead.includes('erledigt'), 'German comes');
    expect([page.ticked[0], page.field(0, 'minutes').value]).to.deep.equal([true, 'long']);
  });
});
