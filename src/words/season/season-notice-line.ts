import type { SeasonNotice } from '../../plan/season/document.js';
import { noticeCodes, type NoticeCode } from '../../plan/notice.js';
import type { Method } from '../../training/method/document.js';
import { categoryName } from '../category-name.js';
import { noticeSentence } from '../notice-sentence.js';
import { shortQuantityName } from '../quantity-names.js';
import type { Values } from '../phrases.js';
import type { Words } from '../words.js';

/**
 * What there is to know of a season or of one of its weeks, as a sentence.
 *
 * @example '8 hours a week is not reached: rising by 10% at most, the season comes to 6 hours 30 minutes.'
 */
export function seasonNoticeLine(words: Words, method: Method, notice: SeasonNotice): string {
  const { code } = notice;
  if (isPlanCode(code)) return noticeSentence(words, method, { ...notice, code });
  const sentence = words.say(`season-notice.${formOf(code, notice)}`, valuesOf(words, method, notice));
  return words.capital(
    code === 'after-break' ? `${sentence} ${words.say('season-notice.after-break.caution')}` : sentence,
  );
}

const isPlanCode = (code: SeasonNotice['code']): code is NoticeCode => noticeCodes.some((known) => known === code);

/** A week set by hand may have nothing before it. */
const formOf = (code: string, { values }: SeasonNotice): string =>
  code === 'steep-week' && values['base'] === 0 ? 'steep-week.back' : code;

type Measure = 'hours' | 'share' | 'minutes' | 'number';

const measures: Readonly<Record<string, Measure>> = {
  reached: 'hours',
  base: 'hours',
  hours: 'hours',
  rise: 'share',
  look: 'share',
  allowed: 'share',
  least: 'share',
  taperDrop: 'share',
  run: 'minutes',
  before: 'minutes',
  limit: 'minutes',
};

function valuesOf(words: Words, method: Method, { code, values, category, quantity }: SeasonNotice): Values {
  const told = Object.entries(values).map(([name, value]) => [name, words[measureOf(code, name)](value)] as const);
  const { weeks = 0, spare = 0, count = weeks + spare, taperWeeks = 0, share = 1 } = values;
  return {
    ...Object.fromEntries(told),
    count: code === 'spare-weeks' ? spare : count,
    taperWeeks: words.say('season.weeks', { count: taperWeeks }),
    by: words.share(share - 1),
    ...(category && { kind: categoryName(words, method, category) }),
    ...(quantity && { quantity: shortQuantityName(words, method, quantity) }),
  };
}

/** The most is hours a week, but of a taper and of a run a share. */
function measureOf(code: SeasonNotice['code'], name: string): Measure {
  if (name === 'most') return code === 'other-taper' || code === 'longer-run' ? 'share' : 'hours';
  return measures[name] ?? 'number';
}
