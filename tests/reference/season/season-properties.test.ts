import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { validator } from '../../core/schema/published.js';
import type { PlanInputs } from '../../../src/plan/document.js';
import type { PlanSeason, SeasonWeek } from '../../../src/plan/season/document.js';
import type { SeasonRequest } from '../../../src/plan/season/wishes.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { categoryIds } from '../../../src/training/method/ids.js';
import { anyAthletes } from '../athletes.js';
import { patience, runs } from '../runs.js';
import { civilDay, civilWeekDate } from './civil-days.js';
import { taperShare } from './hours-reference.js';
import { anySeasons } from './random-seasons.js';
import { planWithSeason, seasonOf } from './season-door.js';

const { least } = builtInMethod.inputs.weekly_hours;
const isPlan = validator('plan');
const step = 5 / 60;
/** The least hours of a week with training stand above whatever else it should have. */
const isLeast = ({ hours }: SeasonWeek): boolean => Math.abs(hours - least) < 1e-9;
const isLight = ({ phase }: SeasonWeek): boolean => phase === 'taper' || phase === 'recovery';
const hairsBreadth = 1e-9;

interface Asked {
  readonly inputs: PlanInputs;
  readonly season: SeasonRequest;
}

/** Requests with a season; its hours may be above its most, with which it begins then. */
const asked: fc.Arbitrary<Asked> = fc.record({ inputs: anyAthletes, season: anySeasons(builtInMethod) });

/** Seasons in which nobody has a hand and nobody comes back from a break. */
const undisturbed = asked.map(({ inputs, season }) => ({
  inputs,
  season: { ...season, byHand: [], weeksOff: 0 },
}));

function every(requests: fc.Arbitrary<Asked>, holds: (season: PlanSeason, asked: Asked) => void): void {
  fc.assert(
    fc.property(requests, (request) => {
      holds(seasonOf(request.season, request.inputs), request);
    }),
    runs(150, 20_000),
  );
}

