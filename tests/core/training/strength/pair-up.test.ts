import { describe, expect, test } from 'vitest';
import { pairUp, type Area } from '../../../../src/training/strength/pair-up.js';
import type { RoleId } from '../../../../src/training/method/strength-rules.js';

/** 'main legs' and the like. */
const named = (name: string) => {
  const [role, area] = name.split(' ') as [RoleId, Area];
  return { role, area, name };
};
const pairs = (...names: readonly string[]) => pairUp(names.map(named)).map((turn) => turn.map(({ name }) => name));

describe('who takes turns', () => {
  test('each with the first later one for another part of the body', () => {
    expect(pairs('main legs', 'main hips', 'calf calves', 'support trunk')).toEqual([
      ['main legs', 'main hips'],
      ['calf calves', 'support trunk'],
    ]);
  });

  test('passing over those for the same part', () => {
    expect(pairs('main legs', 'support legs', 'calf calves', 'support trunk')).toEqual([
      ['main legs', 'calf calves'],
      ['support legs', 'support trunk'],
    ]);
  });

  test('never a jump', () => {
    expect(pairs('jump legs', 'main legs', 'jump calves', 'calf calves')).toEqual([
      ['jump legs'],
      ['main legs', 'calf calves'],
      ['jump calves'],
    ]);
  });

  test('and the last alone, where nobody is left', () => {
    expect(pairs('main legs', 'support legs')).toEqual([['main legs'], ['support legs']]);
    expect(pairs('main legs')).toEqual([['main legs']]);
    expect(pairs()).toEqual([]);
  });
});
