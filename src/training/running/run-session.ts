import type { EasyPart, RunningKind } from '../method/running-rules.js';

export const runPartKinds = ['warm-up', 'work', 'rest', 'cool-down'] as const;

/** What a run is made of, in the order in which it is run; minutes of one of its `times`. */
export interface RunPart {
  readonly kind: (typeof runPartKinds)[number];
  readonly minutes: number;
  readonly times: number;
}

/**
 * Cuts a run into warm-up, work with rests, and cool-down. Bouts are in half minutes; what they leave goes to the
 * cool-down, so that the parts add up to the session.
 *
 * @example runParts(35, intervals) // warm-up 10, 4 × 3.5 with 3 × 2 between, cool-down 5
 */
export function runParts(minutes: number, { warm_up, cool_down, bouts }: RunningKind): readonly RunPart[] {
  const before = easyMinutes(minutes, warm_up);
  const after = easyMinutes(minutes, cool_down);
  const main = minutes - before - after;
  if (!bouts) return parts([before, { work: main, times: 1, rest: 0 }, after]);
  const times = Math.max(1, Math.round((main + bouts.rest) / (bouts.work + bouts.rest)));
  const whole = (main - (times - 1) * bouts.rest) / times;
  const work = Math.max(Math.floor(whole * 2) / 2, Math.min(whole, 0.5));
  const left = main - times * work - (times - 1) * bouts.rest;
  // What is left over by floating point alone is nothing.
  return parts([before, { work, times, rest: bouts.rest }, after + (left < 1e-9 ? 0 : left)]);
}

/** Whole minutes, and never more than its share of the session. */
const easyMinutes = (minutes: number, part: EasyPart | undefined): number =>
  part ? Math.floor(Math.min(part.minutes, minutes * part.most_share) + 1e-9) : 0;

function parts([before, { work, times, rest }, after]: readonly [
  number,
  { readonly work: number; readonly times: number; readonly rest: number },
  number,
]): readonly RunPart[] {
  const all: readonly RunPart[] = [
    { kind: 'warm-up', minutes: before, times: 1 },
    { kind: 'work', minutes: work, times },
    { kind: 'rest', minutes: rest, times: times - 1 },
    { kind: 'cool-down', minutes: after, times: 1 },
  ];
  return all.filter((part) => part.minutes * part.times > 0);
}
