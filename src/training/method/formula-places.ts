import type { Method } from './document.js';

/** A formula in a method document: where it stands, and which names of its own it may use. */
export interface FormulaPlace {
  readonly path: string;
  readonly text: string;
  readonly locals: readonly string[];
}

/** Every formula that the document itself holds, in its order. */
export function formulaPlaces(method: Method): FormulaPlace[] {
  const splits = method.splits.flatMap(({ when }, index) =>
    when === undefined ? [] : [{ path: `splits[${index}].when`, text: when, locals: [] }],
  );
  const quantities = (method.quantities ?? []).map(({ formula }, index) => ({
    path: `quantities[${index}].formula`,
    text: formula,
    locals: [],
  }));
  const rules = method.rules.flatMap((rule, index) => {
    if (rule.kind === 'notice') return [{ path: `rules[${index}].when`, text: rule.when, locals: [] }];
    const locals = rule.to === undefined ? ['value'] : ['value', 'other'];
    return [
      { path: `rules[${index}].when`, text: rule.when, locals },
      { path: `rules[${index}].value`, text: rule.value, locals },
    ];
  });
  return [...splits, ...quantities, ...rules];
}
