import type { Problem } from '../../problem.js';
import { quantityIds } from '../../sheet/sheet.js';
import type { Method, NumberInput } from './document.js';
import { checkChecks } from './check-checks.js';
import { checkRunning } from './check-running.js';
import { checkStrength } from './check-strength.js';
import { checkWeek } from './check-week.js';
import { duplicate, duplicates, repeated, takenIds } from './duplicates.js';
import { expandMethod } from './expand.js';
import { categoryIds } from './ids.js';
import { weekQuantities } from './week-names.js';

/** Faults of a method that no single field shows: sums, orders, doubles, quantities that do not exist. */
export function checkMethod(method: Method): Problem[] {
  return [
    ...duplicates(method.categories, 'categories'),
    ...duplicates(method.splits, 'splits'),
    ...duplicates(method.rules, 'rules'),
    ...repeated(method.tie_order).map((index) => duplicate(`tie_order[${index}]`, method.tie_order[index])),
    ...repeated(method.gives_way ?? []).map((index) => duplicate(`gives_way[${index}]`, method.gives_way?.[index])),
    ...takenNames(method),
    ...ownTargets(method),
    ...inputRanges(method),
    ...sessionLimits(method),
    ...shareSums(method),
    ...lastSplit(method),
    ...checkWeek(method),
    ...checkRunning(method),
    ...checkStrength(method),
    ...checkChecks(method),
  ];
}

/** A quantity of the coach's own may not take the name of another, nor of one that the sheet has anyway. */
function takenNames(method: Method): Problem[] {
  const { quantities = [] } = method;
  if (quantities.length === 0) return [];
  const model = expandMethod({ ...method, quantities: [] });
  return takenIds(quantities, [...quantityIds(model), ...Object.keys(model.names), ...weekQuantities], 'quantities');
}

/** A rule cannot hand on to the quantity that it takes from. */
function ownTargets({ rules }: Method): Problem[] {
  return rules.flatMap((rule, index) =>
    rule.kind === 'change' && rule.to === rule.on ? [duplicate(`rules[${index}].to`, rule.to)] : [],
  );
}

function inputRanges({ inputs }: Method): Problem[] {
  const check = (name: string, { least, most, start }: NumberInput): Problem[] => [
    ...inOrder(`inputs.${name}`, [
      ['least', least],
      ['most', most],
    ]),
    ...(least <= most && (start < least || start > most)
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
