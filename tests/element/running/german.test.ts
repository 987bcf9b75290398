import { expect } from '@open-wc/testing';
import englishTexts from '../../../shared/locales/en.json';
import { paces, uptake } from './equations.js';
import { openRunning, scene } from './running-page.js';

const german = `${scene} lang="de" race="10k 45:00"`;

describe('paces and runs in German', () => {
  it('say first what it comes to', async () => {
    const page = await openRunning(german);
    const slow = paces('slow', uptake(10_000, 2700)).replace('–', ' bis ');
    expect(page.lead).to.match(
      new RegExp(`^Langsame Läufe in ${slow} je Kilometer: \\d+ bis \\d+ km in dieser Woche\\.$`),
    );
    expect(page.optionOf('running-unit')).to.equal('Kilometern');
    expect(page.runHeads[0]).to.match(/ 5,6 bis 6,6 km$/);
  });

  it('leave no text of theirs in English, nor a key', async () => {
    const page = await openRunning(german);
    page.element.running = { age: 17, highestHeart: 150, restingHeart: 50, weight: 70, thresholdPace: 280 };
    await page.settled();
    await page.opensAll();
    const text = page.panelText;
    expect(text).to.not.match(/\{\w+\}|running[.-][a-z]|undefined|NaN|null/);
    const english = Object.entries(englishTexts)
      .filter(([key]) => /^(?:running|running-notice|running-reason)\./.test(key))
      .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
      .filter((message) => !message.includes('{') && message.length > 14);
    expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
  });

  it('take a decimal comma', async () => {
    const page = await (await openRunning(german)).opens('heart');
    await page.typeIn('running-weight', '70,5');
    expect([page.running.wishes.weight, page.typedIn('running-weight').value]).to.deep.equal([70.5, '70,5']);
  });

  it('say what is wrong', async () => {
    const page = await openRunning(german);
    await page.typeIn('running-time', 'bald');
    expect(page.hintOf('running-time')).to.equal('Zeit dafür ist "bald"; nötig ist eine Zeit wie 45:00 oder 1:39:17.');
  });

  it('change with the language, and keep what was typed', async () => {
    const page = await openRunning(`${scene} race="10k 45:00"`);
    await page.typeIn('running-time', '44:00');
    page.element.lang = 'de';
    await page.until(() => page.lead.startsWith('Langsame'), 'German comes');
    expect(page.typedIn('running-time').value).to.equal('44:00');
  });
});
