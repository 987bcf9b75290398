import { expect } from '@open-wc/testing';
import { accessibleNodes } from '../accessibility-tree.js';
import { collapsed } from '../text.js';
import { openSeason } from './season-page.js';

describe('the season', () => {
  it('says first what it comes to', async () => {
    const page = await openSeason();
    expect(page.lead).to.equal(
      'Half marathon on Sunday, April 11, 2027: 16 weeks, from 4 hours a week to 6 hours in week 11, the last 2 weeks a taper.',
    );
    expect(page.notes).to.deep.equal([]);
  });

  it('begins sixteen weeks before the event, and rests after it', async () => {
    const { season } = await openSeason();
    expect(season.wishes.start).to.equal('2026-12-21');
    expect(season.weeks).to.have.length(18);
  });

  it('begins today where no date is given', async () => {
    const page = await openSeason('hours="4"');
    const today = new Date().toLocaleDateString('sv-SE');
    expect(page.season.wishes.start).to.equal(today);
    expect(page.typedIn('season-start').value).to.equal(today);
    expect([page.season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length, page.problems]).to.deep.equal([16, []]);
  });

  it('has its dates, its weeks and its hours in its fields', async () => {
    const page = await openSeason();
    const ids = ['season-date', 'season-start', 'season-weeks', 'season-hours', 'season-most'];
    expect(ids.map((id) => page.typedIn(id).value)).to.deep.equal(['2027-04-11', '2026-12-21', '16', '4', '6']);
    expect(['season-weeks', 'season-hours', 'season-most'].map((id) => page.sliderOf(id).value)).to.deep.equal([
      '16',
      '4',
      '6',
    ]);
  });

  it('reads its first week: when, how long and why, its sessions, its longest run and its load', async () => {
    const page = await openSeason();
    expect(page.weekTitle).to.match(/^Week 1 of 16, Dec 21 – 27, 2026$/);
    expect(page.weekText).to.equal('4 hours, base. The season starts from here.');
    // By hand: 70, 35, 25, 35 and 75 minutes.
    expect(page.weekKinds.map((text) => text.replace(/(min) .*/, '$1'))).to.deep.equal([
      'Slow running 70 min',
      'Tempo running 35 min',
      'Intervals 25 min',
      'Cross-training 35 min',
      'Strength 75 min',
    ]);
    expect(collapsed(page.find('.season-week .season-kinds + p'))).to.equal('Longest run 35 min, load 1,100.');
    expect(page.weekNotes).to.deep.equal([]);
  });

  it('has a picture of its weeks, with phases over it and the event at its place', async () => {
    const page = await openSeason();
    const images = await accessibleNodes(/^image$/);
    expect(images.map(({ name }) => name)).to.satisfy((names: readonly string[]) =>
      names.some((name) => name.startsWith('Minutes of every week, by kind of training')),
    );
    expect(page.texts('.season-chart .sweep-bands span')).to.deep.equal(['base', 'build', 'peak', 'taper', 'recovery']);
    expect(page.texts('.season-chart .sweep-flag')).to.deep.equal(['Half marathon']);
    // Eighteen weeks: every third has room for its date.
    expect(page.texts('.season-chart .sweep-x span')).to.deep.equal([
      ...['Dec 21', 'Jan 11', 'Feb 1', 'Feb 22', 'Mar 15', 'Apr 5'],
    ]);
  });

  it('reads the week at the slider in words', async () => {
    const page = await openSeason();
    expect(page.reading.getAttribute('aria-valuetext')).to.match(/^Dec 21: Slow running 70 min; .*Strength 75 min$/);
    expect([page.reading.min, page.reading.max]).to.deep.equal(['0', '17']);
  });

  it('keeps its boxes closed, and fetches what is in them when one is opened', async () => {
    const page = await openSeason();
    expect(page.texts('.season-panel summary')).to.deep.equal([
      'Set this week by hand: a holiday, an ill week',
      'All weeks as a table',
      'Shape the season',
      'When would I reach …?',
      'What if I began later?',
      'What this rests on',
    ]);
    expect(page.all<HTMLDetailsElement>('.season-panel details').some(({ open }) => open)).to.equal(false);
    await page.openBox('table');
    // A head and eighteen weeks.
    expect(page.table('table')).to.have.length(19);
  });

  it('fires nothing by coming', async () => {
    const heard: string[] = [];
    const note = ({ type }: Event): number => heard.push(type);
    document.addEventListener('plan-change', note);
    await openSeason();
    document.removeEventListener('plan-change', note);
    expect(heard).to.deep.equal([]);
  });

  it('changes nothing of the week on the planner', async () => {
    const page = await openSeason();
    expect(page.headline).to.match(/^Four hours in build: 75 minutes of strength/);
  });
});
