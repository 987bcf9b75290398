import type { Problem } from '../../problem.js';
import type { CheckLimits, CheckRules } from './check-rules.js';
import type { Method } from './document.js';
import { duplicates } from './duplicates.js';

/** Faults of the checks of a method that no single field shows. */
export function checkChecks({ checks }: Pick<Method, 'checks'>): Problem[] {
  if (!checks) return [];
  return [
    ...duplicates(checks.list, 'checks.list'),
    ...duplicates(checks.differences, 'checks.differences'),
    ...duplicates(checks.activity.kinds, 'checks.activity.kinds'),
    ...classes(checks.activity),
    ...checks.list.flatMap(({ limits }, index) =>
      limits.flatMap((each, place) => limitsInOrder(each, `checks.list[${index}].limits[${place}]`)),
    ),
  ];
}

function classes({ moderate, vigorous }: CheckRules['activity']): Problem[] {
  return inOrder('checks.activity', [
    ['moderate', moderate],
    ['vigorous', vigorous],
  ]);
}

/** A caution begins where being in line has ended, or later. */
function limitsInOrder({ in_line, caution, ages }: CheckLimits, path: string): Problem[] {
  return [
    ...noEdge(in_line, path),
    ...inOrder(path, [
      ['caution.below', caution?.below],
      ['in_line.least', in_line.least],
      ['in_line.most', in_line.most],
      ['caution.above', caution?.above],
    ]),
    ...inOrder(path, [
      ['ages.least', ages?.least],
      ['ages.most', ages?.most],
    ]),
  ];
}

const noEdge = ({ least, most }: CheckLimits['in_line'], path: string): Problem[] =>
  least === undefined && most === undefined
    ? [{ path: `${path}.in_line`, value: null, code: 'missing', allowed: {} }]
    : [];

/** Edges that are numbers have to rise; one that is an input of the method has no place among them. */
function inOrder(path: string, edges: readonly (readonly [name: string, edge: unknown])[]): Problem[] {
  const numbers = edges.flatMap(([name, edge]) => (typeof edge === 'number' ? [{ name, edge }] : []));
  return numbers.flatMap(({ name, edge }, index) => {
    const before = numbers[index - 1];
    if (!before || before.edge <= edge) return [];
    return [
      {
        path: `${path}.${name}`,
        value: edge,
        code: 'wrong-order' as const,
        allowed: { before: before.name, after: name },
      },
    ];
  });
}
