import type { ByCategory, CategoryId, EventId, LevelId, PhaseId } from '../../src/training/method/ids.js';
import { apportionByQuotients } from './apportionment-reference.js';
import { sessionLimits } from './session-limits.js';
import type { SessionLimits } from './session-limits.js';

/**
 * The division of a week, worked out a second time: whole-number arithmetic, no formulas, no method document.
 *
 * The week is given as a whole number of grains (a grain is a minute or a whole fraction of one), and a share is a whole
 * percentage, so that every amount is a whole number of parts: hundredths of a grain. Nothing is ever rounded but the
 * minutes that are meant to be.
 */
export interface WeekQuestion {
  readonly grains: number;
  readonly grainsPerMinute: number;
  readonly phase: PhaseId;
  readonly level: LevelId;
  readonly event: EventId;
  /** Minutes; a whole number of grains. */
  readonly strengthCap: number;
  /** Minutes that keep strength up in the late phases of a season; undefined where there is no such limit. */
  readonly strengthUpkeep?: number;
}

export type SplitName = 'in_season' | 'off_season' | 'taper' | 'recovery';

/** The answer, amounts in parts and rounded amounts in minutes. */
export interface WeekAnswer {
  readonly split: SplitName;
  readonly partsPerMinute: number;
  readonly parts: ByCategory<number>;
  /** Minutes, multiples of 5. */
  readonly rounded: ByCategory<number>;
  readonly totalRounded: number;
  /** What the changing rules did, in order. */
  readonly moves: readonly Move[];
  /** Ids of the rules that had something to say, in order. */
  readonly notices: readonly string[];
  /** Categories folded away, each offered as a session every second week. */
  readonly everySecondWeek: readonly CategoryId[];
}

/** What one rule did: the amount of `on` before and after, in parts; `to` has the difference. */
export interface Move {
  readonly rule: string;
  readonly on: CategoryId;
  readonly to: CategoryId;
  readonly before: number;
  readonly after: number;
}

/** What of a method the reference can take from outside; its rules are always those of the default method. */
export interface ReferenceMethod {
  /** Percentages in the order slow, tempo, intervals, cross, strength, adding to 100. */
  readonly percentages: Readonly<Record<SplitName, readonly [number, number, number, number, number]>>;
  readonly limits: ByCategory<SessionLimits>;
}

/** Status: in season and off season common practice, the others assumption. */
export const defaultMethod: ReferenceMethod = {
  percentages: {
    in_season: [30, 15, 10, 15, 30],
    off_season: [25, 15, 0, 20, 40],
    taper: [45, 15, 15, 10, 15],
    recovery: [40, 0, 0, 35, 25],
  },
  limits: sessionLimits,
};

interface Working {
  readonly parts: Record<CategoryId, number>;
  readonly moves: Move[];
  readonly everySecondWeek: CategoryId[];
}

/** The week of one athlete. */
export function referenceWeek(question: WeekQuestion, method = defaultMethod): WeekAnswer {
  const split = splitOf(question);
  const partsPerMinute = 100 * question.grainsPerMinute;
  const parts = divide(question.grains, method.percentages[split]);
  const shortest = (category: CategoryId) => method.limits[category].shortest * partsPerMinute;
  const working: Working = { parts, moves: [], everySecondWeek: [] };
  capStrength(question, working);
  keepStrengthUp(question, working);
  foldAway(working, 'intervals', ['tempo', shortest('intervals')]);
  foldAway(working, 'tempo', ['slow', shortest('tempo')]);
  foldAway(working, 'cross', ['slow', shortest('cross')]);
  raiseStrength(working, shortest('strength'));
  const notices = noticesOf(question, parts.slow, shortest('slow'));
  return { split, partsPerMinute, ...working, ...roundToFives(parts, question), notices };
}

function splitOf({ phase, level }: WeekQuestion): SplitName {
  if (level === 'new' || phase === 'off-season') return 'off_season';
  return phase === 'taper' || phase === 'recovery' ? phase : 'in_season';
}

