import type { PlanInputs } from '../../src/plan/document.js';
import type { SeasonChange, SeasonNotice } from '../../src/plan/season/document.js';
import { byCategory, type ByCategory, type CategoryId } from '../../src/training/method/ids.js';
import { bestSessions, sessionOptions, type SessionNeed } from '../../src/training/sessions/options.js';
import { limits, rounding } from './hand-written-plan.js';
import { handWrittenHours, phaseOf, type SeasonOptions, type SeasonPhase } from './hand-written-season-hours.js';
import * as hand from './hand-written.js';

// A season of the built-in method without an engine, by the same session options as ours.

export interface HandWrittenWeek {
  readonly hours: number;
  readonly minutes: Readonly<hand.Amounts>;
  readonly rounded: Readonly<hand.Amounts>;
  readonly sessions: ByCategory<readonly number[]>;
  readonly load: number;
  readonly longestRun: number;
  readonly notices: readonly SeasonNotice[];
}

export interface HandWrittenSeason {
  readonly weeks: readonly HandWrittenWeek[];
  readonly notices: readonly SeasonNotice[];
}

export interface SeasonQuestion extends SeasonOptions {
  readonly inputs: Omit<PlanInputs, 'hours' | 'phase'>;
  readonly upkeepFrom: 'taper' | 'peak';
  readonly upkeepSessions: number;
  /** The Mondays of its weeks. */
  readonly mondays: readonly string[];
}

const runs = ['slow', 'tempo', 'intervals'] as const;
const effort = { slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 };
const nothing: hand.Amounts = { slow: 0, tempo: 0, intervals: 0, cross: 0, strength: 0 };
const weekOff: HandWrittenWeek = {
  ...{ hours: 0, minutes: nothing, rounded: nothing, sessions: byCategory(() => []) },
  ...{ load: 0, longestRun: 0, notices: [] },
};

export function handWrittenSeason(question: SeasonQuestion): HandWrittenSeason {
  const weeks: HandWrittenWeek[] = [];
  for (const [index, total] of handWrittenHours(question).entries()) {
    let before = 0;
    for (let back = Math.max(0, index - 4); back < index; back += 1) before = Math.max(before, weeks[back]!.longestRun);
    const asked = { question, phase: phaseOf(index), before, start: question.mondays[index] ?? '' };
    weeks.push(total === 0 ? weekOff : withNotices(total, asked));
  }
  // The week after the holiday is a way back.
  return { weeks, notices: [{ code: 'after-break', level: 'caution', values: { weeks: 1 }, waysOut: [] }] };
}

interface Asked {
  readonly question: SeasonQuestion;
  readonly phase: SeasonPhase;
  readonly before: number;
  readonly start: string;
}

interface Divided {
  readonly week: HandWrittenWeek;
  readonly shortened: readonly CategoryId[];
  readonly needs: ByCategory<SessionNeed>;
}

const limitAfter = (before: number): number => Math.round(before * 1.1 * 1e9) / 1e9;

function withNotices(total: number, asked: Asked): HandWrittenWeek {
  const { before, start } = asked;
  const { week, shortened, needs } = divide(total, asked);
  const cut = shortened.map((category): SeasonNotice => {
    const values = { before, runs: week.sessions[category].length };
    return { code: 'shorter-runs', level: 'note', category, values, waysOut: [] };
  });
  const limit = limitAfter(before);
  const run = week.longestRun;
  if (before === 0 || run <= limit) return { ...week, notices: [...cut, ...week.notices] };
  const waysOut: SeasonChange[] = [];
  const change = { amount: 0, phase: null, start, category: null, sessions: null };
  const [category, ...others] = runs.filter((id) => week.sessions[id].some((minutes) => minutes > limit));
  const sessions = category && others.length === 0 ? within(needs[category], limit) : null;
  if (category && sessions) waysOut.push({ ...change, kind: 'week-sessions', category, sessions });
  for (let fewer = Math.ceil(total / 5 - 1) * 5; fewer >= 30; fewer -= 5) {
    if (divide(fewer, asked).week.longestRun > limit) continue;
    waysOut.push({ ...change, kind: 'week-hours', amount: fewer / 60 });
    break;
  }
  const longer: SeasonNotice = {
    ...{ code: 'longer-run', level: run > Math.max(limit, before + 5) ? 'caution' : 'note', waysOut },
    values: { run, before, limit, share: run / before, most: 0.1 },
  };
  return { ...week, notices: [...cut, longer, ...week.notices] };
}

