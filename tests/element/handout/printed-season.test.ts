import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openHandout, type HandoutPage } from './handout-page.js';
import { finish, printing, roomOf, sizes, type Printed } from './printer.js';

const start = 'hours="4" phase="build" level="developing" event="half-marathon"';
/** Sixteen weeks: worked out by hand in tests/reference/season/worked-season.test.ts. */
const sixteen = `${start} event-date="2027-04-11"`;

async function openSeasonHandout(attributes = sixteen, weeks: number | null = null): Promise<HandoutPage> {
  const page = await openHandout(attributes, 'season handout');
  await page.until(() => page.has('#handout-what') && page.has('#season-week-title'), 'the season comes');
  if (weeks !== null) {
    page.element.season = { weeks };
    await page.settled();
  }
  return page.choose(page.selectOf('handout-what'), 1);
}

async function printed(page: HandoutPage, button = 'Print'): Promise<Printed> {
  const [sheet] = await printing(async () => {
    await page.acts(button);
    await page.settled();
  });
  if (!sheet) throw new Error('nothing is printed');
  return sheet;
}

const textsIn = ({ document }: Printed, selector: string): string[] =>
  [...document.querySelectorAll(selector)].map(collapsed);

const monthDay = (date: string): string =>
  new Intl.DateTimeFormat('en', { month: 'short', day: 'numeric', timeZone: 'UTC' }).format(new Date(date));

describe('a season to take home', () => {
  it('is chosen beside the week, and says how many weeks it has; a week is asked for no more', async () => {
    const page = await openHandout(sixteen, 'season handout');
    await page.until(() => page.has('#handout-what'), 'the season comes');
    expect([page.optionOf('handout-what'), page.has('#handout-start')]).to.deep.equal(['a week', true]);
    await page.chooseText(page.selectOf('handout-what'), 'the whole season');
    const { length } = page.season.weeks;
    expect(page.lead).to.equal(`The season: ${String(length)} weeks, on two pages.`);
    expect(page.has('#handout-start')).to.equal(false);
    await page.chooseText(page.selectOf('handout-what'), 'a week');
    expect([page.lead.startsWith('The week '), page.has('#handout-start')]).to.deep.equal([true, true]);
  });

  it('is the week again where the season is gone', async () => {
    const page = await openSeasonHandout();
    page.element.panels = 'handout';
    await page.settled();
    expect(page.panelText).to.not.match(/undefined|NaN/);
  });

  it('a week of it is as the season has that week: its hours, its phase, its number', async () => {
    const page = await openHandout(sixteen, 'season handout');
    await page.until(() => page.has('#handout-what'), 'the season comes');
    for (const week of [page.season.weeks[2], page.season.weeks.at(-2)]) {
      if (!week) throw new Error('the season is too short');
      await page.setDate('handout-start', week.start);
      expect(page.textOf('.p-over')).to.contain(`Week ${String(week.number)}, ${week.phase}`);
      const all = Object.values(week.sessions).flat();
      expect(page.lead).to.contain(`: ${String(all.length)} sessions.`);
      expect(page.all('.handout .p-days tbody tr')).to.have.length(all.length);
    }
  });
});

