import type { Facts } from '../../../src/training/checks/facts.js';
import type { CheckLevel } from '../../../src/training/checks/check-levels.js';
import type { CheckedRunner } from '../../../src/training/checks/judge.js';
import type { LevelId, PhaseId } from '../../../src/training/method/ids.js';

/*
 * Every check of the built-in method on both sides of every one of its edges. The numbers stand here as they were
 * published (ids: shared/evidence), not as the method has them; what is common practice or our own reading says so.
 */

/** A runner of whom little is told. */
export const anybody: CheckedRunner = { level: 'developing', phase: 'base', age: null };

/** Who asks, and with which facts beside the one measured. */
export interface Asked {
  readonly runner?: CheckedRunner;
  readonly more?: Facts;
}

/** What a check has to say of a row of values. */
export interface Guidance extends Asked {
  readonly check: string;
  /** Who it is for, in words. */
  readonly who?: string;
  /** Which source has which number; 'common practice' or 'our reading' where none has. */
  readonly by: string;
  /** What the source has to say in shared/evidence. */
  readonly says?: Readonly<Record<string, readonly string[]>>;
  readonly levels: readonly (readonly [value: number, level: CheckLevel | 'not made'])[];
}

const of = (level: LevelId, phase: PhaseId = 'base', age: number | null = null): CheckedRunner => ({
  level,
  phase,
  age,
});
const aged = (age: number | null, phase: PhaseId = 'base'): CheckedRunner => of('developing', phase, age);

/** Elsewhere than in taper and recovery. */
const strengthDose = [
  ...([
    [0, 'look'],
    [1, 'look'],
    [2, 'in-line'],
    [3, 'in-line'],
    [4, 'look'],
    [7, 'look'],
  ] as const),
];
const upkeep = [
  [0, 'look'],
  [1, 'in-line'],
  [2, 'in-line'],
  [3, 'in-line'],
  [4, 'look'],
] as const;
const noise = [
  [-0.5, 'in-line'],
  [0.27, 'in-line'],
  [0.28, 'in-line'],
  [0.281, 'look'],
  [9, 'look'],
] as const;
const aFifth = [
  [-0.9, 'in-line'],
  [0.19, 'in-line'],
  [0.2, 'in-line'],
  [0.201, 'look'],
  [0.6, 'look'],
  [3, 'look'],
] as const;
const longest = [
  ...([
    [-0.5, 'in-line'],
    [0.09, 'in-line'],
    [0.1, 'in-line'],
    [0.101, 'look'],
  ] as const),
  ...([
    [0.3, 'look'],
    [0.99, 'look'],
    [1, 'look'],
    [1.01, 'caution'],
    [5, 'caution'],
  ] as const),
] as const;
const upTo = (most: number, above: number) =>
  [
    ...([
      [0, 'in-line'],
      [most - 0.001, 'in-line'],
      [most, 'in-line'],
      [most + 0.001, 'look'],
    ] as const),
    ...([
      [above - 0.001, 'look'],
      [above, 'look'],
      [above + 0.001, 'caution'],
      [1, 'caution'],
    ] as const),
  ] as const;
const recreational = upTo(0.35, 0.6);
const competitive = upTo(0.3, 0.6);
const fifthOfSessions = [
  [0, 'in-line'],
  [0.19, 'in-line'],
  [0.2, 'in-line'],
  [0.21, 'look'],
  [1, 'look'],
] as const;
const notMade = [
  [0, 'not made'],
  [0.5, 'not made'],
  [100, 'not made'],
] as const;

