import type { DistanceUnit } from '../../plan/running/wishes.js';
import type { Span } from '../../training/running/span.js';
import type { Words } from '../words.js';
import { clockTime } from './clock-time.js';

/** Metres of a unit. */
export const metresIn: Readonly<Record<DistanceUnit, number>> = { km: 1000, mile: 1609.344 };

/** Paces are told in steps of so many seconds: to the second would say more than an equation knows. */
const paceStep = 5;

/** Distances and paces in kilometres or miles. */
export interface Distances {
  /** "5.6 to 6.6 km" */
  readonly span: (metres: Span, digits?: number) => string;
  /** "5:20 to 6:15 a kilometre" */
  readonly pace: (secondsAKilometre: Span) => string;
  /** The same without the unit: "5:20–6:15". */
  readonly paceAlone: (secondsAKilometre: Span) => string;
  /** "a kilometre" */
  readonly per: string;
  /** Seconds a unit from seconds a kilometre, and back. */
  readonly toUnit: (secondsAKilometre: number) => number;
  readonly toKilometre: (secondsAUnit: number) => number;
}

/** Distances and paces as somebody counts them. */
export function distancesOf(words: Words, unit: DistanceUnit): Distances {
  const metres = metresIn[unit];
  const toUnit = (seconds: number): number => (seconds * metres) / 1000;
  const rounded = (seconds: number): string => clockTime(Math.round(toUnit(seconds) / paceStep) * paceStep);
  const between = (from: string, to: string): string => (from === to ? from : words.say('running.span', { from, to }));
  const per = words.say(`running.per.${unit}`);
  return {
    span: ({ from, to }, digits = 1) =>
      words.say(`running.distance.${unit}`, {
        distance: between(words.number(from / metres, digits), words.number(to / metres, digits)),
      }),
    pace: ({ from, to }) => words.say('running.pace', { pace: between(rounded(from), rounded(to)), per }),
    paceAlone: ({ from, to }) => dashed(rounded(from), rounded(to)),
    per,
    toUnit,
    toKilometre: (seconds) => (seconds * 1000) / metres,
  };
}

/** "5:20–6:15"; one where both ends are the same. */
export const dashed = (from: string, to: string): string => (from === to ? from : `${from}–${to}`);

/** Metres of a bout: in tens, for nobody measures a path to the metre. */
export const shortMetres = (words: Words, { from, to }: Span): string => {
  const tens = (metres: number): string => words.number(Math.round(metres / 10) * 10);
  return words.say('running.metres', {
    metres: tens(from) === tens(to) ? tens(from) : words.say('running.span', { from: tens(from), to: tens(to) }),
  });
};