describe('a printed season', () => {
  let page: HandoutPage;
  let sheet: Printed;
  before(async () => {
    page = await openSeasonHandout();
    await page.typeIn('handout-contact', 'Coach');
    await page.writeNote('See you in spring.');
    sheet = await printed(page);
  });
  after(() => {
    finish(sheet);
  });

  it('has every week with its beginning, its hours and its sessions', () => {
    const rows = [...sheet.document.querySelectorAll<HTMLTableRowElement>('.p-weeks tbody tr')].map((row) =>
      [...row.cells].map(collapsed),
    );
    expect(rows.map(([number, from]) => `${number ?? ''} ${from ?? ''}`)).to.deep.equal(
      page.season.weeks.map(({ number, start: monday }) => `${String(number)} ${monthDay(monday)}`),
    );
    for (const [index, week] of page.season.weeks.entries()) {
      const [, hours = '0', minutesMore = '0'] = /^(?:(\d+) h)?(?: ?(\d+) min)?$/.exec(rows[index]?.[3] ?? '') ?? [];
      expect(Number(hours) * 60 + Number(minutesMore)).to.equal(Math.round(week.hours * 60));
      const minutes = rows[index]
        ?.slice(4, 9)
        .map((text) =>
          [...text.matchAll(/(?:(\d+) × )?(\d+)/g)].reduce(
            (sum, [, times = '1', each]) => sum + Number(times) * Number(each),
            0,
          ),
        );
      expect(minutes, `week ${String(week.number)}`).to.deep.equal(
        [
          week.sessions.slow,
          week.sessions.tempo,
          week.sessions.intervals,
          week.sessions.cross,
          week.sessions.strength,
        ].map((lengths) => lengths.reduce((sum, each) => sum + each, 0)),
      );
    }
  });

  it('has its phases as stretches that follow on one another, and how each kind goes', () => {
    const phases = textsIn(sheet, '.p-phases li');
    const changes = page.season.weeks.filter(({ phase }, index, all) => phase !== all[index - 1]?.phase);
    expect(phases).to.have.length(changes.length);
    for (const [index, { start: monday, phase }] of changes.entries()) {
      expect(phases[index]?.toLowerCase()).to.match(new RegExp(`^${phase} weeks? `));
      expect(phases[index]).to.contain(monthDay(monday));
    }
    expect(textsIn(sheet, '.p-kinds li')).to.have.length(5);
    for (const line of textsIn(sheet, '.p-kinds li')) expect(line).to.match(/of 10/);
  });

  it('has a bar for each week, as high as its hours, and a line for the event', () => {
    const bars = [...sheet.document.querySelectorAll('.p-bars rect')].map((bar) => Number(bar.getAttribute('height')));
    const most = Math.max(...page.hours);
    expect(bars).to.have.length(page.hours.length);
    for (const [index, height] of bars.entries())
      expect(height).to.be.closeTo(((page.hours[index] ?? 0) / most) * Math.max(...bars), 0.01);
    expect(sheet.document.querySelectorAll('.p-bars line')).to.have.length(
      page.season.weeks.filter(({ events }) => events.length > 0).length,
    );
    expect(sheet.document.querySelector('.p-bars')?.getAttribute('aria-label')).to.match(/^Hours by week/);
  });

  it('has the cautions, the note and whom to ask', () => {
    expect(textsIn(sheet, '.p-cautions li')).to.have.length.at.least(7);
    expect(textsIn(sheet, '.p-note')).to.deep.equal(['See you in spring.']);
    expect(textsIn(sheet, 'footer p')[0]).to.equal('Questions: Coach');
  });
});

describe('a season has room on two pages:', () => {
  for (const weeks of [1, 16, 54])
    for (const paper of ['A4', 'Letter'] as const)
      it(`${String(weeks)} weeks, ${paper}`, async () => {
        const page = await openSeasonHandout(`${start} event-date="2028-11-26" lang="de"`, weeks);
        expect(page.season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0)).to.have.length(weeks);
        await page.chooseText(page.selectOf('handout-paper'), paper);
        await page.writeNote('Lauf ruhig an und halte die Pausen ein. '.repeat(25));
        const sheet = await printed(page, 'Drucken');
        const room = roomOf(sheet);
        expect(sizes(sheet)).to.have.length(2);
        for (const { height, width } of sizes(sheet)) {
          expect(height, 'height').to.be.at.most(room.height);
          expect(width, 'width').to.be.at.most(room.width + 0.5);
        }
        const breaks = [...sheet.document.querySelectorAll('.page')].map((each) => getComputedStyle(each).breakAfter);
        expect(breaks).to.deep.equal(['page', 'auto']);
        finish(sheet);
      });
});

it('the longest season goes on on a third sheet, with its heads again, and nothing of it is cut off', async () => {
  const page = await openSeasonHandout(`${start} event-date="2028-11-26"`, 104);
  const sheet = await printed(page);
  expect(sheet.document.querySelectorAll('.p-weeks tbody tr')).to.have.length(page.season.weeks.length);
  const styleOf = (selector: string): CSSStyleDeclaration =>
    getComputedStyle(sheet.document.querySelector(selector) ?? sheet.document.body);
  expect(styleOf('.p-weeks thead').display).to.equal('table-header-group');
  for (const selector of ['html', 'body', '.page:last-child', '.p-scroll'])
    expect(styleOf(selector).overflow, selector).to.equal('visible');
  finish(sheet);
});
