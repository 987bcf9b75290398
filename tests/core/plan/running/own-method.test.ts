import { describe, expect, test } from 'vitest';
import clubMethod from '../../../../demo/club-method.json';
import type { PlanRequest } from '../../../../src/plan/document.js';
import type { PlanRunning } from '../../../../src/plan/running/document.js';
import type { RunningRequest } from '../../../../src/plan/running/wishes.js';
import { runningOf } from '../../../reference/running/running-door.js';
import { defaultDocument, documentWith, plannerOf, valueOf } from '../../training/method/documents.js';

const week: Omit<PlanRequest, 'running'> = { hours: 8, phase: 'build', level: 'trained', event: '10k' };

/** The running of a request by a coach's own method. */
async function by(document: unknown, running: RunningRequest, others = week): Promise<PlanRunning> {
  const planner = await plannerOf(document);
  const plan = valueOf(planner.plan({ ...others, running }));
  if (!plan.running) throw new Error('there is no running');
  return plan.running;
}

/** With one thing of the section changed. */
const withOwn = (path: string, value: unknown, running: RunningRequest): Promise<PlanRunning> =>
  by(documentWith(`running.${path}`, value), running);

const told: RunningRequest = { thresholdPace: 240, age: 40, restingHeart: 60, weight: 60 };

describe('a method without running of its own', () => {
  test('makes it concrete as the built-in method does', async () => {
    const { running: _, ...document } = defaultDocument();
    expect(await by(document, told)).toEqual(runningOf(told, week));
  });

  test('has its own minutes all the same: the club', async () => {
    const running = await by(clubMethod, told, { hours: 5 });
    expect(running.guides).toEqual(runningOf(told).guides);
    expect(running.sessions.length).toBeGreaterThan(0);
  });
});

describe('a method with running of its own', () => {
  test('warms up as it says', async () => {
    const running = await withOwn('kinds[1].warm_up', { minutes: 5, most_share: 0.4 }, {});
    const tempo = running.sessions.filter(({ category }) => category === 'tempo');
    expect(tempo.length).toBeGreaterThan(0);
    for (const { parts } of tempo) expect(parts[0]).toEqual({ kind: 'warm-up', minutes: 5, times: 1 });
  });

  test('cuts runs into bouts as it says, slow ones too', async () => {
    const running = await withOwn('kinds[0].bouts', { work: 10, rest: 1 }, {});
    const slow = running.sessions.filter(({ category }) => category === 'slow');
    expect(slow.length).toBeGreaterThan(0);
    for (const { parts } of slow) expect(parts.map(({ kind }) => kind)).toContain('rest');
  });

  test('has its own pace and effort for a kind', async () => {
    const { guides } = await withOwn('kinds[1].uptake', { least: 0.6, most: 0.74 }, told);
    const [slow, tempo] = guides;
    expect(tempo?.pace).toEqual(slow?.pace);
    expect((await withOwn('kinds[0].effort', { least: 1, most: 1.5 }, {})).guides[0]?.effort).toEqual({
      from: 1,
      to: 1.5,
    });
  });

  test('shows kinds in its own order, and runs easy parts at its slow pace wherever that stands', async () => {
    const own = defaultDocument();
    const section: unknown = structuredClone(own['running']);
    const kinds: unknown = Reflect.get(Object(section), 'kinds');
    if (!Array.isArray(kinds)) throw new Error('no kinds');
    kinds.reverse();
    const running = await by({ ...own, running: section }, told);
    const usual = runningOf(told, week);
    expect(running.guides).toEqual([...usual.guides].reverse());
    expect(running.sessions).toEqual(usual.sessions);
  });

  test('takes a threshold pace for a race of its own minutes', async () => {
    const { basis } = await withOwn('threshold.minutes', 30, { thresholdPace: 240 });
    expect(basis).toMatchObject({ from: 'threshold', metres: 7500, seconds: 1800 });
    // By the print: 0.9300 held for half an hour.
    expect(basis?.held).toBeCloseTo(0.9300253356, 9);
  });

  test('shows its own distances, and calls races old and out of range by its own limits', async () => {
    const race = { metres: 5000, seconds: 1200, date: '2027-04-01' };
    const asked = { race, today: '2027-04-11' };
    expect(
      (await withOwn('equal_times.distances', [400, 50_000], asked)).equalTimes.map(({ metres }) => metres),
    ).toEqual([400, 50_000]);
    const codes = async (path: string, value: number) =>
      (await withOwn(`equal_times.${path}`, value, asked)).notices.map(({ code }) => code);
    expect(await codes('old_days', 10)).toEqual([]);
    expect(await codes('old_days', 9)).toEqual(['old-race']);
    expect(await codes('least_seconds', 1200)).toEqual([]);
    expect(await codes('least_seconds', 1201)).toEqual(['race-outside']);
  });

  test('estimates the highest heart rate by its own first equation', async () => {
    const own = [
      { id: 'club', from: 200, slope: 0.5 },
      { id: 'other', from: 220, slope: 1 },
    ];
    const { highest } = await withOwn('heart.estimates', own, { age: 50 });
    expect(highest).toEqual({
      ...{ beats: 175, from: 'age' },
      estimates: [
        { id: 'club', beats: 175 },
        { id: 'other', beats: 170 },
      ],
    });
  });

  test('says that a highest rate is low by its own spread', async () => {
    const asked = { age: 40, highestHeart: 170 };
    const codes = async (most: number) =>
      (await withOwn('heart.spread', { least: 1, most }, asked)).notices.map(({ code }) => code);
    expect(await codes(5)).toEqual([]);
    expect(await codes(4.9)).toEqual(['heart-below-estimate']);
  });

  test('has its own energy of strength and cross-training', async () => {
    const { sessions } = await withOwn('energy.strength', { least: 10, most: 20 }, { weight: 100 });
    const strength = sessions.filter(({ category }) => category === 'strength');
    expect(strength.length).toBeGreaterThan(0);
    for (const { minutes, energy } of strength) {
      expect(energy?.from).toBeCloseTo(minutes * 17.5, 9);
      expect(energy?.to).toBeCloseTo(minutes * 35, 9);
    }
  });

  test('has its own bands', async () => {
    const { bands } = await withOwn('heart.bands[1].reserve', 0.2, { highestHeart: 200, restingHeart: 100 });
    expect(bands.map(({ from }) => from)).toEqual([120, 140, 160, 190]);
  });

  // 150 − 60 are 90 beats: no use to a heart that has as many at rest.
  test.each([
    [89, true],
    [90, false],
    [95, false],
  ])('with an estimate of 90 beats and %d at rest tells heart rates: %s', async (restingHeart, isKnown) => {
    const steep = [{ id: 'steep', from: 150, slope: 1 }];
    const { highest, guides, bands } = await withOwn('heart.estimates', steep, { age: 60, restingHeart });
    expect(highest).toEqual({ beats: 90, from: 'age', estimates: [{ id: 'steep', beats: 90 }] });
    expect(guides.map(({ heart }) => heart !== null)).toEqual([isKnown, isKnown, isKnown]);
    expect(bands.length > 0).toBe(isKnown);
    for (const { heart } of guides) expect((heart?.to ?? 0) - (heart?.from ?? 0)).toBeGreaterThanOrEqual(0);
  });
});
