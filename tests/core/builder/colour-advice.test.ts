import { describe, expect, it, test } from 'vitest';
import { colourAdvice } from '../../../demo/builder/colour-advice.js';
import type { Choices } from '../../../demo/builder/chosen.js';
import { contrast } from '../../../demo/builder/contrast.js';
import { contrast as reference } from '../element/colour-maths.js';

const advice = (colours: Record<string, string>, scheme = '') => colourAdvice({ colours, scheme } as Choices);

describe('contrast(one, other)', () => {
  it.each([
    ['#ffffff', '#000000', 21],
    ['#777777', '#777777', 1],
  ])('of %s and %s is %d', (one, other, expected) => {
    expect(contrast(one, other)).toBeCloseTo(expected, 10);
    expect(contrast(other, one)).toBeCloseTo(expected, 10);
  });
});

test.each([
  ['#2b6449', '#fffdf6'],
  ['#7a2464', '#123020'],
  ['#010203', '#0a0a0a'],
])('contrast(%j, %j) is what the tests of the planner’s own colours find', (one, other) => {
  expect(contrast(one, other)).toBeCloseTo(reference(one, other), 6);
});

describe('colourAdvice(choices)', () => {
  it('has nothing to say of the colours of the planner', () => {
    expect(advice({})).toEqual([]);
  });

  it('tells each contrast, rounded down', () => {
    // 4.48 and 4.54 to 1 on white, as they are usually given.
    expect(advice({ accent: '#777777', ground: '#ffffff', text: '#767676' }, 'light')).toEqual([
      'Text on ground: 4.5 to 1, enough.',
      'Accent on ground: 4.4 to 1, too little to read well; 4.5 is needed.',
    ]);
  });

  it.each([
    ['#fffdf6', 'light', ''],
    ['#fffdf6', 'dark', 'light'],
    ['#fffdf6', '', 'light'],
    ['#101410', 'dark', ''],
    ['#101410', '', 'dark'],
  ])('on the ground %s with the scheme %j asks for %j', (ground, scheme, asked) => {
    const [, , line = ''] = advice({ accent: '#808080', ground, text: '#808080' }, scheme);
    expect(line).toBe(asked && `This ground needs the ${asked} scheme: the planner’s other colours follow it.`);
  });
});
