import { describe, expect, it } from 'vitest';
import { clashesOf } from '../../../src/training/week/clashes.js';
import { canLay, lay } from '../../../src/training/week/lay.js';
import { clash, defaultRules } from './default-rules.js';
import { noted, type Note } from './hand-made.js';

interface Case extends Note {
  readonly why: string;
  /** Each clash: its id and its days, Monday 0; null where nothing fits. */
  readonly clashes: readonly string[] | null;
  readonly cost?: number;
}

/** The answers were worked out on paper; the costs are those of the design: the project's own assumption. */
function expectClashes({ why: _, clashes, cost = 0, ...note }: Case): void {
  const problem = noted(note);
  const laid = lay(problem);
  expect(canLay(problem)).toBe(clashes !== null);
  const found = laid && clashesOf(problem, laid);
  expect(found?.map(({ kind, days }) => [kind, ...days].join(' ')) ?? null).toEqual(clashes);
  expect(found?.reduce((sum, each) => sum + each.cost, 0) ?? 0).toBe(cost);
}

const hard = { tempo: [7], intervals: [7] } as const;
const pair = { tempo: [7], strength: [6] } as const;

describe('quality on neighbouring days', () => {
  it.each<Case>([
    { why: 'a day lies between', room: { tue: 7, thu: 7 }, kinds: hard, clashes: [] },
    { why: 'no day lies between', room: { tue: 7, wed: 7 }, kinds: hard, clashes: ['quality-neighbours 1 2'], cost: 8 },
    { why: 'Sunday meets Monday', room: { mon: 7, sun: 7 }, kinds: hard, clashes: ['quality-neighbours 6 0'], cost: 8 },
    { why: 'Sunday is two days from Tuesday', room: { tue: 7, sun: 7 }, kinds: hard, clashes: [] },
    {
      why: 'three in a row are two pairs',
      room: { mon: 7, sat: 7, sun: 7 },
      kinds: { tempo: [7, 7], intervals: [7] },
      clashes: ['quality-neighbours 5 6', 'quality-neighbours 6 0'],
      cost: 16,
    },
    { why: 'never two on one day', room: { wed: 14 }, kinds: hard, clashes: null },
  ])('$why', expectClashes);
});

describe('strength on neighbouring days', () => {
  it.each<Case>([
    { why: 'a day lies between', room: { mon: 6, wed: 6 }, kinds: { strength: [6, 6] }, clashes: [] },
    {
      why: 'no day lies between',
      room: { mon: 6, tue: 6 },
      kinds: { strength: [6, 6] },
      clashes: ['strength-neighbours 0 1'],
      cost: 6,
    },
    {
      why: 'Sunday meets Monday',
      room: { mon: 6, sun: 6 },
      kinds: { strength: [6, 6] },
      clashes: ['strength-neighbours 6 0'],
      cost: 6,
    },
    {
      why: 'a free neighbour is taken before a clash',
      room: { mon: 6, tue: 6, thu: 6 },
      kinds: { strength: [6, 6] },
      clashes: [],
    },
  ])('$why', expectClashes);
});

describe('strength and quality', () => {
  it.each<Case>([
    { why: 'strength the day after is fine', room: { mon: 7, tue: 6 }, kinds: pair, clashes: [] },
    {
      why: 'not the day before',
      room: { mon: 6, tue: 7 },
      kinds: pair,
      clashes: ['strength-before-quality 0 1'],
      cost: 4,
    },
    { why: 'two days before is fine', room: { mon: 6, wed: 7 }, kinds: pair, clashes: [] },
    {
      why: 'Sunday is before Monday',
      room: { mon: 7, sun: 6 },
      kinds: pair,
      clashes: ['strength-before-quality 6 0'],
      cost: 4,
    },
    {
      why: 'the same day',
      room: { wed: 13 },
      kinds: pair,
      clashes: ['strength-with-quality 2', 'two-sessions 2'],
      cost: 3,
    },
    { why: 'the same day has a step too few', room: { wed: 12 }, kinds: pair, clashes: null },
    {
      why: 'rather the same day (3) than the day before (4)',
      room: { tue: 6, wed: 13 },
      kinds: pair,
      clashes: ['strength-with-quality 2', 'two-sessions 2'],
      cost: 3,
    },
    { why: 'rather the day after than the same day', room: { wed: 13, thu: 6 }, kinds: pair, clashes: [] },
  ])('$why', expectClashes);
});

describe('two sessions on one day', () => {
  const three = { slow: [5], cross: [5], strength: [5] } as const;
  it.each<Case>([
    { why: 'each has a day', room: { mon: 5, wed: 5, fri: 5 }, kinds: three, clashes: [] },
    { why: 'two share one', room: { mon: 10, wed: 5 }, kinds: three, clashes: ['two-sessions 0'], cost: 1 },
    { why: 'three share one', room: { mon: 15 }, sessionsADay: 3, kinds: three, clashes: ['two-sessions 0'], cost: 1 },
    { why: 'three are too many', room: { mon: 15 }, kinds: three, clashes: null },
    {
      why: 'two days with two',
      room: { mon: 12, thu: 12 },
      kinds: { slow: [6, 6], cross: [6, 6] },
      clashes: ['two-sessions 0', 'two-sessions 3'],
      cost: 2,
    },
    { why: 'one session a day is all', room: { mon: 10, wed: 5 }, sessionsADay: 1, kinds: three, clashes: null },
    {
      why: 'a rest day brings them together',
      room: { mon: 10, wed: 9 },
      restDays: 6,
      kinds: { slow: [5], cross: [5] },
      clashes: ['two-sessions 0'],
      cost: 1,
    },
    {
      why: 'all days are rest days',
      room: { mon: 10, wed: 10 },
      restDays: 7,
      kinds: { slow: [5], cross: [5] },
      clashes: null,
    },
  ])('$why', expectClashes);
});

describe("a coach's own clashes", () => {
  const own = (...clashes: (typeof defaultRules.clashes)[number][]) => ({ ...defaultRules, clashes });
  const mixed = (apart: number, cost = 5) =>
    own(clash({ kind: 'pair', first: ['slow', 'cross'], then: ['strength'], days_apart: apart, cost }));
  const kinds = { slow: [5], cross: [5], strength: [5] } as const;

  it.each<Case>([
    {
      why: 'two of the first on a day count once',
      rules: mixed(0),
      room: { mon: 15 },
      sessionsADay: 3,
      kinds,
      clashes: ['own 0'],
      cost: 5,
    },
    {
      why: 'three days apart',
      rules: mixed(3),
      room: { fri: 10, mon: 4 },
      kinds: { slow: [5], cross: [5], strength: [4] },
      clashes: ['own 4 0'],
      cost: 5,
    },
    {
      why: 'two days are not three',
      rules: mixed(2),
      room: { fri: 10, mon: 4 },
      kinds: { slow: [5], cross: [5], strength: [4] },
      clashes: [],
    },
    {
      why: 'what costs nothing is no clash',
      rules: mixed(0, 0),
      room: { mon: 15 },
      sessionsADay: 3,
      kinds,
      clashes: [],
    },
  ])('$why', expectClashes);
});
