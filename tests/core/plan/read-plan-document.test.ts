import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planWeek } from '../../../src/plan.js';
import type { Plan, PlanRequest } from '../../../src/plan/document.js';
import { readPlanDocument, type SubmittedPlan } from '../../../src/plan/read-plan-document.js';
import { problemCodes, type Outcome, type Problem } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { anyAthletes } from '../../reference/athletes.js';
import { planOf } from '../../reference/plan-door.js';
import { patience, runs } from '../../reference/runs.js';
import { anySeasons } from '../../reference/season/random-seasons.js';
import { changed, changesOf } from '../schema/mutations.js';
import { globalsNow } from '../sheet/globals.js';

const read = (document: unknown): Outcome<SubmittedPlan> => readPlanDocument(document, builtInMethod);

const problemsOf = (document: unknown): readonly Problem[] => {
  const outcome = read(document);
  return outcome.ok ? [] : outcome.problems;
};

/** The plan that a planner makes of what was read. */
function planAgain(outcome: Outcome<SubmittedPlan>): Plan {
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
  const { inputs, sessions, week, season } = outcome.value;
  return planOf({ ...inputs, sessions, week: week ?? undefined, season: season ?? undefined });
}

/** Through a form and back: as text. */
const throughText = (plan: unknown): unknown => JSON.parse(JSON.stringify(plan)) as unknown;

describe('readPlanDocument(plan, method)', { timeout: patience }, () => {
  /** Lengths that an athlete may pick: for each kind the options, counted on. */
  const picks = fc.array(fc.nat(8), { minLength: 5, maxLength: 5 });
  const picked = (request: PlanRequest, places: readonly number[]): PlanRequest => {
    const options = Object.entries(planOf(request).options);
    const sessions = options.flatMap(([id, list], kind) => {
      const lengths = list[(places[kind] ?? 0) % Math.max(1, list.length)];
      return lengths ? [[id, lengths] as const] : [];
    });
    return { ...request, sessions: Object.fromEntries(sessions) };
  };

  test('gives what makes the same plan, with whatever sessions are picked', () => {
    fc.assert(
      fc.property(anyAthletes, picks, (athlete, places) => {
        const plan = planOf(picked(athlete, places));
        expect(planAgain(read(throughText(plan)))).toStrictEqual(plan);
      }),
      runs(300, 50_000),
    );
  });

  /** Weeks that are laid in no time; tests/reference/week has the others. */
  const weeks = fc.record({
    days: fc.array(fc.constantFrom(60, 90, 120, 45, 30, 0), { minLength: 7, maxLength: 7 }),
    free: fc.uniqueArray(fc.nat(6), { maxLength: 1 }),
    longRun: fc.option(fc.nat(6), { nil: null }),
    restDays: fc.nat(2),
    sessionsADay: fc.integer({ min: 1, max: 2 }),
    passed: fc.nat(1),
    pinned: fc.array(fc.record({ category: fc.constant('slow' as const), minutes: fc.constant(30), day: fc.nat(6) }), {
      maxLength: 1,
    }),
  });

  test('gives what makes the same plan, with its days and the sessions picked', () => {
    fc.assert(
      fc.property(anyAthletes, weeks, picks, ({ hours, ...athlete }, week, places) => {
        const plan = planOf({ ...picked({ ...athlete, hours: 0.5 + hours / 4 }, places), week });
        expect(planAgain(read(throughText(plan)))).toStrictEqual(plan);
      }),
      runs(60, 5000),
    );
  });

  test('gives what makes the same plan, with its season and the sessions picked', () => {
    let tried = 0;
    fc.assert(
      fc.property(anyAthletes, anySeasons(builtInMethod), picks, (athlete, season, places) => {
        const outcome = planWeek({ ...athlete, season });
        fc.pre(outcome.ok);
        tried += 1;
        const plan = planOf(picked({ ...athlete, season }, places));
        expect(planAgain(read(throughText(plan)))).toStrictEqual(plan);
      }),
      runs(60, 5000),
    );
    expect(tried).toBeGreaterThan(0);
  });

  test('leaves out what a plan has of running, strength and checks: those are worked out anew', () => {
    const asked = { race: { metres: 10_000, seconds: 2700 } };
    const plan = planOf({ hours: 6, running: asked, strength: {}, checks: {} });
    expect([plan.running, plan.strength, plan.load].map((part) => part !== null)).toEqual([true, true, true]);
    const outcome = read(throughText(plan));
    expect(planAgain(outcome)).toStrictEqual(planOf({ hours: 6 }));
  });

  test('keeps lengths that are settled for the days', () => {
    const days = [60, 0, 60, 60, 0, 90, 120];
    const plan = planOf({ hours: 5, week: { days, sessions: { strength: [45, 45] } } });
    expect(plan.sessions.strength).toEqual([45, 45]);
    expect(planAgain(read(throughText(plan))).sessions.strength).toEqual([45, 45]);
  });

  test('takes the best sessions as nobody’s pick, and others as a pick', () => {
    const best = planOf({ hours: 4 });
    const other = best.options.strength[1];
    const sessionsOf = (plan: Plan): unknown => {
      const outcome = read(throughText(plan));
      return outcome.ok ? outcome.value.sessions : outcome.problems;
    };
    expect(sessionsOf(best)).toEqual({});
    expect(sessionsOf(planOf({ hours: 4, sessions: { strength: other ?? [] } }))).toEqual({ strength: other });
  });
});

