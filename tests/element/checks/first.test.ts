import { expect } from '@open-wc/testing';
import { openChecks, scene } from './checks-page.js';

/*
 * Four hours in build of a developing runner: 72 minutes of slow running, 36 of tempo, 24 of intervals, 36 of
 * cross-training and 72 of strength (tests/reference/threshold-tables.ts and the worked example of the README).
 */
describe('the checks of a plan', () => {
  it('say first what is worth a look, and how many are in line', async () => {
    const page = await openChecks();
    // 60 of 132 running minutes are hard, 45 per cent; the edge of two trials is 35 (B07, B08 in shared/evidence).
    expect(page.lead).to.equal('Worth a look: “Hard share of running minutes”. In line: 3 of 4 checks.');
    expect(page.title).to.equal('Held against what is known');
  });

  it('stand in groups by what they are about; a group without a check is not there', async () => {
    const page = await openChecks();
    expect(page.texts('.check-groups h4')).to.deep.equal(['Health', 'Intensity', 'Strength']);
    expect(page.ids).to.deep.equal(['activity', 'strength-days', 'hard-minutes', 'strength-sessions']);
    await page.drag('hours', 8);
    expect(page.ids).to.include('strength-cap');
  });

  it('say for each what was found, before anything is opened', async () => {
    const page = await openChecks();
    // A minute of vigorous counts for two of moderate (A04 in shared/evidence): 36 + 2 × 132 = 300.
    expect(page.partOf('activity', 'says')).to.equal(
      '36 min of moderate and 132 min of vigorous activity, which together count as 300 min of moderate.',
    );
    expect(page.partOf('activity', 'level')).to.equal('in line');
    expect(page.check('activity').open).to.equal(false);
    expect(page.partOf('hard-minutes', 'level')).to.equal('worth a look');
    expect(page.check('hard-minutes').dataset['level']).to.equal('look');
  });

  it('follow the week: more hours, other levels', async () => {
    const page = await openChecks();
    await page.drag('hours', 1);
    expect(page.check('activity').dataset['level']).to.equal('look');
    await page.choose(page.list('level'), 2);
    expect(page.ids).to.include('hard-sessions');
  });

  for (const key of ['Enter', ' '])
    it(`open by ${key}, with the range, what would change it, the source and what it does not say`, async () => {
      const page = await openChecks();
      await page.goTo(page.summaryOf('hard-minutes'));
      await page.press(key);
      expect(page.check('hard-minutes').open).to.equal(true);
      expect(page.partOf('hard-minutes', 'range')).to.equal('In line up to 35%; caution above 60%.');
      // 60 minutes less 35 per cent of 132, which are 46.2; whole minutes, and enough of them.
      expect(page.partOf('hard-minutes', 'change')).to.equal(
        'What would change it: 14 min moved from tempo and intervals to slow running.',
      );
      const text = page.texts('.check[data-check="hard-minutes"] > :not(summary)').join(' ');
      expect(text).to.contain('doi:10.1123/ijspp.2012-0350').and.to.contain('doi:10.3389/fspor.2019.00070');
      expect(text).to.contain('What the source does not say It does not say that more does harm.');
      expect(text).to.contain('assumption');
      await page.press(key);
      expect(page.check('hard-minutes').open).to.equal(false);
    });

  it('that are in line have nothing to change; all have a range, a reason and what they do not say', async () => {
    const page = await openChecks(`${scene} days="60,60,60,60,60,60,60"`, 'checks week');
    await page.until(() => page.ids.includes('rest-days'), 'the days are checked');
    for (const each of page.all<HTMLDetailsElement>('.check')) {
      const id = each.dataset['check'] ?? '';
      expect(each.querySelector('.check-change') === null, id).to.equal(each.dataset['level'] === 'in-line');
      expect(page.partOf(id, 'range'), id).to.match(/^(?:In line|Caution).+\.$/);
      expect(page.texts(`.check[data-check="${id}"] h5`), id).to.deep.equal([
        'Rests on',
        'What the source does not say',
      ]);
      expect(page.texts(`.check[data-check="${id}"] > p`).at(-1)?.length, id).to.be.greaterThan(20);
    }
  });

  it('stay open when the plan changes', async () => {
    const page = await openChecks();
    await page.click(page.summaryOf('activity'));
    await page.drag('hours', 5);
    expect(page.check('activity').open).to.equal(true);
  });
});

describe('checks that are not known yet', () => {
  it('are listed by what would have to be told', async () => {
    const page = await openChecks();
    expect(page.unknown.map((line) => line.split(' to see it.')[0])).to.have.members([
      'Tell the loads of your own weeks',
      'Lay the sessions on days',
      'Tell the hours of your weeks so far',
      'Tell your longest run of the last 30 days',
      'Plan a season',
    ]);
    expect(page.unknown.join()).to.contain('Hours against the weeks before');
  });

  it('are known as soon as it is told', async () => {
    const page = await openChecks();
    await page.typeIn('checks-hours', '4');
    expect(page.ids).to.include('hours-rise');
    expect(page.unknown.join()).to.not.contain('Hours against the weeks before');
  });

  it('are known once there are days and a season', async () => {
    const page = await openChecks(`${scene} event-date="2027-04-11"`, 'checks week season');
    await page.until(() => page.ids.includes('rest-days') && page.ids.includes('season-rise'), 'all is planned');
    expect(page.ids).to.include.members(['hard-gap', 'strength-gap', 'season-longest-run']);
    expect(page.unknown.join()).to.not.match(/on days|a season/);
  });
});
