import { describe, expect, it } from 'vitest';
import { clashesOf } from '../../../src/training/week/clashes.js';
import { lay } from '../../../src/training/week/lay.js';
import type { Laid } from '../../../src/training/week/week-problem.js';
import { noted, type Note } from './hand-made.js';

interface Case extends Note {
  readonly why: string;
  /** The steps on the seven days of some kinds; null where nothing fits. */
  readonly laid: Partial<Laid> | null;
  /** Each clash: its id, and by how many minutes or sessions. */
  readonly clashes?: readonly string[];
  readonly cost?: number;
}

/** The answers were worked out on paper; the costs are those of the design: the project's own assumption. */
function expectLengths({ why: _, laid, clashes = [], cost = 0, ...note }: Case): void {
  const problem = noted(note);
  const found = lay(problem);
  if (laid === null) {
    expect(found).toBeNull();
    return;
  }
  expect(found).toMatchObject(laid);
  const broken = found ? clashesOf(problem, found) : [];
  expect(broken.map(({ kind, by }) => `${kind} ${by}`)).toEqual(clashes);
  expect(broken.reduce((sum, each) => sum + each.cost, 0)).toBe(cost);
}

describe('the long run after quality', () => {
  const tempo = [7];
  const fixed = [{ category: 'tempo', steps: 7, day: 0, isDone: false }] as const;
  const slow = { least: 14, most: 20, rounded: 17, wished: 2 };
  it.each<Case>([
    {
      why: 'strictly the longest',
      room: { mon: 7, tue: 8, thu: 6 },
      kinds: { tempo, slow: [8, 6] },
      laid: { slow: [0, 8, 0, 6, 0, 0, 0] },
      clashes: ['long-after-quality 0'],
      cost: 3,
    },
    {
      why: 'equally long ones',
      room: { mon: 7, tue: 8, thu: 8 },
      kinds: { tempo, slow: [8, 8] },
      laid: { slow: [0, 8, 0, 8, 0, 0, 0] },
    },
    {
      why: 'the longest on the other day',
      room: { mon: 7, tue: 9, thu: 9 },
      kinds: { tempo, slow: [9, 8] },
      laid: { slow: [0, 8, 0, 9, 0, 0, 0] },
    },
    {
      why: 'the only slow session',
      room: { mon: 7, tue: 8 },
      kinds: { tempo, slow: [8] },
      laid: { slow: [0, 8, 0, 0, 0, 0, 0] },
      clashes: ['long-after-quality 0'],
      cost: 3,
    },
    {
      why: 'Sunday meets Monday',
      room: { mon: 8, sun: 7 },
      kinds: { tempo, slow: [8] },
      laid: { slow: [8, 0, 0, 0, 0, 0, 0] },
      clashes: ['long-after-quality 0'],
      cost: 3,
    },
    {
      why: 'of sixteen steps two are given up (2) before the clash (3)',
      fixed,
      room: { mon: 7, tue: 10, thu: 7 },
      kinds: { tempo, slow: { ...slow, rounded: 16 } },
      laid: { slow: [0, 7, 0, 7, 0, 0, 0] },
      clashes: ['missed-minutes -10'],
      cost: 2,
    },
    {
      why: 'of eighteen steps four (4) are not',
      fixed,
      room: { mon: 7, tue: 11, thu: 7 },
      kinds: { tempo, slow: { ...slow, rounded: 18 } },
      laid: { slow: [0, 11, 0, 7, 0, 0, 0] },
      clashes: ['long-after-quality 0'],
      cost: 3,
    },
    {
      why: 'two even runs of seventeen are not to be had: the longer one comes later',
      room: { mon: 7, tue: 10, thu: 10 },
      kinds: { tempo, slow },
      laid: { slow: [0, 8, 0, 9, 0, 0, 0] },
    },
  ])('$why', expectLengths);
});

describe('the day of the long run', () => {
  it.each<Case>([
    {
      why: 'has the longest',
      longRun: 6,
      room: { wed: 8, sun: 8 },
      kinds: { slow: [6, 8] },
      laid: { slow: [0, 0, 6, 0, 0, 0, 8] },
    },
    {
      why: 'has the only one',
      longRun: 6,
      room: { wed: 8, sun: 8 },
      kinds: { slow: [6] },
      laid: { slow: [0, 0, 0, 0, 0, 0, 6] },
    },
    {
      why: 'cannot have one of two equal ones',
      longRun: 6,
      room: { wed: 8, sun: 8 },
      kinds: { slow: [8, 8] },
      laid: null,
    },
    { why: 'has no room for it', longRun: 6, room: { wed: 8, sun: 7 }, kinds: { slow: [6, 8] }, laid: null },
    {
      why: 'says nothing where there is no slow running',
      longRun: 6,
      room: { wed: 8 },
      kinds: { cross: [8] },
      laid: { cross: [0, 0, 8, 0, 0, 0, 0] },
    },
    {
      why: 'makes it a step longer than the other',
      longRun: 6,
      room: { wed: 8, sun: 8 },
      kinds: { slow: { least: 14, most: 16, rounded: 16, wished: 2 } },
      laid: { slow: [0, 0, 7, 0, 0, 0, 8] },
      clashes: ['missed-minutes -5'],
      cost: 1,
    },
  ])('$why', expectLengths);
});

