/** Red, green and blue as light, 0 to 1. */
export type Light = readonly [red: number, green: number, blue: number];

/** The light of a colour like #1a8fd0 (sRGB, IEC 61966-2-1). */
export function lightOf(hex: string): Light {
  const channel = (start: number): number => {
    const value = parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/** Contrast of two colours, 1 to 21: WCAG 2.2, "contrast ratio" and "relative luminance". */
export function contrast(one: string, other: string): number {
  const [dark = 0, bright = 0] = [one, other].map(luminance).sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}

function luminance(hex: string): number {
  const [red, green, blue] = lightOf(hex);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

type Matrix = readonly [Light, Light, Light];

const times = (matrix: Matrix, [red, green, blue]: Light): Light => {
  const [first, second, third] = matrix.map(([a, b, c]) => a * red + b * green + c * blue);
  return [first ?? 0, second ?? 0, third ?? 0];
};

/**
 * How people see colours: all of them, and the three kinds of dichromacy.
 *
 * Machado, Oliveira and Fernandes, A physiologically-based model for simulation of color vision deficiency, IEEE
 * Transactions on Visualization and Computer Graphics 15 (6), 2009: severity 1.0, on light; the matrices as they are published with it.
 */
export const visions: Readonly<Record<string, Matrix>> = {
  'normal vision': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** What somebody sees of a light; what cannot be shown is cut off. */
export function seenBy(vision: Matrix, light: Light): Light {
  const [red, green, blue] = times(vision, light);
  const cut = (value: number): number => Math.min(Math.max(value, 0), 1);
  return [cut(red), cut(green), cut(blue)];
}

/**
 * How far two lights look apart: the distance in OKLab, in which 0.02 can just be told apart side by side.
 *
 * Ottosson, A perceptual color space for image processing, 2020; the matrices are those of CSS Color Module Level 4.
 */
export function distance(one: Light, other: Light): number {
  const [a, b] = [okLab(one), okLab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

const toCones: Matrix = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];
const toLab: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];

/** Lightness 0 to 1, green to red, blue to yellow. */
export function okLab(light: Light): Light {
  const [long, medium, short] = times(toCones, light);
  return times(toLab, [Math.cbrt(long), Math.cbrt(medium), Math.cbrt(short)]);
}
