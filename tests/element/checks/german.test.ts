import { expect } from '@open-wc/testing';
import englishTexts from '../../../shared/locales/en.json';
import { openChecks, questions, scene } from './checks-page.js';

const german = `${scene} lang="de"`;

const ownKeys = /^(?:checks?|check-(?:level|group|reason|not|says|change|missing)|screening|screening-help|advice)\./;

describe('checks in German', () => {
  it('say first what is worth a look', async () => {
    const page = await openChecks(german);
    expect(page.lead).to.match(/3 von 4/);
    expect(page.partOf('activity', 'says')).to.match(/132 min.*300 min/);
  });

  it('leave no text of their own in English, nor a key', async () => {
    const page = await openChecks(german, 'checks week');
    await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
    page.element.checks = { age: 15, hoursBefore: 2, longestRun: 20, weeks: [[1, 2, 3, 4, 5, 6, 7]] };
    await page.settled();
    await page.opensAll();
    await page.ticks('known-disease', 'pain', 'pregnant', 'recent-birth', 'low-energy');
    const texts = [page.panelText];
    await page.ticks(...questions.slice(0, 2));
    texts.push(page.panelText);
    for (const text of texts) {
      expect(text).to.not.match(/\{\w+\}|checks?[.-][a-z]|screening[.-]|advice\.|undefined|NaN|null/);
      const english = Object.entries(englishTexts)
        .filter(([key]) => ownKeys.test(key))
        .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
        .filter((message) => !message.includes('{') && message.length > 14);
      expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
    }
  });

  it('take a decimal comma in fields; loads are whole numbers, and between them a comma could stand for anything', async () => {
    const page = await (await openChecks(german)).opens('own');
    await page.typeIn('checks-hours', '3,2');
    expect([page.typedIn('checks-hours').value, page.partOf('hours-rise', 'says')]).to.satisfy(
      ([shown, says]: readonly string[]) => shown === '3,2' && (says ?? '').includes('25'),
    );
    await page.tellWeeks('900,4\n901,6');
    expect([page.load.own.load, page.hintOf('checks-weeks')]).to.deep.equal([
      ...[null, 'Belastungen der eigenen Wochen ist "900,4"; nötig ist eine Zahl.'],
    ]);
    await page.typeIn('checks-effort-slow', '3,5');
    expect([page.typedIn('checks-effort-slow').value, page.load.efforts.slow]).to.deep.equal(['3,5', 3.5]);
  });

  it('say what is wrong', async () => {
    const page = await (await openChecks(german)).opens('own');
    await page.typeIn('checks-age', '4');
    expect(page.hintOf('checks-age')).to.match(/erlaubt: 5 bis 110\.$/);
    await page.tellWeeks('1 2 3');
    expect(page.hintOf('checks-weeks')).to.match(/sieben Tage oder eine Zahl für die Woche/);
    await page.tellWeeks('1 zwei 3 4 5 6 7');
    expect(page.hintOf('checks-weeks')).to.match(/zwei/);
    page.element.checks = { age: 3 };
    await page.settled();
    expect(page.problems.join()).to.match(/erlaubt: 5 bis 110/);
  });

  it('stop in German', async () => {
    const page = await (await openChecks(german)).opens('start');
    await page.ticks('bone-pain');
    expect([page.title, page.element.plan]).to.deep.equal(['Vorerst kein Plan', null]);
    expect(page.advice.join(' ')).to.match(/^Jetzt nicht trainieren\..*kein Plan gezeigt.*Örtliche Regeln/);
    await page.click(page.named('.checks-start button.act', 'Antworten vergessen'));
    expect([page.answers, page.element.plan !== null]).to.deep.equal([[], true]);
  });

  it('change with the language, and keep what was told', async () => {
    const page = await (await openChecks()).opens('start');
    await page.typeIn('checks-age', '67');
    await page.typeIn('checks-run', 'far');
    await page.ticks('pregnant');
    page.element.lang = 'de';
    await page.until(() => page.advice.join().includes('Schwanger'), 'German comes');
    expect([page.typedIn('checks-age').value, page.typedIn('checks-run').value, page.answers]).to.deep.equal([
      ...['67', 'far', ['pregnant']],
    ]);
    expect(page.hintOf('checks-run')).to.match(/nötig ist/);
  });
});
