import { describe, expect, test } from 'vitest';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { levelIds, phaseIds } from '../../../../src/training/method/ids.js';
import { stageOf } from '../../../../src/training/strength/stage-of.js';

const { stages } = builtInStrength;

describe('the stage', () => {
  test.each(phaseIds)('of a newcomer is first steps, also in the phase %s', (phase) => {
    expect(stageOf(stages, phase, 'new').id).toBe('first-steps');
  });

  test.each([
    ['off-season', 'general'],
    ['base', 'general'],
    ['build', 'heavier'],
    ['peak', 'explosive'],
    ['taper', 'upkeep'],
    ['recovery', 'general'],
  ] as const)('of all others in the phase %s is %s', (phase, id) => {
    for (const level of levelIds.filter((each) => each !== 'new')) expect(stageOf(stages, phase, level).id).toBe(id);
  });

  test('is the first that fits both phase and level', () => {
    const [some, last] = [stages[1], stages.at(-1)];
    if (!some || !last) throw new Error('no stages');
    const list = [{ ...some, phases: ['base', 'peak'], levels: ['elite'] } as const, last];
    expect(stageOf(list, 'base', 'elite')).toBe(list[0]);
    expect(stageOf(list, 'base', 'trained')).toBe(last);
    expect(stageOf(list, 'build', 'elite')).toBe(last);
  });
});