/** All of it. */
export const guidance: readonly Guidance[] = [
  {
    check: 'activity',
    by: 'WHO 2020 (A04): 150 to 300 moderate minutes a week; no level above: more does not harm',
    says: { A04: ['150 to 300 minutes of moderate', '75 to 150 of vigorous'], A06: ['counts as two'] },
    levels: [
      [0, 'look'],
      [149.9, 'look'],
      [150, 'in-line'],
      [150.1, 'in-line'],
      [300, 'in-line'],
      [1000, 'in-line'],
    ],
  },
  {
    check: 'strength-days',
    by: 'WHO 2020 (A05) and US guidelines 2018 (A06): 2 days a week or more',
    says: { A05: ['2 days a week or more'], A06: ['2 days or more'] },
    levels: [
      [0, 'look'],
      [1, 'look'],
      [2, 'in-line'],
      [3, 'in-line'],
      [7, 'in-line'],
    ],
  },
  { check: 'balance-days', who: '64', runner: aged(64), by: 'WHO 2020 (E19): from 65 on', levels: notMade },
  { check: 'balance-days', who: 'no age', runner: aged(null), by: 'WHO 2020 (E19): from 65 on', levels: notMade },
  {
    ...{ check: 'balance-days', who: '65', runner: aged(65) },
    by: 'WHO 2020 (E19): 65 and over, 3 days a week or more',
    says: { E19: ['65 years and over', '3 days or more a week'] },
    levels: [
      [0, 'look'],
      [2, 'look'],
      [3, 'in-line'],
      [4, 'in-line'],
    ],
  },
  {
    ...{ check: 'youth-hours', who: '17', runner: aged(17) },
    by: 'American Academy of Pediatrics (E12): not more than 16 hours a week',
    says: { E12: ['not more than 16 hours'] },
    levels: [
      [1, 'in-line'],
      [15.99, 'in-line'],
      [16, 'in-line'],
      [16.01, 'caution'],
      [20, 'caution'],
    ],
  },
  { check: 'youth-hours', who: '18', runner: aged(18), by: 'under 18 only', levels: notMade },
  { check: 'youth-hours', who: 'no age', runner: aged(null), by: 'under 18 only', levels: notMade },
  ...(['new', 'developing'] as const).map((level): Guidance => ({
    ...{ check: 'hard-minutes', who: level, runner: of(level), levels: recreational },
    by: 'our reading of recreational runners: 23, 54 and 60 % above the lowest zone gained alike (B07, B08)',
    says: { B07: ['77 %', '46 %'], B08: ['60 %', '23 %'] },
  })),
  ...(['trained', 'elite'] as const).map((level): Guidance => ({
    ...{ check: 'hard-minutes', who: level, runner: of(level), levels: competitive },
    by: 'our reading of 71/21/8 % of the minutes of sub-elite runners (B06), 80 % easy at the top (B11)',
    says: { B06: ['71, 21 and 8 %'], B11: ['80 %'] },
  })),
  ...(['new', 'developing'] as const).map((level): Guidance => ({
    ...{ check: 'hard-sessions', who: level, runner: of(level), levels: notMade },
    by: 'elite athletes only (B01)',
  })),
  ...(['trained', 'elite'] as const).map((level): Guidance => ({
    ...{ check: 'hard-sessions', who: level, runner: of(level), levels: fifthOfSessions },
    by: 'elite endurance athletes (B01): about 20 % of sessions hard',
    says: { B01: ['20 % hard', '10 to 13 sessions'] },
  })),
  ...(['taper', 'recovery'] as const).flatMap((phase): readonly Guidance[] => [
    ...[null, 64].map((age): Guidance => ({
      ...{ check: 'strength-sessions', who: `${phase}, ${String(age)}`, runner: aged(age, phase), levels: upkeep },
      by: 'one session holds strength (A25), two to three at most in trials (A11)',
      says: { A25: ['One strength session a week'], A11: ['2 to 3 sessions'] },
    })),
    {
      ...{ check: 'strength-sessions', who: `${phase}, 65`, runner: aged(65, phase), levels: strengthDose },
      by: 'two sessions hold strength from 65 on (A25)',
      says: { A25: ['two from 65 years on'] },
    },
  ]),
  ...(['off-season', 'base', 'build', 'peak'] as const).flatMap((phase) =>
    [null, 17, 65].map((age): Guidance => ({
      ...{ check: 'strength-sessions', who: `${phase}, ${String(age)}`, runner: aged(age, phase) },
      by: 'trials in runners (A11, A12): 2 to 3 sessions a week',
      says: { A11: ['2 to 3 sessions a week'], A12: ['2 to 3 sessions a week'] },
      levels: strengthDose,
    })),
  ),
  {
    ...{ check: 'strength-cap', who: '6 hours', more: { weekly_hours: 6, strength_cap: 90 } },
    by: 'common practice: above six hours only',
    levels: notMade,
  },
  {
    ...{ check: 'strength-cap', who: '6 hours but for rounding', more: { weekly_hours: 6 + 1e-14, strength_cap: 90 } },
    by: 'common practice: above six hours only',
    levels: notMade,
  },
  ...[90, 105, 120].map((cap): Guidance => ({
    ...{ check: 'strength-cap', who: `6.01 hours, ${cap}`, more: { weekly_hours: 6.01, strength_cap: cap } },
    by: 'common practice: 90 to 120 minutes above six hours',
    levels: [
      [0, 'in-line'],
      [cap - 0.01, 'in-line'],
      [cap, 'in-line'],
      [cap + 0.01, 'look'],
    ],
  })),
  ...['load', 'monotony', 'strain'].map((check): Guidance => ({
    ...{ check, levels: noise },
    by: 'assumption: test and retest vary by 28 % (D06, of session effort times minutes)',
    says: { D06: ['28 %'] },
  })),
  ...['hours-rise', 'season-rise'].map((check): Guidance => ({
    ...{ check, levels: aFifth },
    by: 'our reading of weekly rises of 20 to 60 % of distance (C04)',
    says: { C04: ['20 to 60 %'] },
  })),
  ...['longest-run', 'season-longest-run'].map((check): Guidance => ({
    ...{ check, levels: longest },
    by: 'a single run of over 110 % of the longest of 30 days (C05), highest hazard over 200 %',
    says: { C05: ['110 %', '1.64 for 10 to 30 % more, 1.52 for 30 to 100 %, 2.28 above'] },
  })),
  {
    ...{ check: 'rest-days', who: '17', runner: aged(17) },
    by: 'American Academy of Pediatrics (E12): 1 to 2 days off a week',
    says: { E12: ['1 to 2 days off'] },
    levels: [
      [0, 'caution'],
      [1, 'in-line'],
      [2, 'in-line'],
      [7, 'in-line'],
    ],
  },
  ...[18, null].map((age): Guidance => ({
    ...{ check: 'rest-days', who: String(age), runner: aged(age), by: 'common practice: a day a week' },
    levels: [
      [0, 'look'],
      [1, 'in-line'],
      [2, 'in-line'],
      [7, 'in-line'],
    ],
  })),
  {
    check: 'hard-gap',
    by: 'common practice: a day between two hard runs; an endurance session strains for about 24 hours (A22)',
    says: { A22: ['about 24 hours'] },
    levels: [
      [0, 'look'],
      [1, 'look'],
      [2, 'in-line'],
      [3, 'in-line'],
      [7, 'in-line'],
    ],
  },
  {
    check: 'strength-gap',
    by: 'assumption: several days after lifting (A22), 24 hours best of those tried (A23), 48 hours as a margin',
    says: { A22: ['several days'], A23: ['24 hours was best'] },
    levels: [
      [0, 'look'],
      [1, 'look'],
      [2, 'in-line'],
      [3, 'in-line'],
      [7, 'in-line'],
    ],
  },
];
