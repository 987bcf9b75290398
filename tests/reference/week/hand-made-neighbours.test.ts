import { describe, it } from 'vitest';
import { expectClashes, type ClashCase } from './hand-made-answers.js';

const hard = { tempo: [7], intervals: [7] } as const;
const pair = { tempo: [7], strength: [6] } as const;

describe('quality on neighbouring days', () => {
  it.each<ClashCase>([
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
  it.each<ClashCase>([
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
  it.each<ClashCase>([
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