describe('missed minutes', () => {
  const cross = { least: 4, most: 10, rounded: 8, wished: 1 };
  it.each<Case>([
    { why: 'none', room: { mon: 9 }, kinds: { cross }, laid: { cross: [8, 0, 0, 0, 0, 0, 0] } },
    {
      why: 'a step',
      room: { mon: 7 },
      kinds: { cross },
      laid: { cross: [7, 0, 0, 0, 0, 0, 0] },
      clashes: ['missed-minutes -5'],
      cost: 1,
    },
    {
      why: 'four steps',
      room: { mon: 4 },
      kinds: { cross },
      laid: { cross: [4, 0, 0, 0, 0, 0, 0] },
      clashes: ['missed-minutes -20'],
      cost: 4,
    },
    { why: 'under the shortest nothing is laid', room: { mon: 3 }, kinds: { cross }, laid: null },
    {
      why: 'two steps too many, in a session that stays',
      room: { mon: 10 },
      kinds: { cross },
      fixed: [{ category: 'cross', steps: 10, day: 0, isDone: false }],
      laid: { cross: [10, 0, 0, 0, 0, 0, 0] },
      clashes: ['missed-minutes 10'],
      cost: 2,
    },
    {
      why: 'off the step, the step below is as good',
      room: { mon: 8 },
      kinds: { cross: { ...cross, rounded: 8.5 } },
      laid: { cross: [8, 0, 0, 0, 0, 0, 0] },
    },
    {
      why: 'and two below is a step',
      room: { mon: 7 },
      kinds: { cross: { ...cross, rounded: 8.5 } },
      laid: { cross: [7, 0, 0, 0, 0, 0, 0] },
      clashes: ['missed-minutes -7.5'],
      cost: 1,
    },
  ])('$why', expectLengths);
});

describe('the number of sessions', () => {
  const cross = { least: 4, most: 10, rounded: 8, wished: 2 };
  it.each<Case>([
    { why: 'as wished', room: { mon: 4, wed: 4 }, kinds: { cross }, laid: { cross: [4, 0, 4, 0, 0, 0, 0] } },
    {
      why: 'one fewer',
      room: { mon: 8 },
      kinds: { cross },
      laid: { cross: [8, 0, 0, 0, 0, 0, 0] },
      clashes: ['session-count -1'],
      cost: 2,
    },
    {
      why: 'one more (2) before four steps missed',
      room: { mon: 4, wed: 4 },
      kinds: { cross: { ...cross, wished: 1 } },
      laid: { cross: [4, 0, 4, 0, 0, 0, 0] },
      clashes: ['session-count 1'],
      cost: 2,
    },
    {
      why: 'a step missed (1) before one more',
      room: { mon: 7, wed: 4 },
      kinds: { cross: { ...cross, wished: 1 } },
      laid: { cross: [7, 0, 0, 0, 0, 0, 0] },
      clashes: ['missed-minutes -5'],
      cost: 1,
    },
  ])('$why', expectLengths);
});

describe('what is done', () => {
  const done = { category: 'cross', steps: 9, day: 0, isDone: true } as const;
  it.each<Case>([
    {
      why: 'needs no room',
      room: { wed: 5 },
      kinds: { cross: [5, 9] },
      fixed: [done],
      passed: 1,
      laid: { cross: [9, 0, 5, 0, 0, 0, 0] },
    },
    { why: 'but leaves none', room: { mon: 13 }, kinds: { cross: [9], slow: [5] }, fixed: [done], laid: null },
    {
      why: 'or just enough',
      room: { mon: 14 },
      kinds: { cross: [9], slow: [5] },
      fixed: [done],
      laid: { slow: [5, 0, 0, 0, 0, 0, 0] },
      clashes: ['two-sessions 0'],
      cost: 1,
    },
    {
      why: 'what is not done cannot stay on a day off',
      room: { mon: 14 },
      kinds: { cross: [9] },
      free: 1,
      fixed: [{ ...done, isDone: false }],
      laid: null,
    },
  ])('$why', expectLengths);
});
