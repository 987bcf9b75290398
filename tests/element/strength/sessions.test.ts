import { expect } from '@open-wc/testing';
import builtIn from '../../../shared/methods/default.json';
import { collapsed } from '../text.js';
import '../board/workers.js';
import { openStrength, scene, type StrengthPage } from './strength-page.js';

const week = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const minutesIn = (text: string): number[] => [...text.matchAll(/([\d.]+) minutes?/g)].map(([, each]) => Number(each));

/** What a session says of its time: all of it, the minutes that there are, and what is left. */
function timesOf(page: StrengthPage, session: number): number[] {
  const line = page.texts(`.strength-session:nth-child(${String(session + 1)}) > p.quiet`)[0] ?? '';
  return minutesIn(line);
}

/** Seconds of work that the sets on show come to, three for a repetition (shared/methods/default.json). */
function workOf(page: StrengthPage, session: number): number {
  return page.movements(session).reduce((sum, movement) => {
    const [, sets, each, seconds, sides] =
      /^(\d+) × (\d+)( seconds)?( on each side)?/.exec(page.lineOf(movement, session)) ?? [];
    expect(each, movement).to.not.equal(undefined);
    return sum + Number(sets) * Number(each) * (seconds ? 1 : 3) * (sides ? 2 : 1);
  }, 0);
}

const scenes = [
  scene,
  'hours="1" level="new" equipment="none"',
  'hours="3" phase="off-season" level="trained"',
  'hours="6" phase="peak" level="elite" equipment="band dumbbells barbell"',
  'hours="12" phase="base" level="developing"',
  'hours="5" phase="taper" level="trained" equipment="barbell"',
  'hours="4" phase="recovery" level="trained"',
];

for (const each of scenes)
  it(`every session fits into its minutes: ${each}`, async () => {
    const page = await openStrength(each);
    const planned = page.element.plan?.sessions.strength ?? [];
    expect(page.sessions.length).to.be.greaterThan(0);
    for (const [index, session] of page.sessions.entries()) {
      const [minutes] = /^(\d+) min/.exec(collapsed(session.querySelector('header .quiet') ?? session)) ?? [];
      const [used = 99, there, spare = 99] = timesOf(page, index);
      expect(`${String(there)} min`).to.equal(minutes);
      expect(used).to.be.at.most(there ?? 0);
      expect(used + spare).to.equal(there);
      const easy = [...session.querySelectorAll('.easy')].flatMap((part) => minutesIn(collapsed(part)));
      const rests = [...session.querySelectorAll('.rest')].length;
      expect(rests).to.be.greaterThan(0);
      // Work, warm-up and cool-down alone leave time for rests.
      expect(workOf(page, index) / 60 + easy.reduce((sum, part) => sum + part, 0)).to.be.at.most(used);
    }
    expect(planned.map(Number)).to.have.length(page.sessions.length);
  });

it('the sentence at the top, the titles and the plan tell the same minutes', async () => {
  const page = await openStrength();
  // 35 + 40 of 75 minutes: tests/element/accessible-names.test.ts.
  expect(page.lead).to.equal('Heavier: sessions of 35 minutes and 40 minutes.');
  expect(page.texts('.strength-session h4')).to.deep.equal(['Session 1', 'Session 2']);
  expect(page.texts('.strength-session header .quiet')).to.deep.equal([
    ...['35 min · legs in full', '40 min · legs in full'],
  ]);
  await page.drag('hours', 1);
  expect(page.lead).to.match(/^Heavier: one session of \d+ minutes\.$/);
});

describe('the stage', () => {
  // Some phases have a stage of their own, new runners have theirs in all: shared/methods/default.json.
  for (const [phase, level, stage] of [
    ['build', 'developing', 'Heavier'],
    ['build', 'new', 'First steps'],
    ['peak', 'trained', 'Explosive'],
    ['taper', 'elite', 'Keeping it up'],
    ['taper', 'new', 'First steps'],
    ['base', 'elite', 'General preparation'],
    ['off-season', 'developing', 'General preparation'],
    ['recovery', 'trained', 'General preparation'],
  ] as const)
    it(`is "${stage}" in ${phase} for ${level}`, async () => {
      const page = await openStrength(`hours="4" phase="${phase}" level="${level}"`);
      expect(page.lead.split(':')[0]).to.equal(stage);
    });

  it('of first steps has no jumps', async () => {
    const page = await openStrength('hours="4" phase="build" level="new"');
    for (const [index] of page.sessions.entries())
      expect(page.movements(index).join()).to.not.match(/hops|jump|bounds/i);
  });

  it('changes with the phase, by hand', async () => {
    const page = await openStrength();
    const list = page.list('phase');
    await page.choose(
      list,
      [...list.options].findIndex(({ text }) => text.trim() === 'Peak'),
    );
    expect(page.lead).to.match(/^Explosive: /);
  });
});

describe('a week without strength', () => {
  const shares = { slow: 0.4, tempo: 0.2, intervals: 0.1, cross: 0.3, strength: 0 };
  const without = { ...builtIn, id: 'legs-only', splits: builtIn.splits.map((split) => ({ ...split, shares })) };

  it('says so, has nothing to open, and comes back with another method', async () => {
    const page = await openStrength();
    page.element.method = without;
    await page.until(() => page.lead.startsWith('No'), 'the method comes');
    expect(page.problems).to.deep.equal([]);
    expect([page.lead, page.sessions.length]).to.deep.equal(['No strength sessions in this week.', 0]);
    expect(page.has('#strength-minutes')).to.equal(false);
    await page.opens('lifted');
    expect(page.panelText).to.not.match(/undefined|NaN|null/);
    page.element.method = null;
    await page.until(() => page.sessions.length === 2, 'the sessions come back');
  });
});

describe('the sessions of a week that is laid on days', () => {
  it('stand in the order of the days, and on those of the board', async () => {
    const page = await openStrength(`${scene} days="60,0,45,60,0,90,120"`, 'split week strength');
    await page.until(() => / on /.test(page.lead), 'the week is laid');
    const titles = page.texts('.strength-session h4');
    const days = titles.map((title) => week.indexOf(title.split(', ')[1] ?? ''));
    const onBoard = page.element.plan?.week?.days?.flatMap((sessions, day) =>
      sessions.filter(({ category }) => category === 'strength').map(() => day),
    );
    expect(days).to.deep.equal(onBoard);
    expect(titles.map((title) => title.split(',')[0])).to.deep.equal(days.map((_, at) => `Session ${String(at + 1)}`));
    for (const day of days) expect(page.lead).to.contain(week[day]);
    expect(page.notes.join()).to.not.contain('not laid on days');
  });

  it('without days say that legs cannot be spared', async () => {
    const page = await openStrength();
    expect(page.notes.join()).to.contain('Sessions are not laid on days');
  });
});

it('what to mind of pain stands under the sessions, always', async () => {
  const page = await openStrength();
  expect(page.notes.at(-1)).to.match(/^Pain that grows during a set/);
  expect(page.all('.strength .concrete-notes li').at(-1)?.dataset['level']).to.equal('caution');
});
