import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlanInputs } from '../../../src/plan/document.js';
import type { PlanSeason, SeasonWeek } from '../../../src/plan/season/document.js';
import type { SeasonRequest, SeasonWishes } from '../../../src/plan/season/wishes.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { byCategory, categoryIds, type ByCategory, type PhaseId } from '../../../src/training/method/ids.js';
import { athletesOnSteps } from '../athletes.js';
import { optionsByEvenLists } from '../even-session-reference.js';
import { patience, runs } from '../runs.js';
import { sessionLimits } from '../session-limits.js';
import { referenceWeek, type WeekAnswer } from '../week-reference.js';
import { anySeasons } from './random-seasons.js';
import { planWithSeason, seasonOf } from './season-door.js';

/*
 * Every week of a season, worked out a second time from its hours: divided by the reference, cut into sessions by the
 * other way to do that, and its runs held against those of four weeks before.
 */

const quarter = (hours: number): number => Math.round(hours * 4) / 4;
/** Hours in quarters, so that the reference has whole numbers; no durations picked. */
const onSteps = ({ hours, mostHours, byHand, ...others }: SeasonRequest): SeasonRequest => ({
  ...others,
  ...(hours === undefined ? {} : { hours: quarter(hours) }),
  ...(mostHours === undefined ? {} : { mostHours: quarter(mostHours) }),
  ...(byHand ? { byHand: byHand.map((week) => ({ ...week, sessions: {} })) } : {}),
});
const asked = fc.record({ inputs: athletesOnSteps, season: anySeasons(builtInMethod).map(onSteps) });

/** Phases in which strength is only kept up; a session of strength has 35 minutes, an assumption. */
const keptUp: Readonly<Record<SeasonWishes['upkeepFrom'], readonly PhaseId[]>> = {
  never: [],
  taper: ['taper'],
  peak: ['peak', 'taper'],
};
/** How hard a usual session feels, 0 to 10: an assumption. */
const effort: ByCategory<number> = { slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 };
const runKinds = ['slow', 'tempo', 'intervals'] as const;

function answerOf({ hours, phase }: SeasonWeek, inputs: PlanInputs, wishes: SeasonWishes): WeekAnswer {
  const kept = keptUp[wishes.upkeepFrom].includes(phase) ? { strengthUpkeep: 35 * wishes.upkeepSessions } : {};
  return referenceWeek({ ...inputs, ...kept, phase, grains: Math.round(hours * 60), grainsPerMinute: 1 });
}

/** The best way to cut the minutes; of runs the best in which none is too long, as many as usual if that can be. */
function sessionsOf({ parts, partsPerMinute, rounded }: WeekAnswer, limit: number): ByCategory<readonly number[]> {
  return byCategory((id) => {
    const question = { parts: parts[id], partsPerMinute, rounded: rounded[id], ...sessionLimits[id] };
    const [usual = [], ...others] = optionsByEvenLists(question);
    if (!runKinds.some((kind) => kind === id) || usual.every((minutes) => minutes <= limit)) return usual;
    const short = others.filter((option) => option.every((minutes) => minutes <= limit));
    return short.find(({ length }) => length === usual.length) ?? short[0] ?? usual;
  });
}

/** The most that a run may have after the longest of four weeks; tenths of minutes are whole numbers. */
const tenthsAllowed = (before: number): number => before * 11;

