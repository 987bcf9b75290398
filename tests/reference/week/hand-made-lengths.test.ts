import { describe, it } from 'vitest';
import { expectLengths, type LengthCase } from './hand-made-answers.js';

describe('missed minutes', () => {
  const cross = { least: 4, most: 10, rounded: 8, wished: 1 };
  it.each<LengthCase>([
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
  it.each<LengthCase>([
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
  it.each<LengthCase>([
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
    {
      why: 'not even to what stays without being done',
      room: { mon: 13 },
      kinds: { cross: [9], slow: [5] },
      fixed: [done, { category: 'slow', steps: 5, day: 0, isDone: false }],
      laid: null,
    },
  ])('$why', expectLengths);
});
