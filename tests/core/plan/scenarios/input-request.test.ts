import { describe, expect, test } from 'vitest';
import { requestOf } from '../../../../src/plan/scenarios/input-request.js';
import { inputNames, inputQuantities, inputValues } from '../../../../src/plan/inputs.js';

const inputs = { hours: 5.5, phase: 'taper', level: 'elite', event: 'marathon', strengthCap: 95 } as const;

describe('requestOf(quantity, value)', () => {
  test.each(inputNames)('sets %s to the value that the sheet has for it', (name) => {
    const quantity = inputQuantities[name];
    expect(requestOf(quantity, inputValues(inputs)[quantity] ?? NaN)).toEqual({ [name]: inputs[name] });
  });

  test.each<[quantity: string, value: number]>([
    ['season_phase', 2.5],
    ['season_phase', -1],
    ['athlete_level', 4],
    ['target_event', NaN],
    ['slow_minutes', 60],
    ['toString', 1],
  ])('is null for %s at %d', (quantity, value) => {
    expect(requestOf(quantity, value)).toBeNull();
  });
});
