import type { PlanFile } from '../../../../src/plan/file/document.js';
import { readPlanFile } from '../../../../src/plan/file/read-plan-file.js';
import type { Problem } from '../../../../src/problem.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { wholeDocument } from '../sheet-documents.js';
import { valueOf } from '../../training/method/documents.js';

/** A plan file in which every field stands. */
export const wholeFile = (): Record<string, unknown> => ({
  format: 'weekwright-file',
  version: 1,
  name: 'Spring',
  sheet: wholeDocument(),
  onShow: 'a',
  running: {
    race: { metres: 5000, seconds: 1500, date: '2026-10-04' },
    thresholdPace: 320,
    unit: 'km',
    age: 41,
    highestHeart: 181,
    restingHeart: 52,
    weight: 68,
    today: '2026-11-28',
  },
  strength: {
    equipment: ['dumbbells', 'band'],
    minutes: 40,
    forms: { hinge: 'dumbbell-hinge' },
    lifted: [{ movement: 'goblet-squat', kilograms: 20, repetitions: 8 }],
    age: 41,
  },
  checks: {
    age: 41,
    hoursBefore: 3.5,
    longestRun: 75,
    weeks: [[300, 0, 200, 0, 0, 250, 400], [1100]],
    efforts: { slow: 3 },
  },
  record: [
    { date: '2026-11-23', category: 'slow', minutes: 45, effort: 3 },
    { date: '2026-11-24', category: 'strength', minutes: 40, effort: null },
  ],
  handout: { runner: 'A runner', contact: 'The club, evenings', note: 'Easy on the first days.' },
});

/** The smallest one. */
export const smallestFile = (): Record<string, unknown> => ({
  format: 'weekwright-file',
  version: 1,
  sheet: { format: 'weekwright-sheet', version: 1, method: 'weekwright', scenarios: [{}] },
});

/** Reads a document by the built-in method. */
export const readFile = (document: unknown): ReturnType<typeof readPlanFile> => readPlanFile(document, builtInMethod);

/** The file that a document must be. */
export const fileOf = (document: unknown): PlanFile => valueOf(readFile(document));

/** What is wrong with a document. */
export function problemsIn(document: unknown): readonly Problem[] {
  const outcome = readFile(document);
  return outcome.ok ? [] : outcome.problems;
}