const whole = throughText(
  planOf({
    hours: 5.5,
    phase: 'base',
    level: 'trained',
    event: '10k',
    strengthCap: 100,
    week: { days: [60, 45, 60, 60, 45, 90, 120], free: [1], longRun: 6, sessions: { strength: [45, 45] } },
    season: { date: '2027-05-02', start: '2027-01-04', events: [{ date: '2027-03-07', event: '5k' }] },
  }),
) as Readonly<Record<string, object>>;

/** The whole document with one place changed; undefined takes it out. */
function whereOf(path: string, value: unknown): unknown {
  const copy = structuredClone(whole);
  const keys = path.split('.');
  const holder = keys.slice(0, -1).reduce<object>((at, key) => Reflect.get(at, key) as object, copy);
  if (value === undefined) Reflect.deleteProperty(holder, keys.at(-1) ?? '');
  else Object.defineProperty(holder, keys.at(-1) ?? '', { value, enumerable: true });
  return copy;
}

describe('a document that is no such plan', () => {
  const choices = ['weekwright-plan'];
  test.each<readonly [string, unknown, Partial<Problem>]>([
    ['nothing', undefined, { path: 'format', code: 'not-one-of', allowed: { choices } }],
    ['null', null, { path: 'format', code: 'not-one-of', value: null }],
    ['a list', [whole], { path: 'format', code: 'not-one-of' }],
    ['a number', 4, { path: 'format', code: 'not-one-of', value: 4 }],
    ['a text', '{}', { path: 'format', code: 'not-one-of' }],
    ['an empty object', {}, { path: 'format', code: 'not-one-of' }],
    ['a file of plans', whereOf('format', 'weekwright-file'), { path: 'format', value: 'weekwright-file' }],
    ['of a later version', whereOf('version', 2), { path: 'version', code: 'newer-version', allowed: { most: 1 } }],
    ['of a version that is a text', whereOf('version', '1'), { path: 'version', value: '1' }],
    ['another coach’s', whereOf('method.id', 'club'), { path: 'method', value: 'club', code: 'other-method' }],
    ['nobody’s', whereOf('method', undefined), { path: 'method', value: undefined, code: 'other-method' }],
  ])('%s', (_, document, problem) => {
    expect(problemsOf(document)).toMatchObject([problem]);
  });

  test('is told which method is in use', () => {
    expect(problemsOf(whereOf('method.id', 'club'))[0]?.allowed).toEqual({ method: builtInMethod.id });
  });
});

describe('a field that is wrong is named by its path in the document', () => {
  test.each<readonly [string, unknown, Problem['code']]>([
    ['inputs', undefined, 'missing'],
    ['inputs', null, 'wrong-type'],
    ['inputs', [], 'wrong-type'],
    ['inputs.hours', undefined, 'missing'],
    ['inputs.hours', null, 'wrong-type'],
    ['inputs.hours', '5', 'wrong-type'],
    ['inputs.hours', 40, 'out-of-range'],
    ['inputs.phase', 'summer', 'not-one-of'],
    ['inputs.level', 3, 'not-one-of'],
    ['inputs.event', undefined, 'missing'],
    ['inputs.strengthCap', 1e9, 'out-of-range'],
    ['inputs.mood', 'fine', 'unknown-field'],
    ['sessions', undefined, 'missing'],
    ['sessions', 'two', 'wrong-type'],
    ['sessions.strength', undefined, 'missing'],
    ['week', undefined, 'missing'],
    ['week', 5, 'wrong-type'],
    ['week', [], 'wrong-type'],
    ['week.wishes', undefined, 'missing'],
    ['week.wishes', null, 'wrong-type'],
    ['week.wishes.days', undefined, 'missing'],
    ['week.wishes.days', [1], 'wrong-count'],
    ['week.wishes.days.3', 1e5, 'out-of-range'],
    ['week.wishes.mood', 1, 'unknown-field'],
    ['week.picks', undefined, 'missing'],
    ['week.picks', 'two', 'wrong-type'],
    ['week.picks.slow', 'often', 'wrong-type'],
    ['week.picks.mood', [1], 'unknown-field'],
    ['season', undefined, 'missing'],
    ['season', 'soon', 'wrong-type'],
    ['season.wishes', [], 'wrong-type'],
    ['season.wishes.date', '2027-02-30', 'no-date'],
    ['season.wishes.events.0.date', 5, 'wrong-type'],
  ])('%s: %j', (path, value, code) => {
    const told = path.replace(/\.(\d+)/g, '[$1]');
    expect(problemsOf(whereOf(path, value))).toMatchObject([{ path: told, code }]);
  });

  test('sessions.strength, where no days are given', () => {
    const plan = throughText(planOf({ hours: 4 })) as { sessions: object };
    Object.assign(plan.sessions, { strength: 'often' });
    expect(problemsOf(plan)).toMatchObject([{ path: 'sessions.strength', code: 'wrong-type', value: 'often' }]);
  });

  test('several together', () => {
    const copy = { ...whole, inputs: { ...whole['inputs'], hours: 40, phase: 'summer' } };
    expect(problemsOf(copy).map(({ path }) => path)).toEqual(['inputs.hours', 'inputs.phase']);
  });
});

