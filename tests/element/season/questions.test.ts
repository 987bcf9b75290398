import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openSeason, scene, type SeasonPage } from './season-page.js';

const answer = (page: SeasonPage): string => collapsed(page.find('.season-reach .answer'));
async function want(page: SeasonPage, text: string): Promise<SeasonPage> {
  await page.fill(page.typedIn('season-wanted'), text);
  await page.press('Enter');
  return page;
}

// By hand: strength is 30 per cent of the minutes of a week, 108 of 360 at most, and 90 of 300 in the sixth week.
describe('when would I reach …?', () => {
  const open = async (): Promise<SeasonPage> => (await openSeason()).openBox('reach');

  it('is answered for 90 minutes of strength at once', async () => {
    const page = await open();
    expect(page.optionOf('season-quantity')).to.equal('Minutes of strength');
    expect(answer(page)).to.match(
      /^From week 6 on, Jan 25 – 31, 2027: 90 minutes or more, in 7 weeks of the season\.$/,
    );
  });

  it('says how far it comes where it is not reached', async () => {
    const page = await want(await open(), '200');
    expect(answer(page)).to.equal('200 minutes is not reached: the most is 108 minutes, in week 11.');
  });

  it('takes a share in per cent', async () => {
    const page = await open();
    await page.pick('season-quantity', 'slow_share');
    await want(page, '45');
    expect(answer(page)).to.match(/^From week 15 on, Mar 29 – Apr 4, 2027: 45% or more, in 2 weeks of the season\.$/);
  });

  it('has a single week too', async () => {
    const page = await open();
    page.element.season = {
      easierEvery: 0,
      phases: [{ phase: 'build', weeks: null }],
      byHand: [{ start: '2027-01-06', hours: 8 }],
    };
    await page.settled();
    // 30 per cent of eight hours are 144 minutes, held at the cap of 120: in no other week are there so many.
    await want(page, '120');
    expect(answer(page)).to.match(/^In week 3, Jan 4 – 10, 2027: 120 minutes or more, in that week alone\.$/);
  });

  it('says of a text that it is no amount', async () => {
    const page = await want(await open(), 'much');
    expect(answer(page)).to.equal('“much” is no amount.');
    expect(page.typedIn('season-wanted').value).to.equal('much');
  });

  it('is no act: the page hears of nothing', async () => {
    const page = await open();
    const events = await page.heard(() => want(page, '75'));
    expect(events).to.deep.equal([]);
    expect(answer(page)).to.match(/^From week 2 on|^From week 3 on/);
  });
});

describe('what if I began later?', () => {
  const open = async (): Promise<SeasonPage> => (await openSeason()).openBox('later');
  const row = (page: SeasonPage, title: string): string[] => page.table('later').find(([head]) => head === title) ?? [];

  it('holds the season against one that begins three weeks later', async () => {
    const page = await open();
    expect(page.table('later')[0]).to.deep.equal(['', 'As it is', '3 weeks later']);
    expect(row(page, 'Weeks up to the event')).to.deep.equal(['Weeks up to the event', '16', '13']);
    expect(row(page, 'Most hours a week').slice(0, 2)).to.deep.equal(['Most hours a week', '6 h']);
    expect(page.table('later').map(([head]) => head)).to.include.members(['Strength', 'Longest run', 'Cautions']);
  });

  it('or earlier', async () => {
    const page = await open();
    await page.chooseText(page.selectOf('season-later'), '4 weeks earlier');
    expect(row(page, 'Weeks up to the event').slice(1)).to.deep.equal(['16', '20']);
  });

  it('changes nothing until it is taken; then the season begins then', async () => {
    const page = await open();
    const { season } = page;
    const events = await page.heard(() => page.chooseText(page.selectOf('season-later'), '2 weeks later'));
    expect([events, page.season]).to.deep.equal([[], season]);
    await page.heardOnce(() => page.presses('.season-later button', 'Begin then'));
    expect([page.season.wishes.start, page.season.wishes.date]).to.deep.equal(['2027-01-04', '2027-04-11']);
    expect(row(page, 'Weeks up to the event').slice(1)).to.deep.equal(['14', '12']);
  });

  it('says so where the event would be out of reach', async () => {
    const page = await open();
    page.element.season = { weeks: 2 };
    await page.settled();
    expect(collapsed(page.find('.season-later'))).to.contain('Then the event would not be within reach.');
    expect(page.root.querySelector('.season-later table')).to.equal(null);
  });

  it('ends in order where today is the last that a season can have', async () => {
    const page = await openSeason(`${scene.replace('2027-04-11', '2199-12-15')}`);
    await page.openBox('later');
    expect(row(page, 'Weeks up to the event').slice(1)).to.deep.equal(['16', '13']);
  });
});

describe('what this rests on', () => {
  it('names how well each number is founded, with sources', async () => {
    const page = await (await openSeason()).openBox('basis');
    const text = collapsed(page.find('.season-basis'));
    expect(text).to.contain('(common practice, no published source)');
    expect(text).to.contain('(published)');
    expect(text).to.contain('(assumption, adjustable)');
    expect(page.texts('.season-basis li').filter((source) => /doi:10\.\d+\//.test(source)).length).to.be.greaterThan(8);
  });

  it('has the names of the phases in the literature', async () => {
    const page = await (await openSeason()).openBox('basis');
    expect(collapsed(page.find('.season-basis'))).to.contain('base – general preparation');
  });
});
