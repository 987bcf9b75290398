import { expect } from '@open-wc/testing';
import { clock, riegel, secondsBy, uptake } from './equations.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const distances = [
  ['1,500 m', 1500],
  ['mile', 1609.344],
  ['3 km', 3000],
  ['5 km', 5000],
  ['10 km', 10_000],
  ['15 km', 15_000],
  ['half marathon', 21_097.5],
  ['marathon', 42_195],
] as const;

const open = async (race: string): Promise<RunningPage> =>
  (await openRunning(`${scene} race="${race}"`)).opens('equal');

/** Seconds of "1:09:30". */
const seconds = (text: string): number => text.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);

for (const [race, metres, time] of [
  ['10k 45:00', 10_000, 2700],
  ['5k 20:00', 5000, 1200],
  ['half-marathon 1:52:30', 21_097.5, 6750],
] as const)
  describe(`times that are worth as much as ${race}`, () => {
    it('have a row for every distance, with both equations to the second', async () => {
      const page = await open(race);
      const rows = page.equalTimes.slice(1);
      const greatest = uptake(metres, time);
      expect(rows.map(([name]) => name)).to.deep.equal(distances.map(([name]) => name));
      for (const [index, [name, far]] of distances.entries()) {
        const [, , law = '', oxygen = ''] = rows[index] ?? [];
        expect(law, name).to.equal(clock(riegel(time, metres, far)));
        expect(oxygen, name).to.equal(clock(secondsBy(greatest, far)));
      }
    });

    it('lie in a range that both equations are within, and the race itself is one time', async () => {
      const page = await open(race);
      for (const [index, [name, far]] of distances.entries()) {
        const shown = (page.equalTimes[index + 1]?.[1] ?? '').replace(/(?<=:\d\d)\d$/, '');
        const [from = '', to] = shown.split(' to ');
        if (far === metres) {
          expect([from, to]).to.deep.equal([clock(time), undefined]);
          continue;
        }
        const both = [riegel(time, metres, far), secondsBy(uptake(metres, time), far)];
        expect(seconds(from), name).to.be.at.most(Math.min(...both));
        expect(seconds(to ?? ''), name).to.be.at.least(Math.max(...both));
      }
    });
  });

it('a marathon from a shorter race has a slower end ten minutes later, with a note', async () => {
  const page = await open('10k 45:00');
  const row = page.find('.equal-times tbody tr:last-child');
  // 2700 × 4.2195^1.06 = 12,420.5 seconds (shared/checks/running.json), and 600 more: 3:37:00.5, in whole minutes.
  expect(row.querySelector('b')?.textContent).to.equal('3:27:00 to 3:38:00');
  expect(row.querySelector('sup')?.textContent).to.equal('1');
  expect(page.texts('.running-equal > p.quiet')[0]).to.match(/^1 For half of marathon runners .*ten minutes or more/);
});

it('a race of a marathon has no range for itself and no such note', async () => {
  const page = await open('marathon 3:27:00');
  expect(page.equalTimes.at(-1)?.[1]).to.equal('3:27:00');
  expect(page.panelText).to.not.contain('For half of marathon runners');
});

it('times outside what the law was found for are wider, with a note of their own', async () => {
  const page = await open('marathon 4:30:00');
  const half = page.find('.equal-times tbody tr:nth-child(7)');
  // 16,200 × (21,097.5 / 42,195)^1.06 = 7,770 seconds; 5 per cent later in whole minutes is 2:16:00 at least.
  const [, to = ''] = (half.querySelector('b')?.textContent ?? '').split(' to ');
  expect(seconds(to)).to.be.at.least(16_200 * 0.5 ** 1.06 * 1.05);
  expect(half.querySelector('sup')?.textContent).to.equal('1');
  expect(page.texts('.running-equal > p.quiet')[0]).to.match(/^1 Outside .*for which the law was found/);
});

it('the box is there with a pace, open or not, and gone without', async () => {
  const page = await openRunning(`${scene} race="10k 45:00"`);
  expect([page.has('.running-equal'), page.has('.equal-times')]).to.deep.equal([true, false]);
  await page.opens('equal');
  await page.typeIn('running-time', '44:00');
  expect(page.equalTimes[5]?.[1]).to.equal('44:00');
  await page.chooseDistance('no race');
  expect(page.has('.running-equal')).to.equal(false);
  await page.chooseDistance('5 km');
  await page.typeIn('running-time', '20:00');
  const box = page.find<HTMLDetailsElement>('.running-equal');
  expect(page.has('.equal-times')).to.equal(box.open);
});

it('the greatest oxygen uptake that a race implies is told under what all rests on', async () => {
  const page = await (await openRunning(`${scene} race="10k 45:00"`)).opens('basis');
  expect(page.panelText).to.contain(
    `It implies a greatest oxygen uptake of about ${uptake(10_000, 2700).toFixed(0)} ml a kilogram a minute`,
  );
});

it('the table has headings for columns and rows', async () => {
  const page = await open('10k 45:00');
  expect(page.equalTimes[0]).to.deep.equal(['Distance', 'Time', 'Law of endurance', 'Oxygen uptake']);
  expect(page.all('.equal-times thead th[scope="col"]')).to.have.length(4);
  expect(page.all('.equal-times tbody th[scope="row"]')).to.have.length(distances.length);
});
