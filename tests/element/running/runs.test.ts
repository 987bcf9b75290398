import { expect } from '@open-wc/testing';
import '../board/workers.js';
import builtIn from '../../../shared/methods/default.json';
import { openRunning, scene } from './running-page.js';

const week = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const laid = `${scene} race="10k 45:00" days="60,0,45,60,0,90,120"`;

describe('the runs of a week that is laid on days', () => {
  it('stand in the order of the days, each with its day, as the board has them', async () => {
    const page = await openRunning(laid, 'split week running');
    await page.until(() => page.runHeads[0]?.includes(':') === true, 'the week is laid');
    const days = page.runHeads.map((head) => week.indexOf(head.split(':')[0] ?? ''));
    expect(days).to.deep.equal([...days].sort((one, other) => one - other));
    expect(days).to.not.include(-1);
    const onBoard = page.element.plan?.week?.days?.flatMap((sessions, day) =>
      sessions
        .filter(({ category }) => ['slow', 'tempo', 'intervals'].includes(category))
        .map(({ minutes }) => [day, minutes]),
    );
    const shown = page.runHeads.map((head, index) => [days[index], Number(/(\d+) min/.exec(head)?.[1])]);
    expect(shown).to.deep.equal(onBoard);
  });

  it('have no days without the board', async () => {
    const page = await openRunning(laid);
    for (const head of page.runHeads) expect(head).to.not.contain(':');
  });
});

describe('the strip of a run', () => {
  it('is hidden from assistive technology, and the sentence beside it says the same', async () => {
    const page = await openRunning(`${scene} race="10k 45:00"`);
    const strips = page.all('.run-strip');
    expect(strips).to.have.length(4);
    for (const strip of strips) expect(strip.ariaHidden).to.equal('true');
    // 3 bouts with 2 rests between, a warm-up and a cool-down: 7 parts in all.
    expect(page.runLines[3]).to.match(/^Warm-up .*; 3 × .* easy between; cool-down/);
    expect(strips[3]?.querySelectorAll('span')).to.have.length(7);
    expect(strips[3]?.querySelectorAll('.work')).to.have.length(3);
  });

  it('is as wide as its minutes', async () => {
    const page = await openRunning(`${scene} race="10k 45:00"`);
    const [warmUp, work, coolDown] = [...(page.all('.run-strip')[2]?.children ?? [])].map(
      (part) => part.getBoundingClientRect().width,
    );
    // Warm-up 10 minutes, work 20, cool-down 5.
    expect((work ?? 0) / (warmUp ?? 1)).to.be.closeTo(2, 0.1);
    expect((warmUp ?? 0) / (coolDown ?? 1)).to.be.closeTo(2, 0.1);
  });
});

it('a run changes with the week: hours more are minutes more', async () => {
  const page = await openRunning(`${scene} race="10k 45:00"`);
  const minutes = (): number => page.runHeads.reduce((sum, head) => sum + Number(/(\d+) min/.exec(head)?.[1]), 0);
  const planned = (): number =>
    (['slow', 'tempo', 'intervals'] as const).reduce(
      (sum, kind) => sum + Number.parseInt(page.row(kind).planned, 10),
      0,
    );
  expect(minutes()).to.equal(planned());
  await page.drag('hours', 6);
  expect(minutes()).to.equal(planned());
});

it('a week without runs says so, with a pace and without', async () => {
  const shares = { slow: 0, tempo: 0, intervals: 0, cross: 0.5, strength: 0.5 };
  const page = await openRunning(`${scene} race="10k 45:00"`);
  page.element.method = { ...builtIn, id: 'no-runs', splits: builtIn.splits.map((split) => ({ ...split, shares })) };
  await page.until(() => page.runHeads.length === 0, 'the method comes');
  expect(page.problems).to.deep.equal([]);
  expect(page.lead).to.match(/^Slow runs at \d:\d\d to \d:\d\d a kilometre; no runs this week\.$/);
  expect(page.texts('.runs > p')).to.deep.equal(['No runs in this week.']);
  await page.chooseDistance('no race');
  expect([page.has('.run-strip'), page.texts('.runs > p')]).to.deep.equal([false, ['No runs in this week.']]);
});