function divide(total: number, { question, phase, before }: Asked): Divided {
  const inputs: PlanInputs = { ...question.inputs, hours: total / 60, phase };
  const minutes = hand.minutesOf(total, hand.sharesOf(hand.splitOf(inputs)));
  const notices = applyRules(minutes, inputs, question);
  const rounded = hand.roundWeek(minutes);
  const needs = byCategory((id): SessionNeed => ({
    exact: minutes[id],
    rounded: rounded[id],
    limits: limits[id],
    rounding,
  }));
  const usual = byCategory((id) => bestSessions(needs[id]));
  const most = before > 0 ? Math.max(limitAfter(before), before + 5) : Infinity;
  const shortened: CategoryId[] = [];
  const sessions = byCategory((id) => {
    if (id === 'cross' || id === 'strength' || usual[id].every((run) => run <= most)) return usual[id];
    const shorter = within(needs[id], most);
    if (shorter) shortened.push(id);
    return shorter ?? usual[id];
  });
  const longestRun = Math.max(0, ...sessions.slow, ...sessions.tempo, ...sessions.intervals);
  let load = 0;
  for (const id of ['slow', 'tempo', 'intervals', 'cross', 'strength'] as const) load += rounded[id] * effort[id];
  return { week: { hours: inputs.hours, minutes, rounded, sessions, load, longestRun, notices }, shortened, needs };
}

/** The best way to cut a category into runs that are not too long, as many as usual if that can be. */
function within(need: SessionNeed, most: number): readonly number[] | null {
  const options = sessionOptions(need);
  const fitting = options.filter((option) => option.every((run) => run <= most));
  return fitting.find((option) => option.length === options[0]?.length) ?? fitting[0] ?? null;
}

function applyRules(minutes: hand.Amounts, inputs: PlanInputs, question: SeasonQuestion): SeasonNotice[] {
  const isKept = inputs.phase === 'taper' || (inputs.phase === 'peak' && question.upkeepFrom === 'peak');
  hand.capStrength(minutes, inputs);
  hand.keepStrengthUp(minutes, isKept ? question.upkeepSessions * limits.strength.typical : 0);
  const folded: SeasonNotice[] = [];
  const fold = (from: 'intervals' | 'tempo' | 'cross', to: CategoryId): void => {
    const moved = minutes[from];
    hand.foldAway(minutes, from, to);
    if (minutes[from] === moved) return;
    const session = Math.max(limits[from].shortest, Math.round((2 * moved) / 5) * 5);
    const said = { level: 'note', rule: `${from}-too-small`, category: from, waysOut: [] } as const;
    folded.push({ code: 'every-second-week', ...said, values: { moved, session } });
  };
  fold('intervals', 'tempo');
  fold('tempo', 'slow');
  fold('cross', 'slow');
  hand.raiseStrength(minutes);
  const due = hand.noticesDue(inputs, minutes.slow);
  const says = (rule: hand.NoticeId): SeasonNotice[] =>
    due[rule] ? [{ code: 'rule', level: 'note', rule, values: {}, waysOut: [] }] : [];
  return [
    ...[...says('few-hours'), ...says('many-hours'), ...says('no-event'), ...says('short-event')],
    ...[...says('long-event'), ...folded, ...says('slow-too-small')],
  ];
}
