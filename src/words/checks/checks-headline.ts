import { checkRules } from '../../plan/checks/checks-ground.js';
import type { CheckResult } from '../../plan/checks/document.js';
import type { CheckLevel } from '../../training/checks/check-levels.js';
import type { Method } from '../../training/method/document.js';
import type { Words } from '../words.js';

/**
 * All checks in one breath: what calls for caution first, then what is worth a look, then how many are in line.
 *
 * @example 'Worth a look: hard share of running minutes. In line: 6 of 7 checks.'
 */
export function checksHeadline(words: Words, method: Method, checks: readonly CheckResult[]): string {
  const { list } = checkRules(method);
  const name = (id: string): string => {
    const rule = list.find((each) => each.id === id);
    return rule ? words.text(rule.name) : id;
  };
  const at = (level: CheckLevel): readonly CheckResult[] => checks.filter((check) => check.level === level);
  const told = (level: 'caution' | 'look'): readonly string[] => {
    const names = at(level).map(({ id }) => words.say('checks.headline.name', { name: name(id) }));
    return names.length > 0 ? [words.say(`checks.headline.${level}`, { names: words.list(names) })] : [];
  };
  const count = checks.filter(({ level }) => level !== null).length;
  const inLine = words.say('checks.headline.in-line', { some: words.number(at('in-line').length), count });
  return [...told('caution'), ...told('look'), inLine].join(' ');
}
