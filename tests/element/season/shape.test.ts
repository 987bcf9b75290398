import { expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

async function open(): Promise<SeasonPage> {
  const page = await openSeason();
  return page.openBox('shape');
}
const phases = ({ season }: SeasonPage) => season.phases.map(({ phase, weeks }) => `${phase} ${String(weeks)}`);
const list = (page: SeasonPage, name: string): HTMLSelectElement =>
  page.find(`.season-shape select[aria-label="${name}"]`);
const shown = (page: SeasonPage, name: string): string => list(page, name).selectedOptions[0]?.text.trim() ?? '';

// Sainte-Laguë by hand: 14 weeks by 0.5, 0.3 and 0.2 are 7, 4 and 3.
describe('the phases', () => {
  it('are there with their weeks', async () => {
    const page = await open();
    expect(phases(page)).to.deep.equal(['base 7', 'build 4', 'peak 3']);
    expect([1, 2, 3].map((place) => shown(page, `Phase ${String(place)}`))).to.deep.equal(['base', 'build', 'peak']);
    expect([1, 2, 3].map((place) => shown(page, `Weeks of phase ${String(place)}`))).to.deep.equal([
      ...['its share (7 weeks)', 'its share (4 weeks)', 'its share (3 weeks)'],
    ]);
  });

  it('can be given weeks: the others share what is left', async () => {
    const page = await open();
    const { season } = await page.heardOnce(() => page.chooseText(list(page, 'Weeks of phase 2'), '3 weeks'));
    expect(season?.wishes.phases[1]).to.deep.equal({ phase: 'build', weeks: 3 });
    // Of eleven weeks by 0.5 and 0.2: eight and three.
    expect(phases(page)).to.deep.equal(['base 8', 'build 3', 'peak 3']);
    await page.choose(list(page, 'Weeks of phase 2'), 0);
    expect(phases(page)).to.deep.equal(['base 7', 'build 4', 'peak 3']);
  });

  it('can be moved', async () => {
    const page = await open();
    await page.heardOnce(() => page.pressesNamed('Move phase 1, base, later'));
    expect(phases(page)).to.deep.equal(['build 4', 'base 7', 'peak 3']);
    await page.pressesNamed('Move phase 3, peak, earlier');
    expect(phases(page)).to.deep.equal(['build 4', 'peak 3', 'base 7']);
  });

  it('cannot be moved beyond the ends', async () => {
    const page = await open();
    const [first] = page.all('.season-shape [aria-label="Move phase 1, base, earlier"]');
    expect(first?.getAttribute('aria-disabled')).to.equal('true');
    const events = await page.heard(async () => {
      await page.pressesNamed('Move phase 1, base, earlier');
      await page.pressesNamed('Move phase 3, peak, later');
    });
    expect([events, phases(page)]).to.deep.equal([[], ['base 7', 'build 4', 'peak 3']]);
  });

  it('can be another', async () => {
    const page = await open();
    await page.chooseText(list(page, 'Phase 3'), 'build');
    expect(page.season.phases.map(({ phase }) => phase)).to.deep.equal(['base', 'build', 'build']);
  });

  it('can be added at the front and taken out, but for the last', async () => {
    const page = await open();
    await page.heardOnce(() => page.presses('.season-shape button', 'Add a phase at the front'));
    expect(page.season.phases.map(({ phase }) => phase)).to.deep.equal(['off-season', 'base', 'build', 'peak']);
    for (const name of ['Take out phase 1, off season', 'Take out phase 1, base', 'Take out phase 1, build'])
      await page.pressesNamed(name);
    expect(phases(page)).to.deep.equal(['peak 14']);
    const events = await page.heard(() => page.pressesNamed('Take out phase 1, peak'));
    expect([events, phases(page)]).to.deep.equal([[], ['peak 14']]);
  });

  it('are twelve at most', async () => {
    const page = await open();
    for (let time = 0; time < 10; time += 1) await page.presses('.season-shape button', 'Add a phase at the front');
    expect(page.season.phases).to.have.length(12);
    expect(page.notes.join()).to.not.match(/NaN|undefined/);
  });

  it('show weeks that are more than the list begins with', async () => {
    const page = await open();
    page.element.season = {
      weeks: 60,
      phases: [
        { phase: 'base', weeks: 40 },
        { phase: 'build', weeks: 18 },
      ],
    };
    await page.settled();
    expect(shown(page, 'Weeks of phase 1')).to.equal('40 weeks');
  });

  it('that found no room say how long they are now', async () => {
    const page = await open();
    page.element.season = {
      weeks: 6,
      phases: [
        { phase: 'base', weeks: 3 },
        { phase: 'build', weeks: 3 },
      ],
    };
    await page.settled();
    // Four weeks before the taper: the phase next to the event is kept whole.
    expect(phases(page)).to.deep.equal(['base 1', 'build 3']);
    expect(page.texts('.season-phases li > .quiet')).to.deep.equal(['now one week']);
  });
});

describe('the shape', () => {
  it('of rises', async () => {
    const page = await open();
    const { season } = await page.heardOnce(() => page.slide(page.sliderOf('season-rise'), 4));
    expect(season?.wishes.rise).to.equal(0.04);
    expect(page.sliderOf('season-rise').getAttribute('aria-valuetext')).to.equal('4%');
    expect(page.notes.join()).to.contain('rising by 4% at most');
  });

  it('of easier weeks', async () => {
    const page = await open();
    const easier = (): number[] => page.season.weeks.flatMap(({ isEasier, number }) => (isEasier ? [number] : []));
    expect(easier()).to.deep.equal([4, 8, 12]);
    await page.chooseText(page.selectOf('season-easier'), 'every 3 weeks');
    expect(easier()).to.deep.equal([3, 6, 9, 12]);
    await page.chooseText(page.selectOf('season-easier'), 'none');
    expect(easier()).to.deep.equal([]);
    await page.chooseText(page.selectOf('season-easier'), 'every 4 weeks');
    await page.dragTo('season-easier-drop', 50);
    // Half of the 270 minutes before: 135.
    expect(Math.round((page.hours[3] ?? 0) * 60)).to.equal(135);
  });

  it('of the taper', async () => {
    const page = await open();
    await page.chooseText(page.selectOf('season-taper'), '3 weeks');
    expect(page.season.weeks.filter(({ phase }) => phase === 'taper')).to.have.length(3);
    expect(page.lead).to.contain('the last 3 weeks a taper');
    await page.dragTo('season-taper-drop', 60);
    expect([page.season.wishes.taperDrop, page.notes.join()]).to.satisfy(
      ([drop, notes]: [number, string]) => drop === 0.6 && notes.includes('This one: 3 weeks, 60%.'),
    );
    await page.chooseText(page.selectOf('season-taper'), 'none');
    expect(page.lead).to.not.contain('taper');
  });

  it('of strength', async () => {
    const page = await open();
    await page.chooseText(page.selectOf('season-upkeep'), 'from peak on');
    await page.chooseText(page.selectOf('season-upkeep-sessions'), '1');
    expect([page.season.wishes.upkeepFrom, page.season.wishes.upkeepSessions]).to.deep.equal(['peak', 1]);
    // One typical session of strength is 35 minutes; without upkeep the 13th week has 110.
    expect(page.season.weeks[12]?.rounded.strength).to.equal(35);
  });

  it('of rest', async () => {
    const page = await open();
    await page.chooseText(page.selectOf('season-recovery'), 'none');
    expect(page.season.weeks).to.have.length(16);
    await page.chooseText(page.selectOf('season-recovery'), '4 weeks');
    expect(page.season.weeks).to.have.length(20);
  });

  it('of a break before it', async () => {
    const page = await open();
    await page.typeIn('season-off', '2');
    // 60 per cent of 240 minutes, rounded down: 144, 140.
    expect(Math.round((page.hours[0] ?? 0) * 60)).to.equal(140);
    expect(page.notes.join()).to.contain('Caution: The first 2 weeks after a break have less.');
    await page.typeIn('season-off', '105');
    expect(page.hintOf('season-off')).to.match(/105; allowed: 0 to 104/);
  });

  it('of the longest run before it; 0 stands for one that is not known', async () => {
    const page = await open();
    expect(page.sliderOf('season-longest').getAttribute('aria-valuetext')).to.equal('not known');
    await page.typeIn('season-longest', '20');
    expect(page.season.wishes.longestRun).to.equal(20);
    expect(page.weekNotes.join()).to.contain('the 20 minutes of the four weeks before');
    await page.typeIn('season-longest', '0');
    expect(page.season.wishes.longestRun).to.equal(null);
  });
});
