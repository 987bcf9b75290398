import { expect } from '@open-wc/testing';
import { shownPlan } from '../planner-page.js';
import { openHandout, scene, type HandoutPage } from './handout-page.js';
import { carrying, choosesFile, drag, dropsFile, fileText, savesPlan } from './files.js';

const everything = 'split week sheet season running strength checks record handout';

/** A planner with all panels, and all of them there. */
async function openAll(attributes = `${scene} event-date="2027-04-11" race="10k 45:00"`): Promise<HandoutPage> {
  const page = await openHandout(attributes, everything);
  const there = ['.grid', '.board .day', '#season-week-title', '.running .lead', '.strength .lead', '.record .lead'];
  return page.until(() => there.every((each) => page.has(each)), 'all panels come');
}

/** What a person might have set, a bit of everything. */
async function workOn(page: HandoutPage): Promise<HandoutPage> {
  await page.drag('hours', 5);
  await page.add();
  await page.rename(1, 'More of it');
  await page.set(1, 'hours', 7);
  await page.override('strength_minutes', 1, '61');
  await page.typeIn('checks-age', '47');
  await page.readWeek(3);
  await page.typeIn('season-weeks', '14');
  await page.typeIn('handout-name', 'Spring, 春');
  await page.typeIn('handout-runner', 'Anna');
  await page.typeIn('handout-contact', 'Coach');
  await page.writeNote('Easy\ndoes it.');
  return page;
}

/** The plan on show and all that is written, as data. */
const state = (page: HandoutPage) => ({
  plan: JSON.parse(JSON.stringify(shownPlan(page))) as unknown,
  scenarios: page.scenarios,
  onShow: page.onShow,
  strength: page.across('strength_minutes'),
  age: page.typedIn('checks-age').value,
  fields: ['name', 'runner', 'contact', 'note'].map(
    (name) => page.find<HTMLInputElement | HTMLTextAreaElement>(`#handout-${name}`).value,
  ),
});

async function laid(page: HandoutPage): Promise<HandoutPage> {
  await page.until(() => page.element.plan?.week?.state !== 'looking', 'the week is laid');
  return page.answered().then(() => page);
}

describe('a plan saved as a file', () => {
  it('is opened on the same page as it was, after everything was changed', async () => {
    const page = await workOn(await openAll());
    await laid(page);
    const [before, file] = [state(page), await savesPlan(page)];
    expect([file.type, file.name.startsWith('Spring-春-'), file.name.endsWith('.json')]).to.deep.equal([
      ...['application/json', true, true],
    ]);
    await page.drag('hours', 9);
    await page.chooseFromMenu(1, 'Remove');
    await page.typeIn('checks-age', '33');
    await page.typeIn('season-weeks', '10');
    await page.typeIn('handout-name', 'Other');
    await page.writeNote('');
    expect(state(page)).to.not.deep.equal(before);
    await choosesFile(page, file.text);
    await page.hearsBack('The plan from the file is open, with 2 scenarios.');
    await laid(page);
    expect(state(page)).to.deep.equal(before);
    expect(JSON.parse((await savesPlan(page)).text)).to.deep.equal(JSON.parse(file.text));
  });

  it('is opened on another page as it was, dropped anywhere on the planner', async () => {
    const page = await laid(await workOn(await openAll()));
    const [before, file] = [state(page), await savesPlan(page)];
    page.element.remove();
    const other = await openAll('hours="8" phase="base" level="elite" contact="Other clinic"');
    const events = await other.heard(() => dropsFile(other, file.text, { on: '.board' }));
    await laid(other);
    expect(state(other)).to.deep.equal(before);
    expect(events.length).to.be.at.least(1);
    expect(JSON.parse((await savesPlan(other)).text)).to.deep.equal(JSON.parse(file.text));
  });

  it('has the sessions that were done, and what was told of strength', async () => {
    const done = [{ date: '2026-11-30', category: 'slow', minutes: 40, effort: 3 }];
    const page = await openAll();
    await choosesFile(page, fileText({ record: done, strength: { equipment: ['band'] }, running: { unit: 'mile' } }));
    await laid(page);
    const saved = JSON.parse((await savesPlan(page)).text) as Record<string, unknown>;
    expect([saved['record'], saved['strength'], saved['running']]).to.deep.equal([
      ...[done, { equipment: ['band'] }, { unit: 'mile' }],
    ]);
    expect(page.element.plan?.running?.wishes.unit).to.equal('mile');
    expect(page.element.plan?.strength?.wishes.equipment).to.deep.equal(['band']);
  });

  it('has neither what is typed and wrong, nor what is chosen for printing', async () => {
    const page = await openHandout();
    await page.paste('handout-runner', 'y'.repeat(61));
    await page.chooseText(page.selectOf('handout-paper'), 'Letter');
    expect(JSON.parse((await savesPlan(page)).text)).to.have.all.keys('format', 'version', 'sheet');
  });
});

describe('what was open before', () => {
  it('comes back by its button, once', async () => {
    const page = await laid(await workOn(await openAll()));
    const before = state(page);
    expect(page.panelText).to.not.contain('Back to what was open before');
    await choosesFile(page, fileText({ name: 'Other' }));
    await laid(page);
    expect([page.scenarios.length, page.element.plan?.inputs.hours]).to.deep.equal([1, 7]);
    await page.pressesIn('Back to what was open before');
    await page.hearsBack('What was open before is open again.');
    await laid(page);
    expect(state(page)).to.deep.equal(before);
    expect(page.panelText).to.not.contain('Back to what was open before');
    expect(page.root.activeElement, 'the focus').to.not.equal(null);
  });

  it('of the page itself comes back on a page without other panels', async () => {
    const page = await openHandout();
    const { plan } = page.element;
    await choosesFile(page, fileText());
    expect(page.element.plan?.inputs.hours).to.equal(7);
    await page.pressesIn('Back to what was open before');
    await page.settled();
    expect(JSON.stringify(page.element.plan)).to.equal(JSON.stringify(plan));
  });
});

describe('what is dragged over the planner', () => {
  it('is shown to be welcome while it is a file, and not any longer', async () => {
    const page = await openHandout();
    const isWelcome = (): boolean => page.find('.handout').hasAttribute('data-drop');
    const carried = carrying(fileText(), 'plan.json');
    expect(drag(page, ['dragenter', 'dragover'], carried)).to.deep.equal([true, true]);
    expect(isWelcome()).to.equal(true);
    drag(page, ['dragleave'], carried);
    expect(isWelcome()).to.equal(false);
    drag(page, ['dragover', 'drop'], carried);
    expect(isWelcome()).to.equal(false);
    await page.hearsBack('The plan from the file is open.');
  });

  it('is left alone where it is no file', async () => {
    const page = await openHandout();
    const carried = new DataTransfer();
    carried.setData('text/plain', fileText());
    expect(drag(page, ['dragenter', 'dragover', 'drop'], carried)).to.deep.equal([false, false, false]);
    await page.answered();
    expect([page.find('.handout').hasAttribute('data-drop'), page.message]).to.deep.equal([false, '']);
  });
});
