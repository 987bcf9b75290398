import { describe, it } from 'vitest';
import { clash, defaultRules } from './default-rules.js';
import { expectClashes, type ClashCase } from './hand-made-answers.js';

describe('two sessions on one day', () => {
  const three = { slow: [5], cross: [5], strength: [5] } as const;
  it.each<ClashCase>([
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

  it.each<ClashCase>([
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
