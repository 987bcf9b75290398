import { describe, expect, test } from 'vitest';
import evidence from '../../../../shared/evidence/evidence.json';
import defaultMethod from '../../../../shared/methods/default.json';
import { createPlanner } from '../../../../src/plan.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { strengthReasons } from '../../../../src/words/strength/strength-reasons.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const stages = builtInStrength.stages.map(({ id }) => id);
const known = new Set(evidence.map(({ id }) => id));

describe('strengthReasons(words, method, stage)', () => {
  test('has the stage in use first, then what all have in common', () => {
    for (const [index, stage] of stages.entries()) {
      const reasons = strengthReasons(english, method, stage);
      expect(reasons[0]?.text).toBe(english.say(`strength-reason.${stage}`));
      expect(reasons).toHaveLength(6);
      const [, ...common] = strengthReasons(english, method, stages[(index + 1) % stages.length] ?? '');
      expect(reasons.slice(1)).toEqual(common);
    }
  });

  test.each(stages)('%s names sources, each of which is in shared/evidence', (stage) => {
    for (const { text, sources } of strengthReasons(english, method, stage)) {
      expect([text, sources.length > 0]).toEqual([text, true]);
      expect(sources.filter((id) => !known.has(id))).toEqual([]);
    }
  });

  test('leaves no gap in either language', () => {
    for (const stage of stages)
      for (const [words, keys] of languages)
        for (const { text, status } of strengthReasons(words, method, stage))
          expect([...leaksIn(text, keys), ...leaksIn(status, keys)]).toEqual([]);
  });

  test("has a coach's own words", async () => {
    const { strength } = defaultMethod;
    const progress = { ...strength.progress, reason: 'As the club has it.', status: 'assumption', sources: [] };
    const own = await createPlanner({ ...defaultMethod, strength: { ...strength, progress } });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    expect(strengthReasons(german, own.value.method, 'heavier').at(-1)).toEqual({
      text: 'As the club has it.',
      status: 'Annahme, einstellbar',
      sources: [],
    });
  });
});
