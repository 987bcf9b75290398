import { expect } from '@open-wc/testing';
import club from '../../demo/club-method.json';
import { openPlanner, shownPlan } from './planner-page.js';

type Club = typeof club;

/** The club's method with one thing wrong. */
function broken(change: (method: Club) => unknown): unknown {
  const method = structuredClone(club);
  change(method);
  return method;
}

const [first] = club.splits;
if (!first) throw new Error('the method has no split');

const cases: readonly [name: string, method: unknown, path: string, says: readonly string[]][] = [
  [
    'shares that do not add up to 1',
    broken(({ splits }) => (splits[0]!.shares.slow = 0.5)),
    'splits[0].shares',
    ['1.25', '1'],
  ],
  [
    'a share that is a text',
    broken(({ splits }) => Object.assign(splits[0]!.shares, { slow: 'half' })),
    'splits[0].shares.slow',
    ['"half"', 'a number'],
  ],
  [
    'a formula that ends too soon',
    broken(({ rules }) => (rules[0]!.when = 'weekly_hours >')),
    'rules[0].when',
    ['"weekly_hours >"', 'ends too soon'],
  ],
  ['a formula of an unknown name', broken(({ rules }) => (rules[0]!.when = 'hous > 6')), 'rules[0].when', ['hous']],
  [
    'a longest session under the shortest',
    broken(({ categories }) => (categories[0]!.session.longest = 10)),
    'categories[0].session',
    ['10'],
  ],
  [
    'a kind that is not known',
    broken(({ categories }) => (categories[0]!.id = 'swim')),
    'categories[0].id',
    ['"swim"', 'slow'],
  ],
  ['a text in place of a document', 'shares', '', ['"shares"', 'an object']],
];

for (const [name, method, path, says] of cases)
  describe(`a method with ${name}`, () => {
    it('is refused with the path, the value and what is allowed', async () => {
      const page = await openPlanner();
      page.element.method = method;
      await page.settled();
      const [problem] = page.element.problems;
      expect(problem?.path.startsWith(path), `${String(problem?.path)} at ${path}`).to.equal(true);
      const text = page.problems.join(' ');
      for (const part of [path, ...says]) expect(text).to.include(part);
      expect(page.find('.problems').textContent).to.include('The last good method stays in use.');
    });

    it('leaves the last good method in place, which goes on working', async () => {
      const page = await openPlanner();
      page.element.method = club;
      await page.settled();
      page.element.method = method;
      await page.settled();
      await page.drag('hours', 8);
      expect(shownPlan(page).method.id).to.equal(club.id);
      expect(shownPlan(page).inputs.hours).to.equal(8);
      expect(page.problems).to.not.deep.equal([]);
    });
  });

it('a script child that is no JSON is refused, and the built-in method is used', async () => {
  const page = await openPlanner('', '<script type="application/json" slot="method">{ shares: }</script>');
  expect(page.problems.join()).to.match(/^script is not valid JSON/);
  expect(shownPlan(page).method.id).to.equal('weekwright');
});

it('a good method after a faulty one clears the problems', async () => {
  const page = await openPlanner();
  page.element.method = {};
  await page.settled();
  expect(page.problems.length).to.be.greaterThan(0);
  page.element.method = club;
  await page.settled();
  expect(page.problems).to.deep.equal([]);
  expect(shownPlan(page).method.id).to.equal(club.id);
});

it('many faults are counted, not all told', async () => {
  const page = await openPlanner();
  page.element.method = broken((method) => {
    for (const split of method.splits) Object.assign(split.shares, { slow: 'a', tempo: 'b', cross: 'c' });
  });
  await page.settled();
  expect(page.problems).to.have.length(9);
  expect(page.problems.at(-1)).to.match(/^and \d+ more$/);
});
