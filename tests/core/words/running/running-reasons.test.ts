import { describe, expect, test } from 'vitest';
import evidence from '../../../../shared/evidence/evidence.json';
import defaultMethod from '../../../../shared/methods/default.json';
import { createPlanner } from '../../../../src/plan.js';
import { runningReasons } from '../../../../src/words/running/running-reasons.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const known = new Set(evidence.map(({ id }) => id));

describe('runningReasons(words, method)', () => {
  test('has every number of running, the shares of each kind first, with how well it is founded', () => {
    expect(
      runningReasons(english, method).map(({ text, status }) => [text.split(' ').slice(0, 2).join(' '), status]),
    ).toEqual([
      ['Slow running', 'assumption, adjustable'],
      ['Tempo running', 'assumption, adjustable'],
      ['Intervals at', 'assumption, adjustable'],
      ['That the', 'common practice, no published source'],
      ['Two published', 'published'],
      ['Heart rates', 'published'],
      ['Energy of', 'published'],
    ]);
  });

  test('names sources, each of which is in shared/evidence', () => {
    for (const { text, sources } of runningReasons(english, method)) {
      expect([text, sources.length > 0]).toEqual([text, true]);
      expect(sources.filter((id) => !known.has(id))).toEqual([]);
    }
  });

  test('says in words where an assumption is made', () => {
    for (const { text, status } of runningReasons(english, method))
      if (status.startsWith('assumption')) expect(text).toMatch(/assumption/);
  });

  test('leaves no gap in either language', () => {
    for (const [words, keys] of languages)
      for (const { text, status } of runningReasons(words, method))
        expect([...leaksIn(text, keys), ...leaksIn(status, keys)]).toEqual([]);
  });

  test("has a coach's own words", async () => {
    const { running } = defaultMethod;
    const heart = { ...running.heart, reason: 'As the club has it.', status: 'assumption', sources: [] };
    const own = await createPlanner({ ...defaultMethod, running: { ...running, heart } });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    expect(runningReasons(german, own.value.method)[5]).toEqual({
      text: 'As the club has it.',
      status: 'Annahme, einstellbar',
      sources: [],
    });
  });
});
