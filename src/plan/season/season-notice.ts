import type { SeasonChange, SeasonNotice, SeasonNoticeCode } from './document.js';

/** Something to know of a season, with what would help. */
export function seasonNotice(
  code: SeasonNoticeCode,
  level: SeasonNotice['level'],
  { values = {}, waysOut = [] }: { values?: SeasonNotice['values']; waysOut?: readonly SeasonChange[] } = {},
): SeasonNotice {
  return { code, level, values, waysOut };
}

/** A change of a season, with what it does not need left out. */
export function seasonChange(
  kind: SeasonChange['kind'],
  { amount = 0, phase = null, start = null, category = null, sessions = null }: Partial<Omit<SeasonChange, 'kind'>>,
): SeasonChange {
  return { kind, amount, phase, start, category, sessions };
}
