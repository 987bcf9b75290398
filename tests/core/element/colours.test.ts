import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { categoryIds } from '../../../src/training/method/ids.js';
import { contrast, distance, lightOf, okLab, seenBy, visions } from './colour-maths.js';

const styles = readFileSync(new URL('../../../src/element/base.styles.ts', import.meta.url), 'utf8');
const schemes = ['light', 'dark'] as const;
type Scheme = (typeof schemes)[number];

/** Our own colours, by the name of their custom property, in both schemes. */
const colours = new Map(
  [...styles.matchAll(/--([a-z-]+): (?:var\([^;]*, )?light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)\)?;/g)].map(
    ([, name = '', light = '', dark = '']) => [name, { light, dark }] as const,
  ),
);

function colour(name: string, scheme: Scheme): string {
  const found = colours.get(name);
  if (!found) throw new Error(`no colour --${name}`);
  return found[scheme];
}

describe('the arithmetic of colours', () => {
  test('has the ends of the scale: WCAG 2.2', () => {
    expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
    expect(contrast('#777777', '#777777')).toBe(1);
    // Understanding WCAG 2.2, success criterion 1.4.3: the lightest grey that is enough on white.
    expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  });

  test('has white and red where Ottosson has them', () => {
    expect(okLab([1, 1, 1])).toEqual([1, 0, 0].map((value) => expect.closeTo(value, 6) as unknown));
    expect(okLab(lightOf('#ff0000'))).toEqual(
      [0.628, 0.2249, 0.1258].map((value) => expect.closeTo(value, 3) as unknown),
    );
  });

  test.each(Object.entries(visions))('leaves greys grey for %s', (_, vision) => {
    for (const grey of [0.05, 0.4, 1])
      for (const part of seenBy(vision, [grey, grey, grey])) expect(part).toBeCloseTo(grey, 5);
  });

  test('takes red and green closer together for those who cannot tell them apart', () => {
    const [red, green] = [lightOf('#c03030'), lightOf('#508030')];
    const apart = (name: string): number => {
      const vision = visions[name];
      return vision ? distance(seenBy(vision, red), seenBy(vision, green)) : 0;
    };
    expect(apart('protanopia')).toBeLessThan(0.6 * apart('normal vision'));
    expect(apart('deuteranopia')).toBeLessThan(0.6 * apart('normal vision'));
  });
});

describe.each(schemes)('in the %s scheme', (scheme) => {
  const ground = colour('ground', scheme);

  // WCAG 2.2, success criterion 1.4.11, graphics and the edges of controls.
  test.each([...categoryIds, 'edge'])('--%s stands out from the ground, 3 : 1', (name) => {
    expect(contrast(colour(name, scheme), ground)).toBeGreaterThanOrEqual(3);
  });

  // WCAG 2.2, success criterion 1.4.3, text.
  test.each(['text', 'muted', 'accent', 'alert'])('--%s can be read on the ground, 4.5 : 1', (name) => {
    expect(contrast(colour(name, scheme), ground)).toBeGreaterThanOrEqual(4.5);
  });

  describe.each(Object.entries(visions))('to %s', (_, vision) => {
    const pairs = categoryIds.flatMap((one, index) =>
      categoryIds.slice(index + 1).map((other) => [one, other] as const),
    );

    test.each(pairs)('%s and %s look different', (one, other) => {
      const [first, second] = [one, other].map((name) => seenBy(vision, lightOf(colour(name, scheme))));
      expect(distance(first ?? [0, 0, 0], second ?? [0, 0, 0])).toBeGreaterThanOrEqual(0.09);
    });
  });
});
