import type { PlanInputs } from '../../src/plan/document.js';
import type { CategoryId } from '../../src/training/method/ids.js';
import { apportion } from '../../src/training/sessions/apportion.js';

// The built-in method as one would write it without an engine: plain functions, numbers where they are used.

export type Amounts = Record<CategoryId, number>;
type Split = 'off_season' | 'taper' | 'recovery' | 'in_season';
export type NoticeId = 'few-hours' | 'many-hours' | 'no-event' | 'short-event' | 'long-event' | 'slow-too-small';

const shares: Readonly<Record<Split, Readonly<Amounts>>> = {
  off_season: { slow: 0.25, tempo: 0.15, intervals: 0, cross: 0.2, strength: 0.4 },
  taper: { slow: 0.45, tempo: 0.15, intervals: 0.15, cross: 0.1, strength: 0.15 },
  recovery: { slow: 0.4, tempo: 0, intervals: 0, cross: 0.35, strength: 0.25 },
  in_season: { slow: 0.3, tempo: 0.15, intervals: 0.1, cross: 0.15, strength: 0.3 },
};
const shortest: Readonly<Amounts> = { slow: 20, tempo: 20, intervals: 20, cross: 20, strength: 15 };

/** What the sheet of the built-in method has formulas for. */
export interface Week {
  readonly split: Split;
  readonly shares: Readonly<Amounts>;
  readonly weeklyMinutes: number;
  readonly minutes: Readonly<Amounts>;
  readonly plannedMinutes: number;
  readonly runningMinutes: number;
  readonly runningShare: number;
  readonly due: Readonly<Record<NoticeId, boolean>>;
}

export function week(inputs: PlanInputs): Week {
  const split = splitOf(inputs);
  const weeklyMinutes = inputs.hours * 60;
  const minutes = minutesOf(weeklyMinutes, shares[split]);
  capStrength(minutes, inputs);
  foldAway(minutes, 'intervals', 'tempo');
  foldAway(minutes, 'tempo', 'slow');
  foldAway(minutes, 'cross', 'slow');
  raiseStrength(minutes);
  const runningMinutes = minutes.slow + minutes.tempo + minutes.intervals;
  return {
    split,
    shares: shares[split],
    weeklyMinutes,
    minutes,
    plannedMinutes: runningMinutes + minutes.cross + minutes.strength,
    runningMinutes,
    runningShare: runningMinutes / weeklyMinutes,
    due: noticesDue(inputs, minutes.slow),
  };
}

export function splitOf({ phase, level }: PlanInputs): Split {
  if (phase === 'off-season' || level === 'new') return 'off_season';
  return phase === 'taper' || phase === 'recovery' ? phase : 'in_season';
}

export function sharesOf(split: Split): Readonly<Amounts> {
  return shares[split];
}

export function minutesOf(weekly: number, { slow, tempo, intervals, cross, strength }: Readonly<Amounts>): Amounts {
  return {
    slow: weekly * slow,
    tempo: weekly * tempo,
    intervals: weekly * intervals,
    cross: weekly * cross,
    strength: weekly * strength,
  };
}

export function capStrength(minutes: Amounts, { hours, strengthCap }: PlanInputs): void {
  if (hours <= 6 || minutes.strength <= strengthCap) return;
  minutes.slow += minutes.strength - strengthCap;
  minutes.strength = strengthCap;
}

/** Where strength is only kept up; 0 is no limit. */
export function keepStrengthUp(minutes: Amounts, most: number): void {
  if (most <= 0 || minutes.strength <= most) return;
  minutes.slow += minutes.strength - most;
  minutes.strength = most;
}

export function foldAway(minutes: Amounts, from: CategoryId, to: CategoryId): void {
  if (minutes[from] >= shortest[from]) return;
  minutes[to] += minutes[from];
  minutes[from] = 0;
}

export function raiseStrength(minutes: Amounts): void {
  const { strength, slow } = minutes;
  if (strength <= 0 || strength >= shortest.strength) return;
  minutes.strength = Math.min(shortest.strength, strength + slow);
  minutes.slow += strength - minutes.strength;
}

export function noticesDue({ hours, event }: PlanInputs, slow: number): Week['due'] {
  return {
    'few-hours': hours < 3,
    'many-hours': hours > 6,
    'no-event': event === 'none',
    'short-event': event === '5k',
    'long-event': event === 'longer',
    'slow-too-small': slow > 0 && slow < shortest.slow,
  };
}

/** Minutes in whole steps of five. */
export function roundWeek({ slow, tempo, intervals, cross, strength }: Readonly<Amounts>): Amounts {
  const steps = Math.round((slow + tempo + intervals + cross + strength) / 5);
  const units = apportion([slow, tempo, intervals, cross, strength], steps, [4, 0, 1, 2, 3]);
  const minutes = (index: number): number => 5 * (units[index] ?? 0);
  return { slow: minutes(0), tempo: minutes(1), intervals: minutes(2), cross: minutes(3), strength: minutes(4) };
}
