import { readScenarios } from '../../../src/plan/scenarios/read-scenarios.js';
import type { Problem } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { objectOf } from '../training/method/documents.js';

/** A sheet document in which every field stands. */
export const wholeDocument = (): Record<string, unknown> => ({
  format: 'weekwright-sheet',
  version: 1,
  method: 'weekwright',
  formulas: { strength_minutes: 'weekly_minutes * 0.25' },
  rows: [{ id: 'own_ratio', name: 'Half of slow running', formula: 'slow_minutes * 0.5' }],
  rulesOff: ['few-hours'],
  scenarios: [
    {
      id: 'a',
      name: 'Before the holidays',
      inputs: { hours: 5, phase: 'base', level: 'trained', event: '10k', strengthCap: 100 },
      sessions: { strength: [30, 45] },
      week: {
        days: [60, 0, 45, 60, 0, 90, 120],
        free: [4],
        longRun: 6,
        restDays: 2,
        sessionsADay: 3,
        pinned: [{ category: 'tempo', minutes: 30, day: 2 }],
        done: [{ category: 'strength', minutes: 30, day: 0 }],
        passed: 1,
        sessions: { strength: [30, 45] },
        before: [[], [], [{ category: 'tempo', minutes: 35 }], [], [], [], []],
      },
      season: {
        start: '2026-12-21',
        date: '2027-04-11',
        weeks: 16,
        hours: 4,
        mostHours: 6,
        rise: 0.1,
        easierEvery: 4,
        easierDrop: 0.3,
        taperWeeks: 2,
        taperDrop: 0.5,
        upkeepFrom: 'taper',
        upkeepSessions: 2,
        recoveryWeeks: 2,
        phases: [
          { phase: 'base', weeks: null },
          { phase: 'build', weeks: 4 },
        ],
        events: [{ date: '2027-03-07', event: '10k' }],
        byHand: [{ start: '2027-02-15', hours: 0, reason: 'holiday', sessions: { strength: [30] } }],
        weeksOff: 1,
        longestRun: 75,
      },
      overrides: { slow_minutes: '90', own_ratio: '1', weekly_hours: '6' },
      rulesOff: ['strength-cap', 'no-event'],
    },
    { id: 'b' },
  ],
  reference: 'b',
});

/** Something of a document changed: undefined takes a field out. */
export function documentWith(path: readonly (string | number)[], value: unknown): Record<string, unknown> {
  const document = wholeDocument();
  const within = (holder: object, key: string | number): object => objectOf(Reflect.get(holder, key));
  const holder = path.slice(0, -1).reduce<object>(within, document);
  const key = path.at(-1) ?? '';
  // As JSON.parse does it, so that __proto__ is a field like any other.
  if (value === undefined) Reflect.deleteProperty(holder, key);
  else Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
  return document;
}

/** What is wrong with a document, by the built-in method. */
export function problemsOf(document: unknown): readonly Problem[] {
  const outcome = readScenarios(document, builtInMethod);
  return outcome.ok ? [] : outcome.problems;
}
