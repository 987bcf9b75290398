import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { builtInRunning } from '../../../../src/training/method/built-in-running.js';
import { kilocalories } from '../../../../src/training/running/energy.js';
import { heartAtReserve } from '../../../../src/training/running/heart-rate.js';
import { heldShare, oxygenCost } from '../../../../src/training/running/oxygen.js';
import { riegelSeconds } from '../../../../src/training/running/riegel.js';
import { runParts } from '../../../../src/training/running/run-session.js';

const intervals = builtInRunning.kinds.find(({ id }) => id === 'intervals');
if (!intervals) throw new Error('no intervals');

// What stands behind @example, what it gives, and what it says that it gives.
const examples: readonly (readonly [text: string, value: unknown, said: unknown])[] = [
  ['kilocalories(7, { minutes: 60, kilograms: 60 }) // 441', kilocalories(7, { minutes: 60, kilograms: 60 }), 441],
  [
    'heartAtReserve(0.6, { highest: 180, resting: 80 }) // 140',
    heartAtReserve(0.6, { highest: 180, resting: 80 }),
    140,
  ],
  ["oxygenCost(200).toFixed(1) // '36.0'", oxygenCost(200).toFixed(1), '36.0'],
  ["heldShare(60).toFixed(3) // '0.888'", heldShare(60).toFixed(3), '0.888'],
  [
    'Math.round(riegelSeconds({ metres: 5000, seconds: 1200 }, 10000)) // 2502',
    Math.round(riegelSeconds({ metres: 5000, seconds: 1200 }, 10_000)),
    2502,
  ],
  [
    'runParts(35, intervals) // warm-up 10, 4 × 3.5 with 3 × 2 between, cool-down 5',
    runParts(35, intervals),
    [
      { kind: 'warm-up', minutes: 10, times: 1 },
      { kind: 'work', minutes: 3.5, times: 4 },
      { kind: 'rest', minutes: 2, times: 3 },
      { kind: 'cool-down', minutes: 5, times: 1 },
    ],
  ],
];

describe('the examples of src/training/running', () => {
  const folder = new URL('../../../../src/training/running/', import.meta.url);
  const written = readdirSync(folder)
    .map((file) => readFileSync(new URL(file, folder), 'utf8'))
    .flatMap((text) => [...text.matchAll(/@example (.+)$/gm)].map(([, example]) => example));

  test('are all tested here', () => {
    expect(examples.map(([text]) => text).sort()).toEqual([...written].sort());
  });

  test.each(examples)('%s', (_, value, said) => {
    expect(value).toEqual(said);
  });
});
