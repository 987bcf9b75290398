import { describe, it } from 'vitest';
import { expectLengths, type LengthCase } from './hand-made-answers.js';

describe('the long run after quality', () => {
  const tempo = [7];
  const fixed = [{ category: 'tempo', steps: 7, day: 0, isDone: false }] as const;
  const slow = { least: 14, most: 20, rounded: 17, wished: 2 };
  it.each<LengthCase>([
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
  it.each<LengthCase>([
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
