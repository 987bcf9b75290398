import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { shownPlan } from '../planner-page.js';
import { days, openHandout, openWithDays, scene, type HandoutPage } from './handout-page.js';
import { finish, printing, roomOf, sizes, type Printed } from './printer.js';

const dayNames = {
  en: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
  de: ['Montag', 'Dienstag', 'Mittwoch', 'Donnerstag', 'Freitag', 'Samstag', 'Sonntag'],
} as const;

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

/** The rows of the days: day, what, how long, how hard, how; the day is that of the row with its name. */
function rowsOf({ document }: Printed): string[][] {
  let day = '';
  return [...document.querySelectorAll<HTMLTableRowElement>('.p-days tbody tr')].map((row) => {
    const head = row.querySelector('th');
    if (head) day = collapsed(head);
    return [day, ...[...row.querySelectorAll('td')].map(collapsed)];
  });
}

/** "1 h 15" and "45 min" as minutes. */
const minutesIn = (text: string): number =>
  Number(/(\d+)\s*h/.exec(text)?.[1] ?? 0) * 60 + Number(/(\d+)(?!\s*h)\D*$/.exec(text)?.[1] ?? 0);

describe('a printed week', () => {
  let page: HandoutPage;
  let sheet: Printed;
  before(async () => {
    page = await openWithDays(`${scene} race="10k 45:00" contact="Clinic, ext. 12"`, 'week running strength handout');
    await page.until(() => page.has('.running .lead') && page.has('.strength .lead'), 'the panels come');
    await page.setDate('handout-start', '2026-11-30');
    await page.writeNote('Easy does it.\nSee you on Friday.');
    await page.typeIn('handout-runner', 'Anna');
    sheet = await printed(page);
  });
  after(() => {
    finish(sheet);
  });

  it('is one page', () => {
    expect(sheet.document.querySelectorAll('.page')).to.have.length(1);
  });

  it('has every session of the week on its day, with its minutes and its effort', () => {
    const { week, sessions } = shownPlan(page);
    if (week?.state !== 'laid') throw new Error('the week is not laid');
    const rows = rowsOf(sheet).filter((row) => row.length === 5);
    const printedSessions = rows.map(
      ([day = '', what = '', length = '']) => `${day} ${what} ${String(minutesIn(length))}`,
    );
    const titles = {
      slow: 'Slow running',
      tempo: 'Tempo running',
      intervals: 'Intervals',
      cross: 'Cross-training',
      strength: 'Strength',
    };
    const laid = page.all('.board .day').flatMap((day, index) =>
      [...day.querySelectorAll<HTMLElement>('.card')].map((card) => {
        const category = card.dataset['category'] as keyof typeof titles;
        const date = index === 0 ? 'Nov 30' : `Dec ${String(index)}`;
        return `${dayNames.en[index] ?? ''} ${date} ${titles[category]} ${String(Number.parseInt(collapsed(card), 10))}`;
      }),
    );
    expect([...printedSessions].sort()).to.deep.equal([...laid].sort());
    expect(rows).to.have.length(Object.values(sessions).flat().length);
    for (const [, , , effort, how] of rows) {
      expect(effort).to.match(/^\d+(\.5)?( to \d+(\.5)?)? of 10$/);
      expect(how).to.not.equal('');
    }
  });

  it('has seven days with their dates, and says where there is rest', () => {
    const names = textsIn(sheet, '.p-days tbody th');
    expect(names).to.deep.equal(
      dayNames.en.map((name, index) => `${name} ${index === 0 ? 'Nov 30' : `Dec ${String(index)}`}`),
    );
    const empty = page.all('.board .day').filter((day) => day.querySelector('.card') === null);
    expect(textsIn(sheet, '.p-rest')).to.deep.equal(empty.map(() => 'Rest'));
  });

  it('says when it is, how much it is, and whom it is for', () => {
    const all = Object.values(shownPlan(page).sessions).flat();
    const total = all.reduce((sum, minutes) => sum + minutes, 0);
    expect(textsIn(sheet, 'h3')).to.deep.equal(['Week Nov 30 – Dec 6, 2026']);
    expect(textsIn(sheet, '.p-over')[0]).to.match(/^For Anna ?Build$/);
    const [lead = ''] = textsIn(sheet, '.p-lead');
    expect(lead).to.match(new RegExp(`^${String(all.length)} sessions on \\d days, .* in all\\.$`));
    expect(Math.abs(Number(/([\d.]+) hours/.exec(lead)?.[1]) - total / 60)).to.be.below(0.051);
  });

  it('has each strength session by its movements and sets', () => {
    const { strength } = shownPlan(page);
    if (!strength) throw new Error('the plan has no strength');
    expect(strength.sessions.length).to.be.greaterThan(0);
    const cards = [...sheet.document.querySelectorAll('.p-sets > section')];
    expect(cards).to.have.length(strength.sessions.length);
    for (const [index, session] of strength.sessions.entries()) {
      const exercises = session.blocks.flatMap((block) => block.exercises);
      const card = cards[index];
      const lines = [...(card?.querySelectorAll('.p-exercise') ?? [])].map(collapsed);
      // With a warm-up and a cool-down.
      expect(lines).to.have.length(exercises.length + (session.warmUp ? 1 : 0) + (session.coolDown ? 1 : 0));
      for (const { sets, effort } of exercises)
        expect(
          lines.some((line) => line.includes(`${String(sets)} ×`) && line.endsWith(`${String(effort)} of 10`)),
        ).to.equal(true);
    }
  });

  it('has all cautions, the note, whom to ask, and the day that it was made', () => {
    // The eight that shared/locales has: what calls for a professional.
    expect(textsIn(sheet, '.p-cautions li')).to.have.length.at.least(7);
    const { text } = sheet;
    for (const word of [
      /pain/i,
      /ill/i,
      /pregnan/i,
      /birth/i,
      /under 18/i,
      /new to exercise|not active/i,
      /known disease|disease/i,
      /licen[sc]ed/i,
    ])
      expect(text).to.match(word);
    expect(sheet.document.querySelector('.p-note')?.textContent).to.equal('Easy does it.\nSee you on Friday.');
    const today = new Intl.DateTimeFormat('en', { dateStyle: 'full' }).format(new Date());
    expect(textsIn(sheet, 'footer p')).to.deep.equal(['Questions: Clinic, ext. 12', `As of ${today}`]);
  });

  it('has no text of the page around it, no control and no number of the panel', () => {
    expect(sheet.document.querySelectorAll('button, input, select, textarea, a')).to.have.length(0);
    expect(sheet.document.body.children).to.have.length(1);
  });
});