describe('the hours of any season', { timeout: patience }, () => {
  test('are never above the ceiling of the rise, nor above the most, unless a person says so', () => {
    every(asked, ({ weeks, wishes }) => {
      for (const week of weeks) {
        if (week.why.reason === 'by-hand' || isLeast(week)) continue;
        expect(week.hours).toBeLessThanOrEqual(week.why.ceiling + hairsBreadth);
        expect(week.hours).toBeLessThanOrEqual(wishes.mostHours + hairsBreadth);
        expect(week.why.ceiling).toBeCloseTo(week.why.base * (1 + wishes.rise), 9);
      }
    });
  });

  test('start from the highest of the four weeks before, or before the taper and the rest', () => {
    every(undisturbed, ({ weeks, wishes }) => {
      const hours = [Math.min(wishes.hours, wishes.mostHours), ...weeks.map((week) => week.hours)];
      weeks.forEach((week, index) => {
        let from = index;
        while (isLight(week) && from > 0 && isLight(weeks[from - 1] ?? week)) from -= 1;
        expect(week.why.base).toBeCloseTo(Math.max(...hours.slice(Math.max(0, from - 3), from + 1)), 9);
      });
    });
  });

  test('follow from what the week says they follow from', () => {
    every(asked, ({ weeks, wishes }) => {
      for (const week of weeks) {
        const { reason, base, share, risesLeft } = week.why;
        const part = base * (share ?? NaN);
        const [nearest, down] = [
          Math.min(Math.max(base, least), Math.max(least, Math.floor(part / step + 0.5 + hairsBreadth) * step)),
          Math.max(least, Math.floor(part / step + hairsBreadth) * step),
        ];
        if (reason === 'by-hand') {
          const hand = wishes.byHand.find(({ start }) => start === week.start);
          expect([week.hours, share]).toEqual([hand?.hours, null]);
        } else if (reason === 'rise') {
          expect(risesLeft).toBeGreaterThan(0);
          // Up to the next whole step, unless that is above the ceiling or the most.
          const risen = Math.ceil((base + part) / step - hairsBreadth) * step;
          const most = Math.min(week.why.ceiling, wishes.mostHours);
          const below = Math.max(least, Math.floor(most / step + hairsBreadth) * step);
          expect(week.hours).toBeCloseTo(Math.max(base, Math.min(risen, below)), 9);
        } else if (reason === 'way-back') expect(week.hours).toBeCloseTo(down, 9);
        else if (share !== null) expect(week.hours).toBeCloseTo(nearest, 9);
        else expect(week.hours).toBeCloseTo(base, 9);
        if (reason !== 'rise') expect(risesLeft).toBe(0);
      }
    });
  });

  test('lose just what the taper is to lose', () => {
    let tapers = 0;
    every(undisturbed, ({ weeks, wishes }) => {
      const taper = weeks.filter(({ phase }) => phase === 'taper');
      if (taper.length < wishes.taperWeeks || taper.length === 0 || taper.some(isLeast)) return;
      tapers += 1;
      const base = taper[0]?.why.base ?? NaN;
      const sum = taper.reduce((total, week) => total + week.hours, 0);
      const kept = base * taper.length * (1 - wishes.taperDrop);
      expect(Math.abs(sum - kept)).toBeLessThanOrEqual((taper.length * step) / 2 + hairsBreadth);
      taper.forEach((week, index) => {
        const share = taperShare({ weeks: taper.length, drop: wishes.taperDrop }, taper.length - 1 - index);
        expect(Math.abs(week.hours - base * share)).toBeLessThanOrEqual(step / 2 + hairsBreadth);
      });
    });
    expect(tapers).toBeGreaterThan(20);
  });

  test('are easier just where that is asked for, by the part asked for', () => {
    every(undisturbed, ({ weeks, wishes: { easierEvery, easierDrop } }) => {
      for (const week of weeks) {
        expect(week.isEasier).toBe(easierEvery > 0 && week.number % easierEvery === 0 && !isLight(week));
        const hasOther = !isLight(week) && week.events.some(({ isMain }) => !isMain);
        expect(week.why.reason === 'easier').toBe(week.isEasier && !hasOther);
        expect(week.why.reason === 'other-event').toBe(hasOther);
        if (!(week.isEasier || hasOther) || isLeast(week)) continue;
        expect(week.hours).toBeLessThanOrEqual(week.why.base * (1 - easierDrop) + step / 2 + hairsBreadth);
      }
    });
  });
});

