import type { Method, Rule } from '../training/method/document.js';
import { categoryIds, type ByCategory, type CategoryId } from '../training/method/ids.js';
import { categoryQuantity } from '../training/method/names.js';
import type { Derivation } from '../sheet/derivation.js';
import { withoutNoise } from '../sheet/numbers.js';
import type { Notice, RuleOutcome } from './document.js';

/** What the notices are drawn from. */
export interface NoticeSource {
  readonly method: Method;
  readonly rules: readonly RuleOutcome[];
  readonly total: { readonly exact: number; readonly rounded: number };
  /** Categories whose picked sessions no longer fit their minutes. */
  readonly droppedPicks: readonly CategoryId[];
  readonly rounded: ByCategory<number>;
  readonly derivations: Readonly<Record<string, Derivation>>;
  /** What is to be said of what a person put over quantities. */
  readonly byHand: readonly Notice[];
}

/** Everything the runner should know of a plan, in the order of the method's rules, then the rest. */
export function noticesOf(source: NoticeSource): Notice[] {
  return [
    ...source.rules.filter(({ acted }) => acted).flatMap((outcome) => ruleNotices(source.method, outcome)),
    ...source.byHand,
    ...totalNotice(source.total),
    ...source.droppedPicks.map((category): Notice => ({
      code: 'pick-dropped',
      level: 'note',
      category,
      values: { minutes: source.rounded[category] },
    })),
    ...failures(source.derivations),
  ];
}

function ruleNotices(method: Method, outcome: RuleOutcome): Notice[] {
  const rule = method.rules.find(({ id }) => id === outcome.id);
  if (!rule) return [];
  if (rule.kind === 'notice') return [{ code: 'rule', level: rule.level, rule: rule.id, values: {} }];
  return rule.every_second_week === true ? everySecondWeek(method, rule, outcome) : [];
}

/** What a week has too little of makes one session every second week: twice the minutes, but a useful session at least. */
function everySecondWeek(method: Method, rule: Rule, { on, before, after }: RuleOutcome): Notice[] {
  const id = categoryIds.find((each) => categoryQuantity(each, 'minutes') === on);
  const category = method.categories.find((each) => each.id === id);
  if (!category || before === null || after === null) return [];
  const { step } = method.rounding;
  const moved = withoutNoise(before - after);
  if (moved <= 0) return [];
  const session = Math.max(category.session.shortest, Math.round((2 * moved) / step) * step);
  return [
    { code: 'every-second-week', level: 'note', rule: rule.id, category: category.id, values: { moved, session } },
  ];
}

function totalNotice({ exact, rounded }: NoticeSource['total']): Notice[] {
  if (Math.abs(exact - rounded) < 1e-9) return [];
  return [{ code: 'total-rounded', level: 'note', values: { exact, rounded } }];
}

function failures(derivations: Readonly<Record<string, Derivation>>): Notice[] {
  const failed: Notice[] = [];
  for (const id in derivations)
    if (derivations[id]?.error) failed.push({ code: 'quantity-failed', level: 'caution', quantity: id, values: {} });
  return failed;
}
