import { expect } from '@open-wc/testing';
import type { Problem } from '../../src/problem.js';
import { openPlanner, shownPlan } from './planner-page.js';

interface Case {
  readonly attribute: string;
  readonly value: string;
  readonly problem: Problem;
  readonly says: string;
}

const outOfRange = (path: string, value: number, [least, most]: readonly [number, number]): Problem => ({
  path,
  value,
  code: 'out-of-range',
  allowed: { least, most },
});
const notOneOf = (path: string, value: string, choices: readonly string[]): Problem => ({
  path,
  value,
  code: 'not-one-of',
  allowed: { choices },
});
const notANumber = (path: string, value: string): Problem => ({
  path,
  value,
  code: 'wrong-type',
  allowed: { expected: 'number' },
});

const phases = ['off-season', 'base', 'build', 'peak', 'taper', 'recovery'];
const levels = ['new', 'developing', 'trained', 'elite'];
const events = ['none', '5k', '10k', 'half-marathon', 'marathon', 'longer'];

const cases: readonly Case[] = [
  {
    attribute: 'hours',
    value: '40',
    problem: outOfRange('hours', 40, [0.5, 20]),
    says: 'Hours a week is 40; allowed: 0.5 to 20.',
  },
  {
    attribute: 'hours',
    value: '-1',
    problem: outOfRange('hours', -1, [0.5, 20]),
    says: 'Hours a week is -1; allowed: 0.5 to 20.',
  },
  {
    attribute: 'hours',
    value: 'four',
    problem: notANumber('hours', 'four'),
    says: 'Hours a week is "four"; it has to be a number.',
  },
  {
    attribute: 'hours',
    value: '',
    problem: notANumber('hours', ''),
    says: 'Hours a week is ""; it has to be a number.',
  },
  {
    attribute: 'strength-cap',
    value: '80',
    problem: outOfRange('strengthCap', 80, [90, 120]),
    says: 'Strength cap is 80; allowed: 90 to 120.',
  },
  {
    attribute: 'phase',
    value: 'summer',
    problem: notOneOf('phase', 'summer', phases),
    says: 'Season phase is "summer"; allowed: off-season, base, build, peak, taper, or recovery.',
  },
  {
    attribute: 'level',
    value: 'pro',
    problem: notOneOf('level', 'pro', levels),
    says: 'Athlete level is "pro"; allowed: new, developing, trained, or elite.',
  },
  {
    attribute: 'event',
    value: '100k',
    problem: notOneOf('event', '100k', events),
    says: 'Target event is "100k"; allowed: none, 5k, 10k, half-marathon, marathon, or longer.',
  },
  {
    attribute: 'panels',
    value: 'split moon',
    problem: notOneOf('panels', 'moon', [
      ...['split', 'sheet', 'week', 'season', 'running', 'strength', 'checks', 'basis', 'record', 'handout'],
    ]),
    says: 'panels is "moon"; allowed: split, sheet, week, season, running, strength, checks, basis, record, or handout.',
  },
];

for (const { attribute, value, problem, says } of cases)
  describe(`${attribute}="${value}"`, () => {
    it('is reported with the field, the value and what is allowed', async () => {
      const page = await openPlanner(`${attribute}="${value}"`);
      expect(page.element.problems).to.deep.equal([problem]);
      expect(page.problems).to.deep.equal([says]);
    });

    it('leaves the last good plan in place', async () => {
      const page = await openPlanner('hours="6" phase="peak" level="elite" event="10k" strength-cap="100"');
      const before = shownPlan(page);
      page.element.setAttribute(attribute, value);
      await page.settled();
      expect(shownPlan(page)).to.deep.equal(before);
      expect(page.problems).to.deep.equal([says]);
    });

    it('is forgiven as soon as it is put right', async () => {
      const page = await openPlanner(`${attribute}="${value}"`);
      page.element.removeAttribute(attribute);
      await page.settled();
      expect(page.element.problems).to.deep.equal([]);
      expect(page.problems).to.deep.equal([]);
    });
  });

it('several faults are told together', async () => {
  const page = await openPlanner('hours="40" phase="summer"');
  expect(page.problems).to.have.length(2);
  expect(page.find('.problems').getAttribute('role')).to.equal('alert');
});

it('a wrong value of a property is reported as it was given', async () => {
  const page = await openPlanner();
  Object.assign(page.element, { hours: '4' });
  await page.settled();
  expect(page.problems).to.deep.equal(['Hours a week is "4"; it has to be a number.']);
});

describe('a person who uses a planner with a faulty attribute', () => {
  it('goes on from the week on show', async () => {
    const page = await openPlanner('hours="6"');
    page.element.setAttribute('hours', '40');
    await page.settled();
    await page.drag('phase', 3);
    expect(shownPlan(page).inputs).to.include({ hours: 6, phase: 'peak' });
    expect(page.problems).to.deep.equal([]);
  });

  it('can pick sessions', async () => {
    const page = await openPlanner('phase="summer"');
    await page.choose(page.sessionList('strength'), 1);
    expect(shownPlan(page).sessions.strength).to.deep.equal([30, 45]);
  });

  it('is told what is wrong until then', async () => {
    const page = await openPlanner('hours="40"');
    await page.ask('strength_minutes');
    expect(page.problems).to.deep.equal(['Hours a week is 40; allowed: 0.5 to 20.']);
  });
});