describe('a plan changed at random', { timeout: patience }, () => {
  /** Fields that are carried: another value there is another plan, where it is one. */
  const carried = /^(inputs|sessions|options|week\.wishes|week\.picks|season\.wishes)\b/;
  const { format, version, method, inputs, sessions, options, rounded, total, week, season } = whole;
  const near = { format, version, method, inputs, sessions, options, rounded, total, week, season };
  const places = changesOf(near).map(([change]) => change ?? ([[], { kind: 'remove' }] as const));

  test('in one place gives the same plan, a problem, or a plan that has what stands there', () => {
    const plan = planAgain(read(whole));
    let [same, refused, other] = [0, 0, 0];
    fc.assert(
      fc.property(places, (change) => {
        const document = changed(whole, [change]);
        const outcome = read(document);
        const place = change[0].join('.');
        if (!outcome.ok) refused += 1;
        else if (carried.test(place)) {
          other += 1;
          expect(outcome.value.inputs).toEqual((document as Plan).inputs);
          expect(outcome.value.week).toMatchObject((document as Plan).week?.wishes ?? {});
        } else if ((document as Plan).week !== null && (document as Plan).season !== null) {
          same += 1;
          expect(planAgain(outcome)).toStrictEqual(plan);
        }
      }),
      runs(800, 30_000),
    );
    for (const count of [same, refused]) expect(count).toBeGreaterThan(10);
    expect(other).toBeGreaterThan(0);
  });

  const hostile = ['__proto__', 'constructor', 'prototype', 'hasOwnProperty', 'toString', 'toJSON', 'valueOf', '0'];
  const holders = [
    '',
    'inputs.',
    'sessions.',
    'options.',
    'week.',
    'week.wishes.',
    'week.wishes.sessions.',
    'week.picks.',
    'season.',
  ];
  const documents = fc.oneof(
    changesOf(whole).map((changes) => changed(whole, changes)),
    fc
      .tuple(fc.constantFrom(...holders), fc.constantFrom(...hostile), fc.jsonValue())
      .map(([holder, key, value]) => whereOf(holder + key, value)),
    fc
      .tuple(fc.constantFrom(...Object.keys(whole)), fc.jsonValue())
      .map(([key, value]) => ({ ...whole, [key]: value })),
    fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }),
  );

  test('never throws, tells problems that can be written, and leaves the language as it was', () => {
    const before = globalsNow();
    fc.assert(
      fc.property(documents, (document) => {
        const outcome = read(document);
        if (outcome.ok) {
          planAgain(outcome);
          return;
        }
        expect(outcome.problems.length).toBeGreaterThan(0);
        for (const { path, code } of outcome.problems) {
          expect(path).toMatch(/^(format|version|method|inputs|sessions|week|season)/);
          expect(problemCodes).toContain(code);
        }
      }),
      runs(800, 50_000),
    );
    expect(globalsNow()).toStrictEqual(before);
    expect(Reflect.get({}, 'polluted')).toBe(undefined);
  });

  const nested = (levels: number): unknown =>
    Array.from({ length: levels }).reduce<unknown>((inner) => [inner], 'deep');
  const circle: Record<string, unknown> = {};
  circle['self'] = circle;

  test.each<readonly [string, unknown]>([
    ['options nested ten thousand deep', whereOf('options.slow', [nested(10_000)])],
    ['sessions nested ten thousand deep', whereOf('sessions.slow', nested(10_000))],
    ['a circle', whereOf('options.slow', [circle])],
    ['a whole number without end', whereOf('options.slow', [[1n]])],
    [
      'a list of a million',
      whereOf(
        'options.slow',
        Array.from({ length: 1_000_000 }, () => 1),
      ),
    ],
  ])('is read without harm: %s', (_, document) => {
    expect(problemsOf({ ...(document as object), week: null, sessions: sessionsIn(document) })).toEqual([]);
  });

  const sessionsIn = (document: unknown): unknown => ({ ...(document as Plan).sessions, slow: [60] });

  test.each<readonly [string, unknown, string]>([
    ['days nested ten thousand deep', whereOf('week.wishes.days', nested(10_000)), 'week.wishes.days'],
    [
      'days without end',
      whereOf(
        'week.wishes.days',
        Array.from({ length: 1_000_000 }, () => 1),
      ),
      'week.wishes.days',
    ],
    ['a season of a million events', whereOf('season.wishes.events', Array(1_000_000).fill(1)), 'season.wishes.events'],
  ])('is refused without harm: %s', (_, document, path) => {
    const problems = problemsOf(document);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems[0]?.path).toContain(path);
  });
});
