import { expect } from '@open-wc/testing';
import { openChecks } from './checks-page.js';

describe('the age of a runner', () => {
  it('of 67 brings the check of balance, of 15 that of hours under 18; emptied, neither', async () => {
    const page = await openChecks();
    expect(page.ids).to.not.include('balance-days');
    await page.typeIn('checks-age', '67');
    expect(page.ids).to.include('balance-days').and.to.not.include('youth-hours');
    // Three days a week from 65 on (E19 in shared/evidence); the week has two sessions.
    expect(page.check('balance-days').dataset['level']).to.equal('look');
    expect(page.lead).to.contain('Strength and balance from 65 on');
    await page.typeIn('checks-age', '15');
    expect(page.ids).to.include('youth-hours').and.to.not.include('balance-days');
    expect(page.check('youth-hours').dataset['level']).to.equal('in-line');
    await page.typeIn('checks-age', '');
    expect(page.ids).to.not.include('youth-hours').and.to.not.include('balance-days');
  });

  it('of 17 is under 18, of 18 is not; of 65 is 65 or more, of 64 is not', async () => {
    const page = await openChecks();
    for (const [age, ids] of [
      ['17', ['youth-hours']],
      ['18', []],
      ['64', []],
      ['65', ['balance-days']],
    ] as const) {
      await page.typeIn('checks-age', age);
      expect(
        page.ids.filter((id) => /youth|balance/.test(id)),
        age,
      ).to.deep.equal(ids);
    }
  });
});

// The ranges of shared/schema/plan.schema.json.
const fields = [
  {
    ...{ id: 'checks-age', label: 'Age', good: '40', value: '40', check: null },
    faults: [
      ['old', 'Age is "old"; it has to be a number.'],
      ['4', 'Age is "4"; allowed: 5 to 110.'],
      ['111', 'Age is "111"; allowed: 5 to 110.'],
      ['40.5', 'Age is "40.5"; allowed: steps of 1.'],
    ],
  },
  {
    ...{ id: 'checks-hours', label: 'Hours of a usual week so far', good: '3:30', value: '3.5', check: 'hours-rise' },
    faults: [
      ['few', 'Hours of a usual week so far is "few"; it has to be a number.'],
      ['0', 'Hours of a usual week so far is "0"; allowed: 0.25 to 60.'],
      ['61', 'Hours of a usual week so far is "61"; allowed: 0.25 to 60.'],
    ],
  },
  {
    ...{ id: 'checks-run', label: 'Longest run in 30 days, minutes', good: '60', value: '60', check: 'longest-run' },
    faults: [
      ['far', 'Longest run in 30 days, minutes is "far"; it has to be a number.'],
      ['4', 'Longest run in 30 days, minutes is "4"; allowed: 5 to 1,440.'],
      ['1441', 'Longest run in 30 days, minutes is "1441"; allowed: 5 to 1,440.'],
    ],
  },
] as const;

for (const { id, label, good, value, check, faults } of fields)
  describe(`the field “${label}”`, () => {
    it('is empty to begin with, and called so', async () => {
      const page = await openChecks();
      expect([page.typedIn(id).value, page.hintOf(id)]).to.deep.equal(['', '']);
      expect(page.named('.checks label', label).getAttribute('for')).to.equal(id);
    });

    it('makes a plan of what it is told, once, and shows it', async () => {
      const page = await openChecks();
      const plan = await page.heardOnce(() => page.typeIn(id, good));
      expect(page.typedIn(id).value).to.equal(value);
      if (check !== null) expect(page.ids).to.include(check);
      if (check !== null) expect(plan.checks?.find((each) => each.id === check)?.level).to.not.equal(null);
    });

    it('fires nothing where it is told the same again', async () => {
      const page = await openChecks();
      await page.typeIn(id, good);
      expect(await page.heard(() => page.typeIn(id, `${value} `))).to.deep.equal([]);
    });

    it('emptied is not told', async () => {
      const page = await openChecks();
      const { ids, unknown } = page;
      await page.typeIn(id, good);
      await page.heardOnce(() => page.typeIn(id, ''));
      expect([page.ids, page.unknown, page.typedIn(id).value, page.hintOf(id)]).to.deep.equal([ids, unknown, '', '']);
    });

    for (const [text, says] of faults)
      it(`keeps “${text}”, tells what is wrong, and loses nothing`, async () => {
        const page = await openChecks();
        await page.typeIn(id, good);
        const { lead, ids } = page;
        const before = JSON.stringify(page.element.plan);
        expect(await page.heard(() => page.typeIn(id, text))).to.deep.equal([]);
        expect(page.hintOf(id)).to.contain(says);
        expect(page.told).to.contain(says);
        const field = page.typedIn(id);
        expect([field.value, field.getAttribute('aria-invalid'), page.lead]).to.deep.equal([text, 'true', lead]);
        expect(field.getAttribute('aria-describedby')).to.contain(`${id}-hint`);
        expect([page.ids, JSON.stringify(page.element.plan), page.element.problems]).to.deep.equal([ids, before, []]);
        await page.typeIn(id, good);
        expect([page.hintOf(id), field.getAttribute('aria-invalid'), page.told]).to.deep.equal(['', 'false', '']);
      });
  });

describe('a longest run of more than a thousand minutes', () => {
  it('is shown so that it reads as the same number when it is entered again', async () => {
    const page = await openChecks();
    await page.typeIn('checks-run', '1200');
    const { ids } = page;
    const shown = page.typedIn('checks-run').value;
    await page.typeIn('checks-run', '60');
    await page.typeIn('checks-run', shown);
    expect([page.hintOf('checks-run'), page.ids]).to.deep.equal(['', ids]);
  });
});

describe('what was told', () => {
  it('is in the plan: rises by hand', async () => {
    const page = await openChecks();
    await page.typeIn('checks-hours', '3.2');
    // From 3.2 to 4 hours is a quarter more; a look above a fifth.
    expect(page.partOf('hours-rise', 'says')).to.equal('4 h after 3 h 12 min a week: 25% more.');
    expect(page.check('hours-rise').dataset['level']).to.equal('look');
    await page.typeIn('checks-hours', '4');
    expect(page.check('hours-rise').dataset['level']).to.equal('in-line');
  });

  it('stays when the hours of the planner change', async () => {
    const page = await openChecks();
    await page.typeIn('checks-age', '67');
    await page.typeIn('checks-run', 'far');
    await page.drag('hours', 6);
    expect([page.typedIn('checks-age').value, page.typedIn('checks-run').value]).to.deep.equal(['67', 'far']);
    expect(page.hintOf('checks-run')).to.not.equal('');
  });
});
