import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import clubMethod from '../../../demo/club-method.json';
import { plannerOf, valueOf } from '../training/method/documents.js';

const page = readFileSync(new URL('../../../demo/club.html', import.meta.url), 'utf8');
const scripts = [...page.matchAll(/<script\b(?<attributes>[^>]*)>(?<content>[^]*?)<\/script>/g)].map(
  ({ groups }) => groups,
);
const methods = scripts.filter((script) => /\bslot="method"/.test(script?.['attributes'] ?? ''));

describe("the club's method", () => {
  test('stands in its page as a script child of type application/json, the same as in its file', () => {
    expect(methods).toHaveLength(1);
    expect(methods[0]?.['attributes']).toContain('type="application/json"');
    expect(JSON.parse(methods[0]?.['content'] ?? '')).toEqual(clubMethod);
  });

  test('is a good one', async () => {
    const planner = await plannerOf(clubMethod);
    expect(planner.method.id).toBe(clubMethod.id);
    const plan = valueOf(planner.plan({}));
    expect(plan.split.id).toBe('thursday_season');
    // 6 h by its shares: 40, 10, 10, 10 and 30 %; the track is held at half an hour, and the rest goes to easy running.
    expect(plan.minutes).toEqual({ slow: 150, tempo: 36, intervals: 30, cross: 36, strength: 108 });
  });

  test('has the same group sums for a trained runner, without the limit on the track', async () => {
    const plan = valueOf((await plannerOf(clubMethod)).plan({ level: 'trained' }));
    expect(plan.minutes.intervals).toBe(36);
    expect(plan.rules.find(({ id }) => id === 'track-limit')?.acted).toBe(false);
  });
});