function checkWeeks({ weeks, wishes }: PlanSeason, inputs: PlanInputs): void {
  const longest: number[] = [];
  for (const week of weeks) {
    const known = longest.length < 4 ? (wishes.longestRun ?? 0) : 0;
    const before = Math.max(0, known, ...longest.slice(-4));
    // A run may be longer by a step at least, or short ones would never grow.
    const limit = before === 0 ? Infinity : Math.max(tenthsAllowed(before) / 10, before + 5);
    longest.push(week.longestRun);
    if (week.hours === 0) {
      expect([week.rounded, week.load]).toEqual([byCategory(() => 0), 0]);
      continue;
    }
    const answer = answerOf(week, inputs, wishes);
    const sessions = sessionsOf(answer, limit);
    const run = Math.max(0, ...runKinds.flatMap((id) => sessions[id]));
    const load = categoryIds.reduce((sum, id) => sum + effort[id] * answer.rounded[id], 0);
    const isLonger = before > 0 && run * 10 > tenthsAllowed(before);
    const told = (code: string) => week.notices.filter((notice) => notice.code === code);
    expect({
      ...{ start: week.start, rounded: week.rounded, sessions: week.sessions, load: week.load, run: week.longestRun },
      rules: told('rule').map(({ rule }) => rule),
      folded: told('every-second-week').map(({ category }) => category),
      longer: told('longer-run').map(({ level }) => level),
    }).toEqual({
      ...{ start: week.start, rounded: answer.rounded, sessions, load, run },
      rules: answer.notices,
      folded: answer.everySecondWeek,
      longer: isLonger ? [run > limit ? 'caution' : 'note'] : [],
    });
    for (const id of categoryIds) expect(week.minutes[id]).toBeCloseTo(answer.parts[id] / answer.partsPerMinute, 9);
  }
}

describe('every week of a season', { timeout: patience }, () => {
  it('is divided, cut and told as the reference does it', () => {
    fc.assert(
      fc.property(asked, ({ inputs, season }) => {
        checkWeeks(seasonOf(season, inputs), inputs);
      }),
      runs(80, 5000),
    );
  });
});

/*
 * One strength session a week holds strength, two from 65 years on (Spiering et al. 2021, A25); a typical one has 35
 * minutes, an assumption. What is above goes to slow running.
 */
describe('strength that is only kept up', () => {
  it.each([
    // 30 % of the week; under and over 35 and 70 minutes, which whole minutes do not hit.
    { minutes: 105, level: 'trained', sessions: 1, strength: 31.5, acted: false },
    { minutes: 120, level: 'trained', sessions: 1, strength: 35, acted: true }, // 36
    { minutes: 225, level: 'trained', sessions: 2, strength: 67.5, acted: false },
    { minutes: 240, level: 'trained', sessions: 2, strength: 70, acted: true }, // 72
    { minutes: 345, level: 'trained', sessions: 3, strength: 103.5, acted: false },
    { minutes: 420, level: 'trained', sessions: 3, strength: 105, acted: true }, // 126, capped at 120 before
    // 40 % of the week of a new runner; just under, at and just over 70 and 105 minutes.
    { minutes: 174, level: 'new', sessions: 2, strength: 69.6, acted: false },
    { minutes: 175, level: 'new', sessions: 2, strength: 70, acted: false },
    { minutes: 176, level: 'new', sessions: 2, strength: 70, acted: true }, // 70.4
    { minutes: 262.5, level: 'new', sessions: 3, strength: 105, acted: false },
    { minutes: 262, level: 'new', sessions: 3, strength: 104.8, acted: false },
    { minutes: 263, level: 'new', sessions: 3, strength: 105, acted: true }, // 105.2
  ] as const)('has $strength of $minutes minutes with $sessions sessions, for a runner who is $level', (row) => {
    const { minutes, level, sessions, strength, acted } = row;
    const inputs = { hours: minutes / 60, phase: 'peak', level, event: '10k', strengthCap: 120 } as const;
    const season: SeasonRequest = {
      ...{ date: '2027-04-11', weeks: 1, taperWeeks: 0, recoveryWeeks: 0 },
      ...{ phases: [{ phase: 'peak', weeks: 1 }], upkeepFrom: 'peak', upkeepSessions: sessions },
    };
    const plan = planWithSeason({ ...inputs, season });
    const kept = { ...inputs, grains: minutes * 2, grainsPerMinute: 2, strengthUpkeep: 35 * sessions };
    const { parts, partsPerMinute, moves } = referenceWeek(kept);
    expect(parts.strength / partsPerMinute).toBeCloseTo(strength, 9);
    expect(moves.some(({ rule }) => rule === 'strength-upkeep')).toBe(acted);
    expect(plan.rules.find(({ id }) => id === 'strength-upkeep')?.acted).toBe(acted);
    const [week] = plan.season.weeks;
    for (const of of [plan.minutes, week?.minutes]) {
      expect(of?.strength).toBeCloseTo(strength, 9);
      expect(of?.slow).toBeCloseTo(parts.slow / partsPerMinute, 9);
    }
  });
});
