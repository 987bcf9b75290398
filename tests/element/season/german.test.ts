import { expect } from '@open-wc/testing';
import englishTexts from '../../../shared/locales/en.json';
import { collapsed } from '../text.js';
import { openSeason, scene } from './season-page.js';

const soft = /\u00AD/g;

describe('the season in German', () => {
  it('says first what it comes to', async () => {
    const page = await openSeason(`${scene} lang="de"`);
    expect(page.lead).to.equal(
      'Halbmarathon am Sonntag, 11. April 2027: 16 Wochen, von 4 Stunden pro Woche auf 6 Stunden in Woche 11, die letzten 2 Wochen als Tapering.',
    );
    expect(page.weekTitle).to.match(/^Woche 1 von 16, 21\.–27\. Dez(?:\.|ember) 2026$/);
    expect(page.weekText.replace(soft, '')).to.equal('4 Stunden, Grundlagenphase. Hier beginnt die Saison.');
    expect(page.texts('.season-chart .sweep-bands span').map((text) => text.replace(soft, ''))).to.deep.equal([
      ...['Grundlagenphase', 'Aufbauphase', 'Spitzenphase', 'Tapering', 'Erholung'],
    ]);
  });

  it('leaves no text of the season in English, nor a key', async () => {
    const page = await openSeason(`${scene} lang="de"`);
    page.element.season = { weeks: 4, weeksOff: 2, events: [{ date: '2027-03-28', event: '10k' }] };
    await page.settled();
    await page.openAll();
    const text = collapsed(page.find('.season-panel'));
    expect(text).to.not.match(/\{\w+\}|season[.-][a-z]|hours-reason|undefined|NaN/);
    const english = Object.entries(englishTexts)
      .filter(([key]) => /^(?:season|hours-reason|season-notice|season-change|season-reason)\./.test(key))
      .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
      .filter((message) => !message.includes('{') && message.length > 14);
    expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
  });

  it('takes a decimal comma', async () => {
    const page = await openSeason(`${scene} lang="de"`);
    await page.typeIn('season-most', '5,5');
    expect(page.season.wishes.mostHours).to.equal(5.5);
    expect(page.typedIn('season-most').value).to.equal('5,5');
  });

  it('says what is wrong', async () => {
    const page = await openSeason(`${scene} lang="de"`);
    await page.typeIn('season-weeks', '0');
    expect(page.hintOf('season-weeks')).to.match(/erlaubt: 1 bis 104\.$/);
  });

  it('changes with the language, and keeps what was set', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', '12');
    await page.openBox('table');
    page.element.lang = 'de';
    await page.until(() => page.lead.startsWith('Halbmarathon'), 'German comes');
    expect(page.lead).to.contain('12 Wochen');
    expect(page.table('table')[0]?.slice(0, 4)).to.deep.equal(['Woche', 'Ab', 'Phase', 'Stunden']);
  });
});
