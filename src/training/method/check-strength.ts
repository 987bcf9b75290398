import type { Problem } from '../../problem.js';
import type { Method } from './document.js';
import { duplicate, duplicates, repeated } from './duplicates.js';
import { roleIds, type Stage, type StrengthRules } from './strength-rules.js';

/** Faults of how a method fills strength sessions that no single field shows. */
export function checkStrength({ strength }: Method): Problem[] {
  if (!strength) return [];
  const { stages, patterns, sessions, order, movements = [] } = strength;
  return [
    ...duplicates(stages, 'strength.stages'),
    ...duplicates(patterns, 'strength.patterns'),
    ...duplicates(movements, 'strength.movements'),
    ...twice(order, 'strength.order'),
    ...sessions.flatMap((patternsOf, index) => twice(patternsOf, `strength.sessions[${index}]`)),
    ...stages.flatMap((stage, index) => forWhom(stage, `strength.stages[${index}]`, index === stages.length - 1)),
    ...stages.flatMap((stage, index) => setsInOrder(stage, `strength.stages[${index}].doses`)),
    ...table(strength),
    ...spans(strength),
  ];
}

const twice = (list: readonly string[], path: string): Problem[] =>
  repeated(list).map((index) => duplicate(`${path}[${index}]`, list[index]));

/** Every stage but the last is for some only, or none after it could ever be used; the last is for all the others. */
function forWhom({ phases, levels }: Stage, path: string, isLast: boolean): Problem[] {
  if (!isLast)
    return phases || levels ? [] : [{ path: `${path}.phases`, value: null, code: 'missing' as const, allowed: {} }];
  return Object.entries({ phases, levels }).flatMap(([field, value]) =>
    value ? [{ path: `${path}.${field}`, value: field, code: 'unknown-field' as const, allowed: {} }] : [],
  );
}

function setsInOrder({ doses }: Stage, path: string): Problem[] {
  return roleIds.flatMap((role) => {
    const sets = doses[role]?.sets;
    return sets ? inOrder(`${path}.${role}.sets`, sets, ['least', 'most']) : [];
  });
}

/** More repetitions, and never with a larger share. */
function table({ maximum }: StrengthRules): Problem[] {
  return maximum.table.flatMap(({ repetitions, share }, index) => {
    const before = maximum.table[index - 1];
    if (!before) return [];
    const path = `strength.maximum.table[${index}]`;
    const fault = (field: string, value: number, places: readonly [number, number]): Problem => ({
      path: `${path}.${field}`,
      value,
      code: 'wrong-order',
      allowed: { before: `[${places[0]}].${field}`, after: `[${places[1]}].${field}` },
    });
    return [
      ...(before.repetitions < repetitions ? [] : [fault('repetitions', repetitions, [index - 1, index])]),
      // Shares fall: the later one may not be more than the one before.
      ...(share <= before.share ? [] : [fault('share', share, [index, index - 1])]),
    ];
  });
}

function spans({ progress, dose }: StrengthRules): Problem[] {
  return [
    ...inOrder('strength.progress', progress, ['least', 'most']),
    ...inOrder('strength.dose.sessions', dose.sessions, ['usual', 'most']),
    ...inOrder('strength.dose.main', dose.main, ['least', 'most']),
  ];
}

function inOrder<Name extends string>(
  path: string,
  ends: Readonly<Record<Name, number>>,
  [before, after]: readonly [Name, Name],
): Problem[] {
  if (ends[before] <= ends[after]) return [];
  return [{ path: `${path}.${after}`, value: ends[after], code: 'wrong-order', allowed: { before, after } }];
}
