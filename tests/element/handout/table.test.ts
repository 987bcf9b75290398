import { expect } from '@open-wc/testing';
import { dsvFormat } from 'd3-dsv';
import { collapsed } from '../text.js';
import { shownPlan } from '../planner-page.js';
import { openHandout, openWithDays, scene, type HandoutPage } from './handout-page.js';
import { copiedTexts, savedFile, withoutClipboard } from './saving.js';

/** The cells of a text as another library reads them. */
const cellsOf = (text: string, delimiter: string): string[][] =>
  dsvFormat(delimiter).parseRows(text.replace(/^\uFEFF/, ''));

/** The cells of HTML as the browser reads them. */
const cellsIn = (html: string): string[][] =>
  [...new DOMParser().parseFromString(html, 'text/html').querySelectorAll('tr')].map((row) =>
    [...row.cells].map(collapsed),
  );

async function openWeek(): Promise<HandoutPage> {
  const page = await openWithDays(scene, 'week strength handout');
  return page.setDate('handout-start', '2026-11-30');
}

describe('a week as a table', () => {
  it('saved as CSV has a row for each session: date, day, what, minutes, how hard, how', async () => {
    const page = await openWeek();
    const file = await savedFile(() => page.acts('Save as CSV'));
    expect([file.name, file.type]).to.deep.equal(['Training-plan-2026-11-30.csv', 'text/csv']);
    // What spreadsheets know UTF-8 by.
    expect([...file.bytes.slice(0, 3)]).to.deep.equal([0xef, 0xbb, 0xbf]);
    const [head, ...rows] = cellsOf(file.text, ',');
    expect(head).to.deep.equal(['Date', 'Day', 'What', 'Minutes', 'How hard', 'How']);
    const { sessions } = shownPlan(page);
    expect(rows.map(([, , , minutes]) => Number(minutes)).sort()).to.deep.equal(Object.values(sessions).flat().sort());
    for (const [date = '', day] of rows)
      expect(day).to.equal(new Intl.DateTimeFormat('en', { weekday: 'long', timeZone: 'UTC' }).format(new Date(date)));
    expect(page.message).to.equal('Saved as Training-plan-2026-11-30.csv.');
  });

  it('copied is a table for a mail and lines for a spreadsheet, both the same', async () => {
    const page = await openWeek();
    const texts = await copiedTexts(async () => {
      await page.acts('Copy as a table');
      await page.hearsBack('copied');
    });
    expect(Object.keys(texts ?? {}).sort()).to.deep.equal(['text/html', 'text/plain']);
    const lines = cellsOf(texts?.['text/plain'] ?? '', '\t');
    expect(cellsIn(texts?.['text/html'] ?? '')).to.deep.equal(
      lines.map((cells) => cells.map((cell) => cell.replace(/\s+/g, ' ').trim())),
    );
    expect(lines).to.have.length(1 + Object.values(shownPlan(page).sessions).flat().length);
  });

  it('that cannot be copied is shown, to be copied by hand', async () => {
    const page = await openWeek();
    await withoutClipboard(async () => {
      await page.acts('Copy as a table');
      await page.until(() => page.has('.handout .by-hand'), 'the text is shown');
    });
    const field = page.find<HTMLTextAreaElement>('.handout .by-hand');
    expect([field.readOnly, field.getAttribute('aria-label')]).to.deep.equal([true, 'To be copied by hand']);
    expect(cellsOf(field.value, '\t')).to.have.length(1 + Object.values(shownPlan(page).sessions).flat().length);
    expect(page.message).to.not.equal('');
    await copiedTexts(async () => {
      await page.acts('Copy as a table');
      await page.until(() => !page.has('.handout .by-hand'), 'the text goes');
    });
  });

  it('without days has sessions without a date', async () => {
    const page = await openHandout();
    const { text } = await savedFile(() => page.acts('Save as CSV'));
    const [, ...rows] = cellsOf(text, ',');
    expect(rows.map(([date, day]) => `${date ?? '?'}${day ?? '?'}`)).to.deep.equal(rows.map(() => ''));
  });

  it('whatever was saved may be copied by hand too: a frame may forbid saving without a word', async () => {
    const page = await openWeek();
    const { text } = await savedFile(() => page.acts('Save as CSV'));
    await page.click(page.named('.handout summary', 'Nothing was saved? Copy it by hand'));
    const field = page.find<HTMLTextAreaElement>('.handout .by-hand');
    expect(field.value.replace(/\r/g, '')).to.equal(text.replace(/\r/g, ''));
  });
});

describe('a season as a table', () => {
  it('saved as CSV has a row for each week', async () => {
    const page = await openHandout(`${scene} event="half-marathon" event-date="2027-04-11"`, 'season handout');
    await page.until(() => page.has('#handout-what'), 'the season comes');
    await page.choose(page.selectOf('handout-what'), 1);
    const { text, name } = await savedFile(() => page.acts('Save as CSV'));
    const [head = [], ...rows] = cellsOf(text, ',');
    expect([name, head.length]).to.deep.equal(['Training-plan-2027-04-11.csv', 10]);
    expect(rows.map(([number, start, , hours]) => [Number(number), start, Number(hours)])).to.deep.equal(
      page.season.weeks.map(({ number, start, hours }) => [number, start, Number(hours.toFixed(2))]),
    );
    for (const [index, { minutes }] of page.season.weeks.entries()) {
      const row = (rows[index] ?? []).slice(4, 9).map(Number);
      for (const [place, id] of (['slow', 'tempo', 'intervals', 'cross', 'strength'] as const).entries())
        expect(Math.abs((row[place] ?? 0) - minutes[id]), id).to.be.below(5);
    }
  });
});
