import type { Race } from './measure.js';

/** Throws where two runners of a race differ on any event but for rounding errors, or where no event changes anything. */
export function agree({ title, runners: [first, ...others], events }: Race): void {
  if (firstDifference(first.result?.(0), first.result?.(1)) === null) throw new Error(`${title}: nothing changes`);
  for (let event = 0; event < events; event += 1) {
    const expected = first.result?.(event);
    for (const { name, result } of others) {
      if (!result) continue;
      const difference = firstDifference(result(event), expected);
      if (difference !== null)
        throw new Error(`${title}, event ${event}: ${name} differs from ${first.name} at ${difference}`);
    }
  }
}

/** Where two values differ, and how; null where they do not. */
function firstDifference(actual: unknown, expected: unknown, path = ''): string | null {
  if (isNear(actual, expected)) return null;
  if (!isObject(actual) || !isObject(expected)) return `${path}: ${String(actual)}, not ${String(expected)}`;
  const keys = new Set([...Object.keys(actual), ...Object.keys(expected)]);
  const differences = Array.from(keys, (key) => firstDifference(actual[key], expected[key], `${path}.${key}`));
  return differences.find((difference) => difference !== null) ?? null;
}

function isNear(actual: unknown, expected: unknown): boolean {
  if (typeof actual !== 'number' || typeof expected !== 'number') return actual === expected;
  return Math.abs(actual - expected) <= 1e-9 * Math.max(1, Math.abs(expected));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