function divide(
  grains: number,
  [slow, tempo, intervals, cross, strength]: ReferenceMethod['percentages'][SplitName],
): Record<CategoryId, number> {
  return {
    slow: grains * slow,
    tempo: grains * tempo,
    intervals: grains * intervals,
    cross: grains * cross,
    strength: grains * strength,
  };
}

function capStrength({ grains, grainsPerMinute, strengthCap }: WeekQuestion, working: Working): void {
  const cap = Math.round(strengthCap * grainsPerMinute) * 100;
  const isAboveSixHours = grains > 6 * 60 * grainsPerMinute;
  if (!isAboveSixHours || working.parts.strength <= cap) return;
  move(working, 'strength-cap', { on: 'strength', to: 'slow', after: cap });
}

/** Strength is held by one or two sessions a week (Spiering et al. 2021, A25): what is above them is run slowly. */
function keepStrengthUp({ grainsPerMinute, strengthUpkeep }: WeekQuestion, working: Working): void {
  if (strengthUpkeep === undefined) return;
  const most = Math.round(strengthUpkeep * grainsPerMinute) * 100;
  if (working.parts.strength > most) move(working, 'strength-upkeep', { on: 'strength', to: 'slow', after: most });
}

type Foldable = 'intervals' | 'tempo' | 'cross';

function foldAway(working: Working, on: Foldable, [to, shortest]: readonly ['tempo' | 'slow', number]): void {
  const amount = working.parts[on];
  if (amount === 0 || amount >= shortest) return;
  move(working, `${on}-too-small`, { on, to, after: 0 });
  working.everySecondWeek.push(on);
}

function raiseStrength(working: Working, shortest: number): void {
  const { strength, slow } = working.parts;
  if (strength === 0 || strength >= shortest || slow === 0) return;
  move(working, 'strength-too-small', { on: 'strength', to: 'slow', after: Math.min(shortest, strength + slow) });
}

function move({ parts, moves }: Working, rule: string, { on, to, after }: Omit<Move, 'rule' | 'before'>): void {
  const before = parts[on];
  parts[on] = after;
  parts[to] += before - after;
  moves.push({ rule, on, to, before, after });
}

/** The week's total to the nearest 5 minutes, halves up; then each category's share of those units. */
function roundToFives(parts: ByCategory<number>, { grains, grainsPerMinute }: WeekQuestion) {
  const units = Math.floor((2 * grains + 5 * grainsPerMinute) / (10 * grainsPerMinute));
  const [slow = 0, tempo = 0, intervals = 0, cross = 0, strength = 0] = awardUnits(parts, units);
  const rounded = {
    slow: 5 * slow,
    tempo: 5 * tempo,
    intervals: 5 * intervals,
    cross: 5 * cross,
    strength: 5 * strength,
  };
  return { rounded, totalRounded: 5 * units };
}

/** Awards are remembered: whole enumerations ask for the same ones over and over. */
const knownAwards = new Map<string, readonly number[]>();

function awardUnits({ slow, tempo, intervals, cross, strength }: ByCategory<number>, units: number): readonly number[] {
  const weights = [slow, tempo, intervals, cross, strength];
  const key = `${weights.join(' ')} ${String(units)}`;
  const award = knownAwards.get(key) ?? apportionByQuotients(weights, units, tieOrder);
  knownAwards.set(key, award);
  return award;
}

/** Strength, slow, tempo, intervals, cross. */
const tieOrder = [4, 0, 1, 2, 3];

function noticesOf(question: WeekQuestion, slow: number, shortest: number): string[] {
  const hour = 60 * question.grainsPerMinute;
  const says: readonly (readonly [string, boolean])[] = [
    ['few-hours', question.grains < 3 * hour],
    ['many-hours', question.grains > 6 * hour],
    ['no-event', question.event === 'none'],
    ['short-event', question.event === '5k'],
    ['long-event', question.event === 'longer'],
    ['slow-too-small', slow > 0 && slow < shortest],
  ];
  return says.filter(([, holds]) => holds).map(([id]) => id);
}
