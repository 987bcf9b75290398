import { describe, expect, test } from 'vitest';
import { builtInPlanner, planWeek } from '../../../../src/plan.js';
import { faultyDate } from '../../../../src/plan/faulty-date.js';
import { planPartNames } from '../../../../src/plan/plan-part.js';
import { makeRunning } from '../../../../src/plan/running/make-running.js';
import { sessionsOf } from '../../../../src/plan/sessions-of.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { planWithRunning, runningOf } from '../../../reference/running/running-door.js';
import { valueOf } from '../../training/method/documents.js';

const week = { days: [60, 0, 45, 60, 0, 90, 120] };

describe('the running of a plan', () => {
  test('is null unless it is asked for', () => {
    for (const request of [{}, { hours: 4, week }, { running: null }, { running: undefined }])
      expect(valueOf(builtInPlanner().plan(request)).running).toBeNull();
    expect(planPartNames).toContain('running');
  });

  test('has sessions and effort and nothing else where nothing is told', () => {
    const running = runningOf({});
    expect(running.wishes).toEqual({
      ...{ race: null, thresholdPace: null, unit: 'km', age: null },
      ...{ highestHeart: null, restingHeart: null, weight: null, today: null },
    });
    expect(running).toMatchObject({
      ...{ basis: null, equalTimes: [], highest: null, bands: [], metres: null, energy: null, notices: [] },
    });
    expect(running.guides).toEqual([
      { category: 'slow', effort: { from: 2, to: 4 }, pace: null, heart: null, bands: null },
      { category: 'tempo', effort: { from: 5, to: 6 }, pace: null, heart: null, bands: null },
      { category: 'intervals', effort: { from: 7, to: 9 }, pace: null, heart: null, bands: null },
    ]);
    expect(running.sessions.length).toBeGreaterThan(0);
    expect(running.sessions.filter(({ metres, energy }) => metres !== null || energy !== null)).toEqual([]);
  });

  test('changes nothing else of the plan, and is the same each time', () => {
    const request = { hours: 6, week, running: { thresholdPace: 260, weight: 70, age: 30 } };
    const { running, ...plan } = planWithRunning(request);
    const { running: none, ...without } = valueOf(planWeek({ hours: 6, week }));
    expect(plan).toEqual(without);
    expect(none).toBeNull();
    expect(planWithRunning(request).running).toEqual(running);
  });

  test('keeps the wishes as they are told', () => {
    const race = { metres: 10_000, seconds: 2700 };
    const told = { race, thresholdPace: 250, unit: 'mile', age: 35, highestHeart: 190, restingHeart: 50 } as const;
    expect(runningOf({ ...told, weight: 62.5, today: '2027-04-11' }).wishes).toEqual({
      ...{ ...told, race: { ...race, date: null } },
      ...{ weight: 62.5, today: '2027-04-11' },
    });
  });
});

describe('what paces are worked out from', () => {
  test('a threshold pace is a race of an hour: 4:00 a kilometre are 15 km', () => {
    const threshold = runningOf({ thresholdPace: 240 });
    expect(threshold.basis).toMatchObject({ from: 'threshold', metres: 15_000, seconds: 3600 });
    const race = runningOf({ race: { metres: 15_000, seconds: 3600 } });
    expect(race.basis).toEqual({ ...threshold.basis, from: 'race' });
    for (const part of ['guides', 'equalTimes', 'sessions', 'metres'] as const)
      expect(threshold[part]).toEqual(race[part]);
  });

  // By the print: 0.8880 held for an hour (shared/checks), 53.45 ml; worked out apart from the source, in Python.
  test('4:00 a kilometre for an hour are 4:38 to 5:29 slow, 4:00 to 4:11 at tempo, 3:38 to 3:51 in intervals', () => {
    const { basis, guides } = runningOf({ thresholdPace: 240 });
    expect(basis?.held).toBeCloseTo(0.8880073145, 9);
    expect(basis?.uptake).toBeCloseTo(53.450573239692226, 9);
    const paces = guides.map(({ pace }) => [pace?.from, pace?.to]);
    [
      [278.1549266811622, 329.2225627074761],
      [239.56439653073824, 251.05401526208666],
      [217.96793905377837, 231.1773087014983],
    ].forEach((pace, index) => pace.forEach((end, at) => expect(paces[index]?.[at]).toBeCloseTo(end, 9)));
  });

  test('of a race and a threshold pace the race counts', () => {
    const race = { metres: 5000, seconds: 1200 };
    const both = runningOf({ race, thresholdPace: 400 });
    expect({ ...both, wishes: null }).toEqual({ ...runningOf({ race }), wishes: null });
  });

  test('miles change no number', () => {
    const told = { race: { metres: 5000, seconds: 1200 }, age: 40, weight: 60, restingHeart: 50 };
    const [km, mile] = [runningOf({ ...told, unit: 'km' }), runningOf({ ...told, unit: 'mile' })];
    expect({ ...mile, wishes: { ...mile.wishes, unit: 'km' } }).toEqual(km);
    expect(runningOf(told)).toEqual(km);
  });
});

