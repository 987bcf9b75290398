import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { planSchema } from '../../../../src/plan/plan-schema.js';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import { patience, runs } from '../../../reference/runs.js';
import { planWithSeason } from '../../../reference/season/season-door.js';
import { changed, changesOf } from '../../schema/mutations.js';
import { validator } from '../../schema/published.js';
import { defaultDocument, plannerOf, valueOf } from '../../training/method/documents.js';

const isPlan = validator('plan');
const isMethod = validator('method');

const usual: SeasonRequest = { date: '2027-04-11', weeks: 16 };
const seasons: Readonly<Record<string, SeasonRequest>> = {
  'the usual one': usual,
  'one week': { date: '2027-04-11', weeks: 1 },
  'the most weeks that there are': { date: '2027-04-11', weeks: 104 },
  'with notices and ways out of every kind': {
    ...{ date: '2027-04-11', weeks: 8, rise: 0.25, mostHours: 20, taperWeeks: 3, longestRun: 20, weeksOff: 9 },
    phases: [
      { phase: 'base', weeks: 8 },
      { phase: 'off-season', weeks: null },
    ],
    events: [
      { date: '2027-03-07', event: '10k' },
      { date: '2027-05-30', event: 'none' },
    ],
    byHand: [
      { start: '2027-03-10', hours: 18, reason: 'other', sessions: { slow: [150, 150] } },
      { start: '2027-03-17', hours: 0, reason: 'ill', sessions: {} },
      { start: '2020-03-17', hours: 1, reason: 'holiday', sessions: {} },
    ],
  },
};

describe('plan.schema.json', () => {
  test.each(Object.entries(seasons))('describes a plan with a season: %s', (_, season) => {
    const plan = planWithSeason({ hours: 4, season });
    isPlan(plan);
    expect(isPlan.errors).toBeNull();
    expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
  });

  test.each([
    ['no wishes', { wishes: undefined }],
    ['a week that is none', { weeks: [{}] }],
    ['a phase that is none', { phases: [{ phase: 'summer', weeks: 3 }] }],
    ['half a week', { phases: [{ phase: 'base', weeks: 3.5 }] }],
    ['something more', { colour: 'red' }],
  ])('refuses a season with %s', (_, fields) => {
    const plan = planWithSeason({ hours: 4, season: usual });
    const copy: unknown = JSON.parse(JSON.stringify({ ...plan, season: { ...plan.season, ...fields } }));
    expect(isPlan(plan)).toBe(true);
    expect(isPlan(copy)).toBe(false);
  });

  test(
    'says the same of changed seasons as the schema in TypeScript',
    () => {
      const { season, ...plan } = planWithSeason({
        hours: 4,
        season: seasons['with notices and ways out of every kind'],
      });
      const short = { ...season, weeks: season.weeks.slice(0, 4) };
      const accepted = { copies: 0 };
      fc.assert(
        fc.property(changesOf(short), (changes) => {
          const copy = { ...plan, season: changed(short, changes) };
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
  test('accepts the built-in method with and without its season, and efforts that are left out', () => {
    const { season: _, ...without } = defaultDocument();
    expect(isMethod(defaultDocument())).toBe(true);
    expect(isMethod(without)).toBe(true);
    const categories = defaultDocument()['categories'];
    if (!Array.isArray(categories)) throw new Error('no categories');
    const bare = categories.map(({ effort: _effort, ...category }: { readonly effort?: number }) => category);
    expect(isMethod({ ...defaultDocument(), categories: bare })).toBe(true);
  });
});

describe('a method without a season of its own', () => {
  test('carries weeks as the built-in method does, with its own minutes', async () => {
    const { season: _, ...document } = defaultDocument();
    const planner = await plannerOf({ ...document, id: 'club' });
    const plan = valueOf(planner.plan({ hours: 4, season: usual }));
    expect(plan.season).toEqual(planWithSeason({ hours: 4, season: usual }).season);
  });

  test('has its own where it brings one: 8 weeks, a quarter more at most, no easier weeks', async () => {
    const { season, ...document } = defaultDocument();
    const own = { ...(season as object), weeks: 8, easier: { ...easier(season), every_weeks: 0 } };
    const planner = await plannerOf({
      ...document,
      id: 'club',
      season: { ...own, rise: { ...rise(season), most: 1.25 } },
    });
    const plan = valueOf(planner.plan({ hours: 4, season: { date: '2027-04-11' } }));
    expect(plan.season?.wishes).toMatchObject({ start: '2027-02-15', mostHours: 5, easierEvery: 0 });
    expect(plan.season?.weeks.filter(({ isEasier }) => isEasier)).toEqual([]);
  });
});

const partOf = (season: unknown, part: string): object => Object(Reflect.get(Object(season), part)) as object;
const easier = (season: unknown): object => partOf(season, 'easier');
const rise = (season: unknown): object => partOf(season, 'rise');
