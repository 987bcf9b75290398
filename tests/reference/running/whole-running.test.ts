import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '../../../src/plan/document.js';
import type { ConcreteSession, RunningGuide } from '../../../src/plan/running/document.js';
import type { CategoryId } from '../../../src/training/method/ids.js';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../../src/training/method/ids.js';
import type { Span } from '../../../src/training/running/span.js';
import { patience, runs } from '../runs.js';
import { uptakeByPrint, speedByNewton } from './race-reference.js';
import { runningRequests } from './random-runners.js';
import { planWithRunning } from './running-door.js';

const usual = runs(150, 15_000);
const requests: fc.Arbitrary<PlanRequest> = fc.record({
  hours: fc.integer({ min: 2, max: 80 }).map((quarters) => quarters / 4),
  phase: fc.constantFrom(...phaseIds),
  level: fc.constantFrom(...levelIds),
  event: fc.constantFrom(...eventIds),
  week: fc.constantFrom(undefined, { days: [60, 0, 90, 60, 0, 120, 180] }),
  running: runningRequests,
});
const plans = requests.map((request) => planWithRunning(request));

const isRun = (category: CategoryId): boolean => ['slow', 'tempo', 'intervals'].includes(category);
const near = (one: number, other: number): void =>
  expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));

function paceOf(guides: readonly RunningGuide[], category: CategoryId): Span {
  const pace = guides.find((guide) => guide.category === category)?.pace;
  if (!pace) throw new Error(`no pace of ${category}`);
  return pace;
}

/** Minutes at the pace of the work, and at the pace of a slow run. */
function minutesOf({ parts }: ConcreteSession): { readonly work: number; readonly easy: number } {
  const all = (isWork: boolean): number =>
    parts
      .filter(({ kind }) => (kind === 'work') === isWork)
      .reduce((sum, { minutes, times }) => sum + minutes * times, 0);
  return { work: all(true), easy: all(false) };
}

describe('a week made concrete', { timeout: patience }, () => {
  test('has every session of the plan once, with its minutes', () => {
    fc.assert(
      fc.property(plans, ({ sessions, week, running }) => {
        const made = (category: CategoryId) =>
          running.sessions.filter((each) => each.category === category).map(({ minutes }) => minutes);
        for (const category of categoryIds)
          expect(made(category).sort((a, b) => a - b)).toEqual(
            (
              week?.days
                ?.flat()
                .filter((each) => each.category === category)
                .map(({ minutes }) => minutes) ?? [...sessions[category]]
            ).sort((a, b) => a - b),
          );
      }),
      usual,
    );
  });

  test('has parts for runs alone, which add up to their minutes', () => {
    fc.assert(
      fc.property(plans, ({ running }) => {
        for (const session of running.sessions) {
          const { work, easy } = minutesOf(session);
          near(work + easy, isRun(session.category) ? session.minutes : 0);
        }
      }),
      usual,
    );
  });

  test('goes at the paces of the shares of the greatest uptake: pace times speed is 60,000', () => {
    fc.assert(
      fc.property(plans, ({ running: { basis, guides } }) => {
        const shares = { slow: [0.6, 0.74], tempo: [0.84, 0.89], intervals: [0.93, 1] } as const;
        for (const { category, pace } of guides) {
          expect(pace === null).toBe(basis === null);
          if (!pace || !basis) continue;
          const uptake = uptakeByPrint(basis.metres, basis.seconds);
          const [least, most] = shares[category];
          near(pace.from * speedByNewton(uptake * most), 60_000);
          near(pace.to * speedByNewton(uptake * least), 60_000);
          expect(pace.from).toBeLessThan(pace.to);
        }
      }),
      usual,
    );
  });

  test('goes as many metres as its minutes at those paces, which add up to the week’s', () => {
    fc.assert(
      fc.property(plans, ({ running: { basis, guides, sessions, metres } }) => {
        expect(metres === null).toBe(basis === null);
        if (!metres) return;
        const runsOf = sessions.filter(({ category }) => isRun(category));
        for (const session of runsOf) {
          const { work, easy } = minutesOf(session);
          const [hard, slow] = [paceOf(guides, session.category), paceOf(guides, 'slow')];
          near(session.metres?.from ?? NaN, 60_000 * (work / hard.to + easy / slow.to));
          near(session.metres?.to ?? NaN, 60_000 * (work / hard.from + easy / slow.from));
        }
        for (const end of ['from', 'to'] as const)
          near(
            metres[end],
            runsOf.reduce((sum, session) => sum + (session.metres?.[end] ?? NaN), 0),
          );
        expect(sessions.filter((each) => !isRun(each.category) && each.metres !== null)).toEqual([]);
      }),
      usual,
    );
  });

  // Kilocalories by the print: (3.5 + 0.2 × speed) × kilograms / 200 a minute of running, multiple × 3.5 of the rest.
  test('takes the energy of its minutes at those speeds, which adds up to the week’s', () => {
    fc.assert(
      fc.property(plans, ({ running: { wishes, basis, guides, sessions, energy } }) => {
        const { weight } = wishes;
        const isKnown = (category: CategoryId): boolean => weight !== null && (basis !== null || !isRun(category));
        for (const session of sessions) expect(session.energy !== null).toBe(isKnown(session.category));
        expect(energy !== null).toBe(weight !== null && sessions.every(({ category }) => isKnown(category)));
        if (!energy || weight === null) return;
        const sum = { from: 0, to: 0 };
        for (const session of sessions) {
          for (const end of ['from', 'to'] as const) {
            const other = end === 'from' ? 'to' : 'from';
            sum[end] += session.energy?.[end] ?? NaN;
            near(session.energy?.[end] ?? NaN, ((oxygen(session, end, other) * weight) / 1000) * 5);
          }
        }
        near(energy.from, sum.from);
        near(energy.to, sum.to);

        function oxygen(session: ConcreteSession, end: keyof Span, paceEnd: keyof Span): number {
          if (session.category === 'cross') return session.minutes * 3.5 * { from: 5, to: 8 }[end];
          if (session.category === 'strength') return session.minutes * 3.5 * { from: 3.5, to: 6 }[end];
          const { work, easy } = minutesOf(session);
          const rate = (category: CategoryId) => 3.5 + 0.2 * (60_000 / paceOf(guides, category)[paceEnd]);
          return work * rate(session.category) + easy * rate('slow');
        }
      }),
      usual,
    );
  });

  test('counts the same in kilometres and in miles', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const [km, mile] = (['km', 'mile'] as const).map((unit) => {
          const { running } = planWithRunning({ ...request, running: { ...request.running, unit } });
          return { ...running, wishes: { ...running.wishes, unit: null } };
        });
        expect(mile).toEqual(km);
      }),
      runs(50, 5000),
    );
  });
});
