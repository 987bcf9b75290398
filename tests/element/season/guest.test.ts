import { aTimeout, expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

type Options = boolean | AddEventListenerOptions;

/** All that a person does with a season. */
async function drive(page: SeasonPage): Promise<void> {
  await page.typeIn('season-weeks', '14');
  await page.dragTo('season-most', 5.5);
  await page.setDate('season-date', '2027-05-02');
  await page.readWeek(5);
  await page.point(0.3, true);
  await page.openAll();
  await page.typeIn('season-week-hours', '2');
  await page.chooseText(page.selectOf('season-week-reason'), 'ill');
  await page.presses('.season-hand button', 'Back to the season’s hours');
  await page.chooseText(page.selectOf('season-taper'), '3 weeks');
  await page.pressesNamed('Move phase 1, base, later');
  await page.presses('.season-shape button', 'Add an event');
  await page.chooseText(page.selectOf('season-later'), '2 weeks later');
  await page.presses('.season-later button', 'Begin then');
  await page.click(page.showButton);
}

describe('a season on a page', () => {
  it('asks the network for nothing but our own parts, keeps nothing, and asks for no part twice', async () => {
    const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);
    await drive(await openSeason());
    await aTimeout(300);
    const before = new Set(asked());
    await drive(await openSeason());
    await aTimeout(300);
    for (const url of asked()) expect(new URL(url).origin).to.equal(location.origin);
    expect(asked().filter((url) => !before.has(url))).to.deep.equal([]);
    expect([localStorage.length, sessionStorage.length, document.cookie, location.hash]).to.deep.equal([0, 0, '', '']);
  });

  it('lets no event of its inputs out', async () => {
    const heard: string[] = [];
    const note = ({ type }: Event): number => heard.push(type);
    const types = ['input', 'change', 'toggle', 'beforetoggle'];
    for (const type of types) document.addEventListener(type, note);
    await drive(await openSeason());
    for (const type of types) document.removeEventListener(type, note);
    expect(heard).to.deep.equal([]);
  });

  it('does not touch another one beside it', async () => {
    const one = await openSeason();
    const other = await openSeason('hours="5" event="10k" event-date="2027-06-06"');
    const { season, text } = { season: other.season, text: other.text };
    await drive(one);
    await other.settled();
    expect([other.season, other.text]).to.deep.equal([season, text]);
  });

  it('is as it was when it is taken away and put back', async () => {
    const page = await openSeason();
    await drive(page);
    const { text, season } = page;
    page.element.remove();
    document.body.append(page.element);
    await page.settled();
    expect([page.text, page.season]).to.deep.equal([text, season]);
    await page.typeIn('season-weeks', '10');
    expect(page.season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0)).to.have.length(10);
    page.element.remove();
  });

  it('leaves nothing behind that would hold it: what listens to the whole page goes with it', async () => {
    const listening: string[] = [];
    for (const target of [window, document]) {
      const [add, remove] = [target.addEventListener.bind(target), target.removeEventListener.bind(target)];
      const by: typeof add = (type: string, listener: EventListenerOrEventListenerObject, options?: Options) => {
        listening.push(type);
        add(type, listener, options);
      };
      const off: typeof remove = (type: string, listener: EventListenerOrEventListenerObject, options?: Options) => {
        listening.splice(listening.indexOf(type), 1);
        remove(type, listener, options);
      };
      Object.assign(target, { addEventListener: by, removeEventListener: off });
    }
    const page = await openSeason();
    await drive(page);
    page.element.remove();
    await aTimeout(100);
    for (const target of [window, document]) {
      Reflect.deleteProperty(target, 'addEventListener');
      Reflect.deleteProperty(target, 'removeEventListener');
    }
    expect(listening).to.deep.equal([]);
  });

  it('without its panel asks for no season', async () => {
    const page = await openSeason();
    page.element.panels = 'split';
    await page.settled();
    expect(page.root.querySelector('.season-panel')?.checkVisibility() ?? false).to.equal(false);
  });
});
