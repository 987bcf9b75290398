import { checkRules } from '../../plan/checks/checks-ground.js';
import type { CheckResult, PlanLoad } from '../../plan/checks/document.js';
import type { CheckUnit } from '../../training/checks/measures.js';
import type { CheckRule } from '../../training/method/check-rules.js';
import type { Method } from '../../training/method/document.js';
import { joined } from '../joined.js';
import { reasonOf, type Reason } from '../reason.js';
import type { Words } from '../words.js';
import { checkAmount, factText, riseText } from './check-amount.js';

/** A check in words. */
export interface CheckLines {
  readonly id: string;
  readonly name: string;
  /** "in line", "worth a look", "caution", "not known yet". */
  readonly level: string;
  /** What was measured, or what would have to be told. */
  readonly says: string;
  /** From where to where it is in line, and from where on there is a caution. */
  readonly range: string;
  /** What would bring it in line; null where it is. */
  readonly change: string | null;
  /** The guidance, with its sources. */
  readonly reason: Reason;
  readonly notSaid: string;
}

/** A check of a plan in words. */
export function checkLines(
  words: Words,
  { method, load }: { readonly method: Method; readonly load: PlanLoad | null },
  result: CheckResult,
): CheckLines {
  const { id, level } = result;
  const rule = checkRules(method).list.find((each) => each.id === id);
  return {
    id,
    name: rule ? words.text(rule.name) : id,
    level: words.say(`check-level.${level ?? 'unknown'}`),
    says: level === null ? missingText(words, result, load) : saysText(words, rule, result),
    range: rangeText(words, result),
    change: level === null || level === 'in-line' ? null : changeText(words, rule, result),
    reason: reasonOf(words, result),
    notSaid: words.text(result.notSaid),
  };
}

/** Checks that wait for something, by what would have to be told. */
export function unknownLines(
  words: Words,
  ground: { readonly method: Method; readonly load: PlanLoad | null },
  checks: readonly CheckResult[],
): readonly { readonly says: string; readonly names: readonly string[] }[] {
  const lines = checks.map((check) => checkLines(words, ground, check));
  return [...new Set(lines.map(({ says }) => says))].map((says) => ({
    says,
    names: lines.filter((line) => line.says === says).map(({ name }) => name),
  }));
}

function saysText(words: Words, rule: CheckRule | undefined, result: CheckResult): string {
  const { value, values } = result;
  if (!rule || value === null) return '';
  const facts = Object.entries(values).map(([fact, each]) => [fact, factText(words, fact, each)] as const);
  return words.text(rule.says, { ...Object.fromEntries(facts), value: besideEdges(words, result, value) });
}

const valueText = (words: Words, { unit, measure }: Pick<CheckResult, 'unit' | 'measure'>, value: number): string =>
  measure.endsWith('_rise') ? riseText(words, value) : checkAmount(words, unit, value);

/** A value that is shown like an edge, and is beyond it: the reader has to see that it is. */
function besideEdges(words: Words, result: CheckResult, value: number): string {
  const text = valueText(words, result, value);
  const { inLine, caution, level } = result;
  const edges = [inLine.least, inLine.most, caution.below, caution.above].filter((edge) => edge !== null);
  const near = edges.find((edge) => edge !== value && valueText(words, result, edge) === text);
  if (near === undefined || level === 'in-line') return text;
  return words.say(value > near ? 'checks.just-above' : 'checks.just-below', { value: text });
}

function changeText(words: Words, rule: CheckRule | undefined, { change: { amount, unit } }: CheckResult): string {
  if (!rule || amount === null) return '';
  return words.text(rule.change, { amount: checkAmount(words, unit, enough(unit, amount)) });
}

/** In the steps that are shown, and enough of them; a hair's breadth is a rounding error. */
function enough(unit: CheckUnit, amount: number): number {
  switch (unit) {
    case 'minutes':
    case 'load':
    case 'strain':
      return Math.ceil(amount - 1e-6);
    case 'hours':
      return Math.ceil(amount * 60 - 1e-6) / 60;
    default:
      return amount;
  }
}

function missingText(words: Words, { missing }: CheckResult, load: PlanLoad | null): string {
  return words.say(`check-missing.${missingKey(missing, load)}`);
}

/** Facts that one and the same answer brings. */
function missingKey(missing: CheckResult['missing'], load: PlanLoad | null): string {
  switch (missing) {
    case 'hours_before':
    case 'longest_run_before':
    case 'own_load':
      return missing;
    case 'own_monotony':
    case 'own_strain':
      return (load?.own.dayWeeks ?? 0) > 0 ? 'equal-own' : 'own_days';
    case 'season_rise':
    case 'season_run_rise':
      return 'season';
    case 'load_monotony':
    case 'week_strain':
      return load?.spread ? 'equal-days' : 'days';
    case 'hard_gap':
    case 'strength_gap':
      return load?.spread ? 'nothing' : 'days';
    case null:
      return 'nothing';
    default:
      return 'days';
  }
}

function rangeText(words: Words, { inLine: { least, most }, caution, unit, measure }: CheckResult): string {
  const edge = (value: number): string => valueText(words, { unit, measure }, value);
  const said = (key: string, ...edges: readonly (number | null)[]): readonly string[] => {
    const [from, to] = edges.map((each) => (each === null ? '' : edge(each)));
    return edges.includes(null) ? [] : [words.say(`checks.range.${key}`, { from: from ?? '', to: to ?? '' })];
  };
  const told = [
    ...said('between', least, most),
    ...(most === null ? said('from', least) : []),
    ...(least === null ? said('until', most) : []),
    ...said('caution-below', caution.below),
    ...said('caution-above', caution.above),
  ];
  return joined(words, told, 'semicolon');
}
