import type { Problem } from '../../problem.js';
import type { Method, NumberInput } from './document.js';
import { categoryIds } from './ids.js';

/** Faults of a method that no single field shows: sums, orders, doubles, quantities that do not exist. */
export function checkMethod(method: Method): Problem[] {
  return [
    ...duplicates('categories', method.categories.map(({ id }) => id)),
    ...duplicates('splits', method.splits.map(({ id }) => id)),
    ...duplicates('rules', method.rules.map(({ id }) => id)),
    ...duplicates('tie_order', method.tie_order),
    ...inputRanges(method),
    ...sessionLimits(method),
    ...shareSums(method),
    ...lastSplit(method),
  ];
}

function duplicates(path: string, ids: readonly string[]): Problem[] {
  return ids.flatMap((id, index) =>
    ids.indexOf(id) < index ? [{ path: `${path}[${index}]`, value: id, code: 'duplicate' as const, allowed: {} }] : [],
  );
}

function inputRanges({ inputs }: Method): Problem[] {
  const check = (name: string, { least, most, start }: NumberInput): Problem[] => [
    ...inOrder(`inputs.${name}`, [
      ['least', least],
      ['most', most],
    ]),
    ...(start < least || start > most
      ? [{ path: `inputs.${name}.start`, value: start, code: 'out-of-range' as const, allowed: { least, most } }]
      : []),
  ];
  return [...check('weekly_hours', inputs.weekly_hours), ...check('strength_cap', inputs.strength_cap)];
}

function sessionLimits({ categories, rounding: { step } }: Method): Problem[] {
  return categories.flatMap(({ session }, index) => {
    const path = `categories[${index}].session`;
    const named = Object.entries(session);
    const offStep = named.filter(([what, value]) => what !== 'typical' && value % step !== 0);
    return [
      ...inOrder(path, named),
      ...offStep.map(([what, value]) => ({
        path: `${path}.${what}`,
        value,
        code: 'not-a-step' as const,
        allowed: { step },
      })),
    ];
  });
}

function inOrder(path: string, named: readonly (readonly [string, number])[]): Problem[] {
  return named.flatMap(([what, value], index) => {
    const [before, smaller] = named[index - 1] ?? ['', Number.NEGATIVE_INFINITY];
    if (smaller <= value) return [];
    return [{ path: `${path}.${what}`, value, code: 'wrong-order' as const, allowed: { before, after: what } }];
  });
}

function shareSums({ splits }: Method): Problem[] {
  return splits.flatMap(({ shares }, index) => {
    const sum = categoryIds.reduce((total, id) => total + shares[id], 0);
    if (Math.abs(sum - 1) <= 1e-9) return [];
    return [{ path: `splits[${index}].shares`, value: sum, code: 'wrong-sum' as const, allowed: { sum, expected: 1 } }];
  });
}

/** Every split but the last needs a condition, or none after it could ever be used; the last must not have one. */
function lastSplit({ splits }: Method): Problem[] {
  return splits.flatMap(({ when }, index): Problem[] => {
    const isLast = index === splits.length - 1;
    const path = `splits[${index}].when`;
    if (!isLast && when === undefined) return [{ path, value: null, code: 'missing', allowed: {} }];
    if (isLast && when !== undefined) return [{ path, value: when, code: 'unknown-field', allowed: {} }];
    return [];
  });
}
