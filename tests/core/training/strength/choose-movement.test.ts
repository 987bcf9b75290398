import { describe, expect, test } from 'vitest';
import type { EquipmentId } from '../../../../src/training/method/strength-rules.js';
import { chooseMovement, isAtHand } from '../../../../src/training/strength/choose-movement.js';
import { movementOf } from './movements.js';

const movements = [
  movementOf('bar', 'squat', { grade: 4, equipment: ['barbell'] }),
  movementOf('plain', 'squat', { grade: 2 }),
  movementOf('held', 'squat', { grade: 3, equipment: ['dumbbells'] }),
  movementOf('band-and-bar', 'squat', { grade: 5, equipment: ['band', 'barbell'] }),
  movementOf('row', 'pull', { grade: 2, equipment: ['band'] }),
  movementOf('hard-row', 'pull', { grade: 5, equipment: ['dumbbells'] }),
];

interface Row {
  readonly equipment: readonly EquipmentId[];
  readonly grade: number;
  readonly wished?: string;
  readonly chosen: string | null;
}

describe('the form of a pattern', () => {
  test.each<Row>([
    { equipment: ['dumbbells', 'barbell'], grade: 5, chosen: 'bar' },
    { equipment: ['dumbbells', 'barbell', 'band'], grade: 5, chosen: 'band-and-bar' },
    { equipment: ['dumbbells', 'barbell'], grade: 4, chosen: 'bar' },
    { equipment: ['dumbbells', 'barbell'], grade: 3, chosen: 'held' },
    { equipment: ['barbell'], grade: 3, chosen: 'plain' },
    { equipment: [], grade: 5, chosen: 'plain' },
    // Nothing is easy enough: the easiest there is.
    { equipment: ['dumbbells', 'barbell'], grade: 1, chosen: 'plain' },
    // The wished one is taken whatever its grade, but not without its equipment, nor for another pattern.
    { equipment: ['barbell'], grade: 1, wished: 'bar', chosen: 'bar' },
    { equipment: ['barbell', 'dumbbells'], grade: 5, wished: 'plain', chosen: 'plain' },
    { equipment: ['barbell'], grade: 5, wished: 'band-and-bar', chosen: 'bar' },
    { equipment: ['band'], grade: 2, wished: 'row', chosen: 'plain' },
  ])('for squats with $equipment up to $grade, wished $wished, is $chosen', ({ chosen, ...choice }) => {
    expect(chooseMovement('squat', { movements, ...choice })?.id ?? null).toBe(chosen);
  });

  test.each<Row>([
    { equipment: [], grade: 5, chosen: null },
    { equipment: ['barbell'], grade: 5, wished: 'row', chosen: null },
    { equipment: ['dumbbells'], grade: 1, chosen: 'hard-row' },
  ])('for pulls with $equipment up to $grade is $chosen', ({ chosen, ...choice }) => {
    expect(chooseMovement('pull', { movements, ...choice })?.id ?? null).toBe(chosen);
  });

  test('is none where there is no movement for the pattern', () => {
    expect(chooseMovement('hinge', { movements, equipment: ['band'], grade: 5 })).toBeNull();
  });

  test('is at hand where all is there that it needs', () => {
    const needsTwo = movementOf('two', 'squat', { equipment: ['band', 'barbell'] });
    expect(isAtHand(needsTwo, ['barbell'])).toBe(false);
    expect(isAtHand(needsTwo, ['barbell', 'band'])).toBe(true);
    expect(isAtHand(movementOf('none', 'squat'), [])).toBe(true);
  });
});