describe('the weeks of any season', { timeout: patience }, () => {
  test('follow one another from Monday to Monday, and have their ISO names', () => {
    every(asked, ({ weeks, wishes }) => {
      expect(weeks.map(({ number }) => number)).toEqual(weeks.map((_, index) => index + 1));
      const days = weeks.map(({ start }) => civilDay(start));
      days.forEach((day, index) => expect(day - (days[0] ?? NaN)).toBe(7 * index));
      for (const { start, week } of weeks) expect(`${week}-1`).toBe(civilWeekDate(civilDay(start)));
      const first = days[0] ?? NaN;
      expect(civilDay(wishes.start) - first).toBeGreaterThanOrEqual(0);
      expect(civilDay(wishes.start) - first).toBeLessThan(7);
      const [last] = weeks.filter(({ weeksToGo }) => weeksToGo === 0);
      expect(civilDay(wishes.date) - civilDay(last?.start ?? '')).toBeGreaterThanOrEqual(0);
      expect(civilDay(wishes.date) - civilDay(last?.start ?? '')).toBeLessThan(7);
    });
  });

  test('are in the phases asked for, which add up, and have every event that is not outside', () => {
    every(asked, ({ weeks, phases, wishes, notices }, { inputs }) => {
      const toMain = weeks.filter(({ weeksToGo }) => weeksToGo >= 0);
      const taper = Math.min(wishes.taperWeeks, toMain.length);
      expect(phases.reduce((sum, each) => sum + each.weeks, 0) + taper).toBe(toMain.length);
      expect(phases.map(({ phase }) => phase)).toEqual(wishes.phases.map(({ phase }) => phase));
      const expected = phases.flatMap(({ phase, weeks: count }) => Array.from({ length: count }, () => phase));
      expect(toMain.map(({ phase }) => phase)).toEqual([...expected, ...Array.from({ length: taper }, () => 'taper')]);
      const after = weeks.slice(toMain.length).map(({ phase }) => phase);
      expect(after.slice(0, wishes.recoveryWeeks)).toEqual(after.slice(0, wishes.recoveryWeeks).map(() => 'recovery'));
      expect(after.slice(wishes.recoveryWeeks).filter((phase) => phase !== 'base')).toEqual([]);
      const shown = weeks.flatMap(({ events }) => events);
      const outside = notices.find(({ code }) => code === 'event-outside')?.values['count'] ?? 0;
      expect(shown.filter(({ isMain }) => isMain)).toEqual([{ date: wishes.date, event: inputs.event, isMain: true }]);
      expect(shown).toHaveLength(1 + wishes.events.length - outside);
    });
  });

  test('have minutes that add up to their hours, and sessions to their minutes', () => {
    every(asked, ({ weeks }) => {
      for (const { hours, minutes, rounded, sessions, longestRun, start } of weeks) {
        const sum = categoryIds.reduce((total, id) => total + minutes[id], 0);
        const fives = categoryIds.reduce((total, id) => total + rounded[id], 0);
        expect([start, sum]).toEqual([start, expect.closeTo(hours * 60, 6) as unknown]);
        expect([start, Math.abs(fives - hours * 60)]).toEqual([
          start,
          expect.toSatisfy((off: number) => off <= 2.5 + 1e-6) as unknown,
        ]);
        const runsOf = [...sessions.slow, ...sessions.tempo, ...sessions.intervals];
        expect(longestRun).toBe(Math.max(0, ...runsOf));
        // Effort 0 to 10: slow running and cross-training 3, tempo running 6, intervals 8, strength 5. Assumption.
      }
    });
  });
});

describe('a plan with a season', { timeout: patience }, () => {
  test('is as its schema says, and the same after a way through JSON', () => {
    fc.assert(
      fc.property(asked, ({ inputs, season }) => {
        const plan = planWithSeason({ ...inputs, season });
        isPlan(plan);
        expect(isPlan.errors).toBeNull();
        const { derivations: _, ...rest } = plan;
        expect(JSON.parse(JSON.stringify(rest))).toStrictEqual(rest);
      }),
      runs(100, 5000),
    );
  });

  test('is the same for a request that went through JSON, and for its own wishes asked for again', () => {
    fc.assert(
      fc.property(asked, ({ inputs, season }) => {
        const plan = seasonOf(season, inputs);
        expect(seasonOf(JSON.parse(JSON.stringify(season)) as SeasonRequest, inputs)).toStrictEqual(plan);
        expect(seasonOf(plan.wishes, inputs)).toStrictEqual(plan);
      }),
      runs(80, 5000),
    );
  });

  test('has in each week what the plan of that week alone has', () => {
    fc.assert(
      fc.property(asked, fc.nat(), ({ inputs, season }, at) => {
        const { weeks, wishes } = seasonOf(season, inputs);
        const week = weeks[at % weeks.length];
        if (!week || week.hours < least || week.hours > 20) return;
        const alone = planWithSeason({ ...inputs, hours: week.hours, phase: week.phase, season: wishes });
        expect(alone.minutes).toEqual(week.minutes);
        expect(alone.rounded).toEqual(week.rounded);
        const isPicked = wishes.byHand.some(({ start }) => start === week.start);
        if (isPicked || week.notices.some(({ code }) => code === 'shorter-runs')) return;
        expect(alone.sessions).toEqual(week.sessions);
        expect(week.notices.filter(({ code }) => code === 'rule').map(({ rule }) => rule)).toEqual(
          alone.notices.filter(({ code }) => code === 'rule').map(({ rule }) => rule),
        );
      }),
      runs(150, 20_000),
    );
  });
});