describe('what is printed has room on its paper', () => {
  const fullest = 'hours="12" phase="build" level="elite" event="marathon" days="150,150,150,150,150,240,240"';
  const note = 'Lauf ruhig an, halte die Pausen ein und melde dich früh. '.repeat(20).slice(0, 1000);
  const scenes: Readonly<Record<string, () => Promise<HandoutPage>>> = {
    'a small week': () => openHandout('hours="1" phase="off-season" level="new" lang="de"'),
    'a usual week with days': () => openWithDays(`${scene} lang="de"`),
    'a usual week for any day': () => openHandout(`${scene} lang="de"`),
    'the fullest week with all that can be written on it': async () => {
      const page = await openHandout(`${fullest} lang="de" race="10k 45:00"`, 'week running strength handout');
      await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
      await page.until(() => page.has('.strength .lead') && page.has('.running .lead'), 'the panels come');
      await page.paste('handout-runner', 'W'.repeat(60));
      await page.paste('handout-contact', 'Sportmedizinische Ambulanz, '.repeat(8).slice(0, 200));
      return page.writeNote(note);
    },
    'the fullest week, its note one word': async () => {
      const page = await openHandout(`${fullest} lang="de"`, 'week strength handout');
      await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
      return page.writeNote('W'.repeat(1000));
    },
  };
  for (const [name, open] of Object.entries(scenes))
    for (const paper of ['A4', 'Letter'] as const)
      it(`${name}, ${paper}`, async () => {
        const page = await open();
        await page.chooseText(page.selectOf('handout-paper'), paper);
        const sheet = await printed(page, 'Drucken');
        const room = roomOf(sheet);
        expect(room.width).to.be.within(600, 800);
        expect(sizes(sheet)).to.have.length(1);
        for (const { height, width } of sizes(sheet)) {
          expect(height, 'height').to.be.at.most(room.height);
          expect(width, 'width').to.be.at.most(room.width + 0.5);
        }
        const type = parseFloat(getComputedStyle(sheet.document.querySelector('.page') ?? document.body).fontSize);
        // 6.5 points are 8.7 pixels: what is smaller is not read any more.
        expect(type).to.be.at.least(8.6);
        finish(sheet);
      });

  it(`in type that is as large as there is room for: a small week is larger than a full one`, async () => {
    const typeOf = async (page: HandoutPage): Promise<number> => {
      const sheet = await printed(page);
      const [first] = sheet.document.querySelectorAll('.page');
      if (!first) throw new Error('there is no page');
      const size = parseFloat(getComputedStyle(first).fontSize);
      finish(sheet);
      return size;
    };
    const small = await typeOf(await openHandout('hours="1" phase="off-season" level="new"'));
    const full = await typeOf(await openHandout(`hours="12" phase="build" level="elite" ${days}`, 'strength handout'));
    expect(small).to.be.greaterThan(full);
  });

  it('the type of a table is that of its page, whatever a document without a doctype does to tables', async () => {
    const sheet = await printed(await openWithDays());
    const [page, cell] = ['.page', 'td:last-child'].map((each) => sheet.document.querySelector(each));
    if (!page || !cell) throw new Error('there is no table');
    expect(getComputedStyle(cell).fontSize).to.equal(getComputedStyle(page).fontSize);
    expect(getComputedStyle(cell).fontFamily).to.equal(getComputedStyle(page).fontFamily);
    finish(sheet);
  });

  it('the longest week that can be asked for goes on on a second sheet, and nothing of it is cut off', async () => {
    const page = await openHandout('hours="20" phase="build" level="elite"', 'strength handout');
    await page.writeNote(note);
    const sheet = await printed(page);
    expect(rowsOf(sheet)).to.have.length(Object.values(shownPlan(page).sessions).flat().length);
    for (const { height, width } of sizes(sheet)) {
      expect(height).to.be.at.most(2 * roomOf(sheet).height);
      expect(width).to.be.at.most(roomOf(sheet).width + 0.5);
    }
    for (const each of sheet.document.querySelectorAll('html, body, .paper, .page'))
      expect(getComputedStyle(each).overflow, each.className).to.equal('visible');
    finish(sheet);
  });
});
