import type { Method, OwnQuantity, Rule, Split } from '../training/method/document.js';
import { categoryIds, eventIds, levelIds, phaseIds, type CategoryId } from '../training/method/ids.js';
import {
  categoryQuantity,
  choiceName,
  noticeQuantity,
  splitQuantity,
  splitShareQuantity,
} from '../training/method/names.js';

/** What of a category a quantity gives. */
export const measures = ['share', 'minutes', 'rounded', 'shortest', 'typical', 'longest'] as const;
export type Measure = (typeof measures)[number];

/** The ids of each input that is a choice; its quantity holds a place in the list. */
export const choiceIds = { phase: phaseIds, level: levelIds, event: eventIds } as const;
export type ChoiceKind = keyof typeof choiceIds;
const choiceKinds = ['phase', 'level', 'event'] as const satisfies readonly ChoiceKind[];

/** What the id of a quantity stands for; `week` where it is none of a category, a split, a rule or a choice. */
export type QuantityMeaning =
  | { readonly of: 'own'; readonly own: OwnQuantity }
  | { readonly of: 'category'; readonly category: CategoryId; readonly measure: Measure }
  | { readonly of: 'split-share'; readonly split: Split; readonly category: CategoryId }
  | { readonly of: 'split'; readonly split: Split }
  | { readonly of: 'notice'; readonly rule: Rule }
  | { readonly of: 'choice'; readonly kind: ChoiceKind; readonly id: string }
  | { readonly of: 'week' };

type Entry = readonly [id: string, meaning: QuantityMeaning];

const known = new WeakMap<Method, ReadonlyMap<string, QuantityMeaning>>();

/** What a quantity of this method stands for. */
export function quantityMeaning(method: Method, id: string): QuantityMeaning {
  const meanings = known.get(method) ?? new Map(entriesOf(method));
  known.set(method, meanings);
  return meanings.get(id) ?? { of: 'week' };
}

function entriesOf({ splits, rules, quantities = [] }: Method): Entry[] {
  return [
    ...categoryIds.flatMap(categoryEntries),
    ...splits.flatMap(splitEntries),
    ...rules.map((rule): Entry => [noticeQuantity(rule.id), { of: 'notice', rule }]),
    ...choiceKinds.flatMap(choiceEntries),
    ...quantities.map((own): Entry => [own.id, { of: 'own', own }]),
  ];
}

function categoryEntries(category: CategoryId): Entry[] {
  return measures.map((measure) => [categoryQuantity(category, measure), { of: 'category', category, measure }]);
}

function splitEntries(split: Split): Entry[] {
  const shares = categoryIds.map((category): Entry => [
    splitShareQuantity(split.id, category),
    { of: 'split-share', split, category },
  ]);
  return [[splitQuantity(split.id), { of: 'split', split }], ...shares];
}

function choiceEntries(kind: ChoiceKind): Entry[] {
  return choiceIds[kind].map((id) => [choiceName(kind, id), { of: 'choice', kind, id }]);
}
