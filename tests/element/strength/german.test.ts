import { expect } from '@open-wc/testing';
import englishTexts from '../../../shared/locales/en.json';
import { openStrength, scene } from './strength-page.js';

const german = `${scene} lang="de"`;

describe('strength in German', () => {
  it('says first what it comes to', async () => {
    const page = await openStrength(german);
    expect(page.lead).to.equal('Schwerer: Einheiten von 35 Minuten und 40 Minuten.');
    expect(page.movements(0)).to.include('Kniebeuge mit Kurzhantel vor der Brust');
    expect(page.equipment('Kurzhanteln').checked).to.equal(true);
  });

  it('leaves no text of its own in English, nor a key', async () => {
    const page = await openStrength(german);
    page.element.strength = {
      ...{ age: 17, minutes: 20, forms: { squat: 'barbell-squat' } },
      lifted: [{ movement: 'goblet-squat', kilograms: 40, repetitions: 5 }],
    };
    await page.settled();
    await page.opensAll();
    const text = page.panelText;
    expect(text).to.not.match(/\{\w+\}|strength[.-][a-z]|movement[.-][a-z]|undefined|NaN|null/);
    const english = Object.entries(englishTexts)
      .filter(([key]) =>
        /^(?:strength|strength-notice|strength-reason|stage|movement|movement-how|movement-caution)\./.test(key),
      )
      .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
      .filter((message) => !message.includes('{') && message.length > 14);
    expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
  });

  it('takes a decimal comma', async () => {
    const page = await (await openStrength(german)).opens('lifted');
    await page.typeIn('strength-goblet-squat-kilograms', '42,5');
    await page.typeIn('strength-goblet-squat-repetitions', '5');
    expect(page.strength.wishes.lifted[0]?.kilograms).to.equal(42.5);
    expect(page.typedIn('strength-goblet-squat-kilograms').value).to.equal('42,5');
  });

  it('says what is wrong', async () => {
    const page = await openStrength(german);
    await page.typeIn('strength-minutes', '3');
    expect(page.hintOf('strength-minutes')).to.match(/erlaubt: 5 bis 180\.$/);
  });

  it('changes with the language, and keeps what was set', async () => {
    const page = await openStrength();
    await page.dragTo('strength-minutes', 30);
    page.element.lang = 'de';
    await page.until(() => page.lead.startsWith('Schwerer'), 'German comes');
    expect(page.lead).to.contain('30 Minuten');
  });
});
