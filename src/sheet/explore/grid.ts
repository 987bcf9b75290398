import type { InputQuantity } from '../model.js';
import { withoutNoise } from '../numbers.js';

/** Where an input can be. */
export type InputRange = Pick<InputQuantity, 'id' | 'least' | 'most' | 'step' | 'isChoice'>;

/** Samples of a range: as many to a step, and at least as many in all, but not more than that in all. */
const samples = { perStep: 8, least: 256, most: 8192 };

/**
 * The values on an input's steps, from its least to its most, which is among them where a step falls on it.
 *
 * Throws where the range has no end, or more steps than anybody could look through.
 *
 * @example gridOf({ id: 'x', least: 0.1, most: 0.4, step: 0.1, isChoice: false }) // [0.1, 0.2, 0.3, 0.4]
 */
export function gridOf(input: InputRange): number[] {
  const last = Math.floor(withoutNoise((input.most - input.least) / input.step));
  if (!(input.step > 0 && last >= 0 && last < 1e6))
    throw new Error(`${input.id} goes from ${input.least} to ${input.most} by ${input.step}: that is no range`);
  return Array.from({ length: last + 1 }, (_, index) => stepAt(input, index));
}

/** The value on the next step in a direction, null where there is none: from 4.1 by quarters up to 4.25, down to 4. */
export function nextOnGrid(input: InputRange, value: number, direction: 1 | -1): number | null {
  const grid = gridOf(input);
  const steps = withoutNoise((value - input.least) / input.step);
  const index = direction > 0 ? Math.floor(steps) + 1 : Math.min(Math.ceil(steps) - 1, grid.length - 1);
  return grid[Math.max(index, direction > 0 ? 0 : -1)] ?? null;
}

/**
 * Values at which to look at an input: every step of a choice; of other inputs the steps, the end of the range, and
 * seven values between any two steps, or more where a range has few steps and fewer where it has thousands.
 */
export function samplesOf(input: InputRange): number[] {
  const grid = gridOf(input);
  if (input.isChoice) return grid;
  const wanted = Math.max(samples.perStep, Math.ceil(samples.least / Math.max(1, grid.length - 1)));
  const parts = Math.max(1, Math.min(wanted, Math.floor(samples.most / grid.length)));
  const between = grid.flatMap((value, index) => [
    value,
    ...Array.from({ length: parts - 1 }, (_, part) => stepAt(input, index + (part + 1) / parts)),
  ]);
  return [...between.filter((value) => value < input.most), input.most];
}

/** How far beside a step it is looked as well, as a part of a step. */
const beside = 1e-6;

/**
 * The same, and right beside every step: a rule may change nothing on a round number by chance (its value is what was
 * there anyway), and would seem to be off around it.
 */
export function samplesBesideSteps(input: InputRange): number[] {
  const samples = samplesOf(input);
  if (input.isChoice) return samples;
  const steps = new Set(gridOf(input));
  const gap = beside * input.step;
  return samples
    .flatMap((value) => (steps.has(value) ? [value - gap, value, value + gap] : [value]))
    .filter((value) => value >= input.least && value <= input.most);
}

const stepAt = ({ least, step }: InputRange, index: number): number => withoutNoise(least + index * step);
