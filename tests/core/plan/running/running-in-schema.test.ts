import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { planSchema } from '../../../../src/plan/plan-schema.js';
import type { RunningRequest } from '../../../../src/plan/running/wishes.js';
import { problemCodes } from '../../../../src/problem.js';
import { patience, runs } from '../../../reference/runs.js';
import { runningRequests } from '../../../reference/running/random-runners.js';
import { planWithRunning } from '../../../reference/running/running-door.js';
import { changed, changesOf } from '../../schema/mutations.js';
import { validator } from '../../schema/published.js';
import { defaultDocument } from '../../training/method/documents.js';

const isPlan = validator('plan');
const isMethod = validator('method');
const week = { days: [60, 0, 45, 60, 0, 90, 120] };
const everything: RunningRequest = {
  race: { metres: 30_000, seconds: 14_400, date: '2026-01-01' },
  ...{ thresholdPace: 240, unit: 'mile', age: 15, highestHeart: 150, restingHeart: 60, weight: 50 },
  today: '2027-01-01',
};

describe('plan.schema.json', () => {
  test.each<[string, RunningRequest]>([
    ['nothing told', {}],
    ['everything told, with notices of every kind', everything],
    ['a threshold pace', { thresholdPace: 240 }],
    ['an age', { age: 40 }],
  ])('describes a plan with running: %s', (_, running) => {
    for (const plan of [planWithRunning({ hours: 6, running }), planWithRunning({ hours: 4, week, running })]) {
      isPlan(plan);
      expect(isPlan.errors).toBeNull();
      expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
    }
  });

  test('has notices of every kind in that plan', () => {
    expect(planWithRunning({ running: everything }).running.notices).toHaveLength(5);
  });

  test.each([
    ['no wishes', { wishes: undefined }],
    ['a pace below zero', { metres: { from: -1, to: 2 } }],
    ['half a span', { energy: { from: 1 } }],
    ['a band that is none', { bands: [{ id: 'hard', from: 1, to: 2 }] }],
    ['a notice that is none', { notices: [{ code: 'fast', level: 'note', values: {} }] }],
    ['a session on an eighth day', { sessions: [{ day: 7 }] }],
    ['something more', { colour: 'red' }],
  ])('refuses running with %s', (_, fields) => {
    const plan = planWithRunning({ hours: 4, running: everything });
    const copy: unknown = JSON.parse(JSON.stringify({ ...plan, running: { ...plan.running, ...fields } }));
    expect(isPlan(plan)).toBe(true);
    expect(isPlan(copy)).toBe(false);
  });

  test(
    'describes every plan of random runners',
    () => {
      fc.assert(
        fc.property(runningRequests, (running) => {
          isPlan(planWithRunning({ hours: 6, running }));
          expect(isPlan.errors).toBeNull();
        }),
        runs(200, 20_000),
      );
    },
    patience,
  );

  test(
    'says the same of changed running as the schema in TypeScript',
    () => {
      const { running, ...plan } = planWithRunning({ hours: 4, running: everything });
      const accepted = { copies: 0 };
      fc.assert(
        fc.property(changesOf(running), (changes) => {
          const copy = { ...plan, running: changed(running, changes) };
          const isFine = v.is(planSchema, copy);
          if (isFine) accepted.copies += 1;
          expect(isPlan(copy)).toBe(isFine);
        }),
        runs(500, 50_000),
      );
      expect(accepted.copies).toBeGreaterThan(0);
    },
    patience,
  );
});

describe('method.schema.json', () => {
  test('accepts the built-in method with and without its running', () => {
    const { running: _, ...without } = defaultDocument();
    expect(isMethod(defaultDocument())).toBe(true);
    expect(isMethod(without)).toBe(true);
  });
});

describe('a request changed at random', { timeout: patience }, () => {
  const planner = builtInPlanner();
  const mutated = runningRequests.chain((running) => changesOf(running).map((changes) => changed(running, changes)));

  test('gives a plan that is as its schema says, or typed problems, never an exception', () => {
    const counts = { plans: 0, refused: 0 };
    fc.assert(
      fc.property(mutated, (running) => {
        const before = structuredClone(running);
        const outcome = planner.plan({ hours: 4, running });
        expect(running).toStrictEqual(before);
        counts[outcome.ok ? 'plans' : 'refused'] += 1;
        if (outcome.ok) {
          expect([isPlan(outcome.value), isPlan.errors]).toEqual([true, null]);
          return;
        }
        expect(outcome.problems.length).toBeGreaterThan(0);
        for (const { path, code, value, allowed } of outcome.problems) {
          expect(path === 'running' || path.startsWith('running.')).toBe(true);
          expect(problemCodes).toContain(code);
          expect(() => JSON.stringify({ value, allowed })).not.toThrow();
        }
      }),
      runs(1000, 100_000),
    );
    expect(Math.min(counts.plans, counts.refused)).toBeGreaterThan(20);
  });
});