describe('heart rates of a plan', () => {
  test('are by the rate measured, else by the first of the estimates', () => {
    const estimates = [
      { id: 'tanaka', beats: 180 },
      { id: 'gellish', beats: 179 },
    ];
    expect(runningOf({ age: 40 }).highest).toEqual({ beats: 180, from: 'age', estimates });
    expect(runningOf({ age: 40, highestHeart: 190 }).highest).toEqual({ beats: 190, from: 'measured', estimates });
    expect(runningOf({ highestHeart: 190 }).highest).toEqual({ beats: 190, from: 'measured', estimates: [] });
    expect(runningOf({ restingHeart: 50 }).highest).toBeNull();
  });

  // The numbers of tests/core/training/running/heart-rate.test.ts.
  test('are those of 50 to 190 beats', () => {
    const { guides, bands } = runningOf({ highestHeart: 190, restingHeart: 50 });
    expect(guides.map(({ heart }) => heart)).toEqual([
      { from: 128, to: 150 },
      { from: 165, to: 173 },
      { from: 179, to: 190 },
    ]);
    expect(bands.map(({ id, from }) => [id, from])).toEqual([
      ['light', 92],
      ['moderate', 106],
      ['vigorous', 134],
      ['near-maximal', 176],
    ]);
  });
});

describe('energy of a plan', () => {
  test('is that of strength and cross-training alone where no pace is known, and none of the week', () => {
    const { sessions, energy } = runningOf({ weight: 60 }, { hours: 6 });
    const strength = sessions.find(({ category }) => category === 'strength');
    // 3.5 to 6 multiples × 3.5 × 60 / 200 a minute.
    expect(strength?.energy?.from).toBeCloseTo((strength?.minutes ?? NaN) * 3.675, 9);
    expect(strength?.energy?.to).toBeCloseTo((strength?.minutes ?? NaN) * 6.3, 9);
    expect(sessions.filter((each) => each.parts.length > 0 && each.energy !== null)).toEqual([]);
    expect(energy).toBeNull();
  });

  test('of a week without sessions is none where the weight is known, and not known where it is not', () => {
    const plan = planWithRunning({ running: { thresholdPace: 300 } });
    const empty = { ...plan, sessions: { strength: [], slow: [], tempo: [], intervals: [], cross: [] } };
    const { wishes } = plan.running;
    const none = { from: 0, to: 0 };
    expect(makeRunning(empty, wishes, builtInMethod)).toMatchObject({ metres: none, energy: null, sessions: [] });
    expect(makeRunning(empty, { ...wishes, weight: 60 }, builtInMethod).energy).toEqual(none);
  });

  test('doubles with the weight', () => {
    const told = { thresholdPace: 300 };
    const [light, heavy] = [50, 100].map((weight) => runningOf({ ...told, weight }).energy);
    expect(heavy?.from).toBeCloseTo((light?.from ?? NaN) * 2, 9);
    expect(heavy?.to).toBeCloseTo((light?.to ?? NaN) * 2, 9);
  });
});

describe('the sessions of a plan', () => {
  test('are in the order of the week’s days, each with its day', () => {
    const { week: laid, running } = planWithRunning({ hours: 4, week, running: {} });
    const expected = laid?.days?.flatMap((sessions, day) => sessions.map((session) => ({ ...session, day })));
    const found = running.sessions.map(({ category, minutes, day }) => ({ category, minutes, day }));
    expect(found).toEqual(expected);
    const days = found.map(({ day }) => day ?? -1);
    expect(days).toEqual([...days].sort((one, other) => one - other));
    expect(new Set(days).size).toBeGreaterThan(2);
  });

  test('are kind after kind, on no day, where no days are given', () => {
    const { sessions, running } = planWithRunning({ hours: 6, running: {} });
    expect(running.sessions.map(({ category, minutes, day }) => [category, minutes, day])).toEqual(
      categoryIds.flatMap((category) => sessions[category].map((minutes) => [category, minutes, null])),
    );
  });

  test('of some kinds only are asked for by name: sessionsOf(plan, kinds)', () => {
    const plan = planWithRunning({ hours: 6, running: {} });
    const laid = planWithRunning({ hours: 4, week, running: {} });
    expect(sessionsOf(plan, [])).toEqual([]);
    expect(sessionsOf(plan, ['slow']).map(({ minutes }) => minutes)).toEqual(plan.sessions.slow);
    expect(sessionsOf(laid, ['strength', 'slow'])).toEqual(
      sessionsOf(laid, categoryIds).filter(({ category }) => category === 'strength' || category === 'slow'),
    );
    // A week that could not be laid has no days.
    expect(sessionsOf({ ...plan, week: laid.week && { ...laid.week, days: null } }, ['slow'])).toEqual(
      plan.sessions.slow.map((minutes) => ({ category: 'slow', minutes, day: null })),
    );
  });
});

describe('faultyDate(path, value)', () => {
  test.each([undefined, null, '2027-04-11', '2028-02-29', '1900-01-01', '2199-12-31'])('%s is none', (value) => {
    expect(faultyDate('today', value)).toEqual([]);
  });

  test.each(['', '2027-02-29', '2027-4-1', 'today', '1899-12-31', '2200-01-01', ' 2027-04-11', '2027-04-11T00:00'])(
    '“%s” is one',
    (value) => {
      const allowed = { least: '1900-01-01', most: '2199-12-31' };
      expect(faultyDate('race.date', value)).toEqual([{ path: 'race.date', value, code: 'no-date', allowed }]);
    },
  );
});
